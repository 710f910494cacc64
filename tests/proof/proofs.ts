import { describe, expect, it } from "vitest";
import { openJob } from "../../machines/install/job.ts";
import type { Frozen } from "../../machines/install/step.ts";
import { walkAmended } from "./amended.ts";
import { disagreements } from "./disagreements.ts";
import { type Explored, explore } from "./explore.ts";
import { START } from "./fixtures.ts";
import { guardsOf } from "./guards.ts";
import { ALL } from "./invariants.ts";
import { gateMutants, guardMutant } from "./mutants.ts";

/**
 * The proof of one tent, and that it notices what is broken: explored once, each invariant a test; each way to break the
 * chart held against that exploration. A file for each tent, so that they run side by side.
 */
export function proves(tent: string, frozen: Frozen): void {
  const { once } = holds(tent, frozen);
  describe(`the proof of ${tent} notices`, () => {
    it.each(guardsOf(openJob(frozen, START).machine))("that the guard %s is stuck", (guard) => {
      expect([true, false].map((says) => guardMutant(once(), guard, says)).filter((m) => !m.caughtBy)).toEqual([]);
    });
  });
}

/** The exploration of one tent, each invariant a test. */
export function holds(tent: string, frozen: Frozen) {
  let explored: Explored | undefined;
  const once = () => {
    explored ??= explore(frozen);
    return explored;
  };

  describe(tent, () => {
    it("has every gate of the table, as hard as the table says, and no other", () => {
      expect(disagreements(frozen)).toEqual([]);
    });

    it("notices every gate that is taken away or changes its hardness", () => {
      expect(gateMutants(frozen).filter((m) => !m.caughtBy)).toEqual([]);
    });

    it("goes on from an amendment through the calls that it put behind the job", () => {
      expect(walkAmended()).toBeNull();
    });

    it("is explored at every one of its calls", () => {
      const calls = frozen.script.steps.length + Object.values(frozen.script.escapes).flat().length;
      expect(once().calls.size).toBe(calls);
    });

    it.each(ALL)("%s", (invariant) => {
      expect(once().found.get(invariant)).toBeUndefined();
    });
  });

  return { once };
}
