import { describe, expect, it } from "vitest";
import type { Frozen } from "../../machines/install/step.ts";
import { findings } from "./explore.ts";
import { ALL } from "./invariants.ts";
import { disagreements } from "./tent.ts";

/** The proof of one tent: explored once, each invariant a test. A file for each tent, so that they run side by side. */
export function proves(tent: string, frozen: Frozen): void {
  describe(tent, () => {
    let explored: ReturnType<typeof findings> | undefined;
    const once = () => {
      explored ??= findings(frozen);
      return explored;
    };

    it("has every gate of the table, as hard as the table says, and no other", () => {
      expect(disagreements(frozen)).toEqual([]);
    });

    it("is explored at every one of its calls", { timeout: 120_000 }, () => {
      const calls = frozen.script.steps.length + Object.values(frozen.script.escapes).flat().length;
      expect(once().calls).toBe(calls);
    });

    it.each(ALL)("%s", { timeout: 120_000 }, (invariant) => {
      expect(once().found.get(invariant)).toBeUndefined();
    });
  });
}
