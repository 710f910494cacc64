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

describe("rings that were counted in the cloth", () => {
  test("twelve along AB where the spacing gives eleven: the widest stretch gets a pole more, and so do the stakes", () => {
    const before = planTent(specOf({}));
    const after = planTent(specOf({ rings: { AB: 12 } }));
    expect(before.edges[0]).toMatchObject({ rings: 11 });
    expect(after.edges[0]).toMatchObject({ name: "AB", rings: 12, seamEnds: 3, sides: 7 });
    expect(after.edges.slice(1)).toEqual(before.edges.slice(1));
    expect(after.stations.length).toBe(before.stations.length + 1);
    expect(after.plates.length).toBe(before.plates.length + 1);
  });
  test("seam ends keep their places, and the bays of the edge still add up to it", () => {
    const { baysFt } = edge(specOf({ rings: { AB: 12 } }), "AB");
    expect(baysFt.reduce((a, b) => a + b)).toBeCloseTo(100, 6);
    const seamEnds = planTent(specOf({ rings: { AB: 12 } })).stations.filter((s) => s.kind === "seamEnd" && s.edge === "AB");
    expect(seamEnds.map((s) => s.yFt)).toEqual([30, 50, 70]);
  });
  test("fewer than the spacing gives: the narrowest bays are made wider", () => {
    expect(edge(specOf({ rings: { AB: 9 } }), "AB").baysFt.length).toBe(8);
  });
  test("as many as the spacing gives change nothing", () => {
    expect(planTent(specOf({ rings: { AB: 11 } })).stations).toEqual(planTent(specOf({})).stations);
  });
  test("more than one a foot, fewer than one in 20 ft, and half a ring are refused with what fits", () => {
    expect(problemsOf({ rings: { AB: 102, BC: 3, CD: 11.5 } })).toEqual([
      ["rings.AB", "ringCount", 101],
      ["rings.BC", "ringCount", 5],
      ["rings.CD", "ringCount", 12],
    ]);
  });
});

describe("a corner that stands elsewhere", () => {
  test("C a foot in from its place: its edges and its diagonal get shorter, and stations stay in line between the corners", () => {
    const plan = planTent(specOf({ shifted: { C: { xFt: 0, yFt: -1 } } }));
    expect(plan.edges.map((e) => e.lengthFt)).toEqual([100, 60.008333, 99, 60]);
    expect(plan.diagonalFt).toBeCloseTo(Math.hypot(60, 99), 5);
    const bc = plan.stations.filter((s) => s.edge === "BC");
    for (const s of bc) expect(s.yFt).toBeCloseTo(100 - s.xFt / 60, 5);
  });
  test("counts of stations, plates and stakes stay as they were", () => {
    const kit = (spec: TentSpec) => planTent(spec).kit;
    expect(kit(specOf({ shifted: { C: { xFt: 0.5, yFt: -1 } } }))).toEqual(kit(specOf({})));
  });
  test("no shift at all is none", () => {
    expect(specOf({ shifted: { C: { xFt: 0, yFt: 0 } } })).toEqual(specOf({}));
  });
  test("more than cloth gives is refused with the most that it does", () => {
    expect(problemsOf({ shifted: { D: { xFt: 3, yFt: 0 } } })).toEqual([["shifted.D.xFt", "cornerShift", 2]]);
  });
});
