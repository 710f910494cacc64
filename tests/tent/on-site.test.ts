import { describe, expect, test } from "vitest";
import { planTent } from "../../machines/tent/plan.ts";
import { checkSpec } from "../../machines/tent/spec.ts";
import type { SpecInput } from "../../machines/tent/spec-input.ts";
import type { EdgeName, TentSpec } from "../../machines/tent/types.ts";

const TENT: SpecInput = { widthFt: 60, lengthFt: 100, splitEnds: true, spacingFt: 10, quarterRings: 1, centerPoleFt: 22 };
const specOf = (more: SpecInput): TentSpec => {
  const checked = checkSpec({ ...TENT, ...more });
  if ("problems" in checked) throw new Error(JSON.stringify(checked.problems));
  return checked.spec;
};
const problemsOf = (more: SpecInput) => {
  const checked = checkSpec({ ...TENT, ...more });
  return "problems" in checked ? checked.problems.map(({ field, code, nearest }) => [field, code, nearest]) : [];
};
const edge = (spec: TentSpec, name: EdgeName) => planTent(spec).edges.find((e) => e.name === name)!;

describe("rings counted in the cloth", () => {
  test("one ring more than the spacing gives adds a station and its plate in the widest stretch", () => {
    const before = planTent(specOf({}));
    const after = planTent(specOf({ rings: { AB: 12 } }));
    expect(before.edges[0]).toMatchObject({ rings: 11 });
    expect(after.edges[0]).toMatchObject({ name: "AB", rings: 12, seamEnds: 3, sides: 7 });
    expect(after.edges.slice(1)).toEqual(before.edges.slice(1));
    expect(after.stations.length).toBe(before.stations.length + 1);
    expect(after.plates.length).toBe(before.plates.length + 1);
  });
  test("seam ends keep their places, and the bays still add up to the edge", () => {
    const { baysFt } = edge(specOf({ rings: { AB: 12 } }), "AB");
    expect(baysFt.reduce((a, b) => a + b)).toBeCloseTo(100, 6);
    const seamEnds = planTent(specOf({ rings: { AB: 12 } })).stations.filter((s) => s.kind === "seamEnd" && s.edge === "AB");
    expect(seamEnds.map((s) => s.yFt)).toEqual([30, 50, 70]);
  });
  test("fewer rings than the spacing gives widen the narrowest bays", () => {
    expect(edge(specOf({ rings: { AB: 9 } }), "AB").baysFt.length).toBe(8);
  });
  test("as many rings as the spacing gives change nothing", () => {
    expect(planTent(specOf({ rings: { AB: 11 } })).stations).toEqual(planTent(specOf({})).stations);
  });
  test("bays under 1 ft, bays over 20 ft, and half a ring are refused with the nearest count", () => {
    expect(problemsOf({ rings: { AB: 102, BC: 3, CD: 11.5 } })).toEqual([
      ["rings.AB", "ringCount", 101],
      ["rings.BC", "ringCount", 5],
      ["rings.CD", "ringCount", 12],
    ]);
  });
});

describe("a shifted corner", () => {
  test("shortens its edges and diagonal, and stations stay in line between the corners", () => {
    const plan = planTent(specOf({ shifted: { C: { xFt: 0, yFt: -1 } } }));
    expect(plan.edges.map((e) => e.lengthFt)).toEqual([100, 60.008333, 99, 60]);
    expect(plan.diagonalFt).toBeCloseTo(Math.hypot(60, 99), 5);
    const bc = plan.stations.filter((s) => s.edge === "BC");
    for (const s of bc) expect(s.yFt).toBeCloseTo(100 - s.xFt / 60, 5);
  });
  test("does not change the kit", () => {
    const kit = (spec: TentSpec) => planTent(spec).kit;
    expect(kit(specOf({ shifted: { C: { xFt: 0.5, yFt: -1 } } }))).toEqual(kit(specOf({})));
  });
  test("with a shift of zero is not shifted", () => {
    expect(specOf({ shifted: { C: { xFt: 0, yFt: 0 } } })).toEqual(specOf({}));
  });
  test("shifted farther than the cloth gives is refused with the largest shift", () => {
    expect(problemsOf({ shifted: { D: { xFt: 3, yFt: 0 } } })).toEqual([["shifted.D.xFt", "cornerShift", 2]]);
  });
});
