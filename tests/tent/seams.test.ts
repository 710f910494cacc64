import { describe, expect, test } from "vitest";
import { eighty, forty, hundred, planOf } from "./tents.ts";

describe("seams", () => {
  test("are in lacing order: near ridge seam, cross seams, far ridge seam", () => {
    expect(planOf(eighty).seams.map((s) => s.id)).toEqual(["R-DA", "S1", "S2", "R-BC"]);
  });

  test("a cross seam has two halves, a ridge seam has one", () => {
    const [ridge, cross] = planOf(eighty).seams;
    expect(ridge!.halves.map((h) => [h.id, h.toward, h.lengthFt])).toEqual([["R-DA.DA", "DA", 40]]);
    expect(cross!.halves.map((h) => [h.id, h.toward, h.lengthFt])).toEqual([
      ["S1.AB", "AB", 40],
      ["S1.CD", "CD", 40],
    ]);
  });

  test("a half names its two pieces, and the seam names the whole split end", () => {
    const cross = planOf(eighty).seams.find((s) => s.id === "S1")!;
    expect([cross.lacePiece, cross.eyeletPiece]).toEqual(["end-DA", "mid-1"]);
    expect(cross.halves.map((h) => [h.lacePiece, h.eyeletPiece])).toEqual([
      ["end-A", "mid-1"],
      ["end-D", "mid-1"],
    ]);
  });

  test("a half passes one ring for each quarter pole along it", () => {
    const rings = (input: typeof eighty) => planOf(input).seams.map((s) => s.halves.map((h) => h.ringsAtFt));
    expect(rings(eighty)).toEqual([[[20]], [[20], [20]], [[20], [20]], [[20]]]);
    expect(rings({ ...hundred, widthFt: 90, lengthFt: 110, midsFt: [20] })[1]).toEqual([
      [15, 30],
      [15, 30],
    ]);
    expect(rings(forty)).toEqual([
      [[], []],
      [[], []],
      [[], []],
    ]);
  });

  test("a cross seam passes no ring if the sheet sets the poles away from the seams", () => {
    const plan = planOf({ ...eighty, ridge: { kind: "given", fromNearEndFt: [45, 55] } });
    expect(plan.seams.filter((s) => s.kind === "cross").flatMap((s) => s.halves.flatMap((h) => h.ringsAtFt))).toEqual([]);
    expect(plan.seams.find((s) => s.id === "R-DA")!.halves[0]!.ringsAtFt).toEqual([20]);
  });

  test("an omitted quarter pole has no ring to lace past", () => {
    const plan = planOf({ ...eighty, leaveOut: ["Q4"] });
    expect(plan.seams.find((s) => s.id === "S1")!.halves.map((h) => h.ringsAtFt)).toEqual([[], [20]]);
  });
});
