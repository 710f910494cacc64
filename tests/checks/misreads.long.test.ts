import { describe, expect, test } from "vitest";
import { misreadsOf } from "../support/misreads.ts";

/** Those that a crew raises, and those in which a misread is hardest to tell. */
const THIRTEEN = [
  [20, 20],
  [20, 40],
  [20, 60],
  [20, 100],
  [20, 200],
  [30, 60],
  [40, 40],
  [40, 80],
  [40, 120],
  [60, 90],
  [60, 120],
  [80, 100],
  [100, 200],
] as const;

/** So many that half a point is seen. */
const RUNS = 4000;

describe("simulation, no outside source: corner marks off by 0.2 ft, a tape by 0.01 ft, one length misread by a foot", () => {
  test.each(THIRTEEN)("%d×%d: it never passes, and is named first about as often as any rule could", (widthFt, lengthFt) => {
    const { passed, named, wrongly, alarms, best, bestWrongly } = misreadsOf(widthFt, lengthFt, RUNS);
    expect(passed).toBe(0);
    expect(named).toBeGreaterThanOrEqual(Math.min(0.95, best - 0.01));
    expect(wrongly).toBeLessThanOrEqual(Math.max(0.02, bestWrongly + 0.01));
    expect(alarms).toBeLessThan(0.01);
  });
});
