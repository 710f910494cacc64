import { describe, expect, it } from "vitest";
import { windward } from "../../machines/site/windward.ts";
import { planTent } from "../../machines/tent/plan.ts";
import { cornerOf, endsOf, OUTWARD } from "../../machines/tent/tape.ts";
import { EDGES } from "../../machines/tent/types.ts";
import { eighty, specOf } from "../tent/tents.ts";

describe("the edge that faces the wind", () => {
  it.each([
    [0, 270, ["AB"]],
    [0, 0, ["BC"]],
    [0, 90, ["CD"]],
    [0, 180, ["DA"]],
    // A–B runs east: the left of it is north.
    [90, 0, ["AB"]],
    [90, 90, ["BC"]],
    [90, 180, ["CD"]],
    [90, 270, ["DA"]],
    [310, 225, ["AB"]],
    [350, 10, ["BC"]],
    [10, 350, ["BC"]],
    [359, 100, ["CD"]],
    [360, 360, ["BC"]],
  ] as const)("with A–B on %i°, a wind from %i° comes at %j", (baseline, from, edges) => expect(windward(baseline, from)).toEqual(edges));

  it("a wind straight at a corner comes at both of its edges", () => {
    expect(windward(0, 225)).toEqual(["AB", "DA"]);
    expect(windward(0, 45)).toEqual(["BC", "CD"]);
  });

  it("agrees with the plan: clockwise corners, and the ways out of each edge", () => {
    const plan = planTent(specOf(eighty));
    const bearing = (x: number, y: number) => (Math.atan2(x, y) * 180) / Math.PI;
    const [a, b] = endsOf("AB").map((corner) => cornerOf(plan, corner));
    const baseline = bearing(b!.xFt - a!.xFt, b!.yFt - a!.yFt);
    for (const edge of EDGES) expect(windward(baseline, (bearing(OUTWARD[edge].xFt, OUTWARD[edge].yFt) + 360) % 360)).toEqual([edge]);
  });
});
