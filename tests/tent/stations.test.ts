import { describe, expect, test } from "vitest";
import { eighty, kitCount, planOf, twenty } from "./tents.ts";

describe("stations", () => {
  test("run clockwise from A, numbered along each edge including seam ends", () => {
    const { stations, edges } = planOf({ ...eighty, spacingFt: 20 });
    expect(stations.map((s) => s.id).join(" ")).toBe("A AB1 AB2 AB3 AB4 B BC1 BC2 BC3 C CD1 CD2 CD3 CD4 D DA1 DA2 DA3");
    expect(stations.filter((s) => s.kind === "seamEnd").map((s) => s.id)).toEqual(["AB2", "AB3", "BC2", "CD2", "CD3", "DA2"]);
    expect(edges.map((e) => [e.name, e.lengthFt, e.rings])).toEqual([
      ["AB", 100, 6],
      ["BC", 80, 5],
      ["CD", 100, 6],
      ["DA", 80, 5],
    ]);
  });

  test("positions run clockwise along each edge", () => {
    const { stations } = planOf(twenty);
    expect(stations.map((s) => [s.id, s.xFt, s.yFt])).toEqual([
      ["A", 0, 0],
      ["AB1", 0, 10],
      ["B", 0, 20],
      ["BC1", 10, 20],
      ["C", 20, 20],
      ["CD1", 20, 10],
      ["D", 20, 0],
      ["DA1", 10, 0],
    ]);
  });

  test("bays between fixed stations are equal and no longer than the spacing", () => {
    const [ab] = planOf({ ...eighty, spacingFt: 12 }).edges;
    expect(ab!.baysFt).toEqual([10, 10, 10, 10, 10, 10, 10, 10, 10, 10]);
    expect(planOf({ ...eighty, spacingFt: 8 }).edges[0]!.baysFt.slice(5, 8)).toEqual([6.666667, 6.666666, 6.666667]);
  });

  test("a spacing that divides the edge exactly adds no extra bay", () => {
    expect(planOf({ ...twenty, widthFt: 21, lengthFt: 21, spacingFt: 2.1 }).edges[0]!.baysFt).toHaveLength(10);
  });
});

describe("stake plates", () => {
  const plates = (input: typeof eighty, station: string) =>
    planOf(input)
      .plates.filter((p) => p.station === station)
      .map((p) => [p.xFt, p.yFt, p.bearingDeg, p.stakes]);

  test("a corner has one plate square to each edge and one on the diagonal", () => {
    expect(plates(eighty, "A")).toEqual([
      [0, -6, 180, 2],
      [-6, -6, 225, 2],
      [-6, 0, 270, 2],
    ]);
    expect(plates(eighty, "C")).toEqual([
      [80, 106, 0, 2],
      [86, 106, 45, 2],
      [86, 100, 90, 2],
    ]);
  });

  test("a seam end has two plates side by side, a side station one, square to the edge", () => {
    expect(plates(eighty, "AB4")).toEqual([
      [-6, 39, 270, 2],
      [-6, 41, 270, 2],
    ]);
    expect(plates(eighty, "DA1")).toEqual([[70, -6, 180, 2]]);
  });

  test("the sheet overrides the minimum in both directions", () => {
    const input = { ...eighty, anchors: { corner: { plates: 2, stakes: 5 }, side: { plates: 1, stakes: 3 } } };
    expect(plates(input, "A")).toEqual([
      [0, -6, 180, 3],
      [-6, 0, 270, 2],
    ]);
    const plan = planOf(input);
    expect(kitCount(plan, "perimeterStake")).toBe(4 * 5 + 6 * 4 + 26 * 3);
    expect(kitCount(plan, "perimeterStrap")).toBe(4 * 2 + 6 * 2 + 26);
    expect(plan.spec.anchors.seamEnd).toBeNull();
  });

  test("a single corner plate is on the diagonal", () => {
    expect(plates({ ...eighty, anchors: { corner: { plates: 1, stakes: 4 } } }, "B")).toEqual([[-6, 106, 315, 4]]);
  });
});
