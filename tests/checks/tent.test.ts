import { describe, expect, test } from "vitest";
import { looks } from "../tent/places.ts";
import { eighty, kitCount, planOf, sixty } from "../tent/tents.ts";

const stationsBy = (plan: ReturnType<typeof planOf>, kind: string) => plan.stations.filter((s) => s.kind === kind).length;

describe("check values: common practice, no source", () => {
  test("80×100 ft, split ends, one mid of 20 ft, 10 ft spacing, one ring", () => {
    const plan = planOf(eighty);
    expect(plan.pieces.map((p) => `${p.at.widthFt}x${p.at.lengthFt}`).sort()).toEqual(["40x40", "40x40", "40x40", "40x40", "80x20"]);
    expect(new Set(plan.pieces.map(looks)).size).toBe(5);
    expect(kitCount(plan, "centerPole")).toBe(2);
    expect(kitCount(plan, "quarterPole")).toBe(10);
    expect(plan.stations).toHaveLength(36);
    expect(["corner", "seamEnd", "side"].map((kind) => stationsBy(plan, kind))).toEqual([4, 6, 26]);
    expect(kitCount(plan, "perimeterStake")).toBe(100);
    expect(kitCount(plan, "stakePlate")).toBe(50);
    expect(kitCount(plan, "perimeterStrap")).toBe(50);
    expect(kitCount(plan, "interiorStake")).toBe(12);
    expect(kitCount(plan, "interiorStrap")).toBe(12);
    expect(plan.diagonalFt).toBeCloseTo(128.0625, 4);
  });

  test("60×120 ft, split ends, two mids of 30 ft, 10 ft spacing, one ring", () => {
    const plan = planOf(sixty);
    expect(kitCount(plan, "centerPole")).toBe(3);
    expect(kitCount(plan, "quarterPole")).toBe(12);
    expect(plan.stations).toHaveLength(36);
    expect(["corner", "seamEnd", "side"].map((kind) => stationsBy(plan, kind))).toEqual([4, 8, 24]);
    expect(kitCount(plan, "perimeterStake")).toBe(104);
    expect(kitCount(plan, "stakePlate")).toBe(52);
    expect(kitCount(plan, "perimeterStrap")).toBe(52);
  });
});

// Geometry: standards.md §9, computed.
test.each([
  [40, 80, 89.443],
  [60, 90, 108.167],
  [20, 40, 44.721],
  [40, 100, 107.703],
])("diagonal of %i×%i ft is %f ft", (widthFt, lengthFt, diagonalFt) => {
  const plan = planOf({ ...eighty, widthFt, lengthFt, midsFt: null });
  expect(plan.diagonalFt).toBeCloseTo(diagonalFt, 3);
});
