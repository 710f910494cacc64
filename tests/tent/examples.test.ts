import { describe, expect, it, test } from "vitest";
import { EXAMPLES } from "../../machines/tent/examples.ts";
import { planTent } from "../../machines/tent/plan.ts";
import { checkSpec } from "../../machines/tent/spec.ts";

const sizes = [...new Set(EXAMPLES.map(({ spec }) => `${spec.widthFt}×${spec.lengthFt}`))];

test("the examples cover the common sizes from 20×20 to 100×200", () => {
  expect(sizes).toEqual([
    "20×20",
    "20×40",
    "30×60",
    "40×40",
    "40×80",
    "40×100",
    "60×90",
    "60×120",
    "80×100",
    "80×120",
    "100×150",
    "100×200",
  ]);
});

test("every example has a unique id", () => {
  expect(new Set(EXAMPLES.map((e) => e.id)).size).toBe(EXAMPLES.length);
  for (const { id } of EXAMPLES) expect(id).toMatch(/^example-[\w-]+$/);
});

test("every size from 40×80 up has an example with whole ends and one with split ends", () => {
  const large = sizes.slice(4);
  for (const size of large) {
    const ends = EXAMPLES.filter(({ spec }) => `${spec.widthFt}×${spec.lengthFt}` === size).map(({ spec }) => spec.splitEnds);
    expect(new Set(ends)).toEqual(new Set([false, true]));
  }
});

describe.each(EXAMPLES.map((e) => [e.id, e.spec] as const))("%s", (_id, spec) => {
  it("can be built unchanged", () => {
    expect(checkSpec(spec)).toStrictEqual({ spec });
  });
  it("has pieces that cover it", () => {
    const { pieces, widthFt, lengthFt } = planTent(spec);
    expect(pieces.reduce((sum, { at }) => sum + at.widthFt * at.lengthFt, 0)).toBeCloseTo(widthFt * lengthFt, 6);
    expect(pieces.filter((p) => p.kind === "splitEnd")).toHaveLength(spec.splitEnds ? 4 : 0);
  });
  it("sets nothing that only a sheet would specify", () => {
    expect([spec.leaveOut, spec.add, spec.rings, spec.shifted]).toEqual([[], [], undefined, undefined]);
    expect(Object.values(spec.anchors)).toEqual([null, null, null]);
  });
});
