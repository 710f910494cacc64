import { type Check, gate } from "../../machines/install/gates.ts";
import type { Step } from "../../machines/install/step.ts";

/** A call that asks something, or nothing, with words of its own. */
export const stepWith = (asks: Check | null, more: Partial<Step> = {}): Step => ({
  id: "here",
  phase: "sectionsJoined",
  wordsKey: "here",
  params: {},
  gate: asks === null ? null : { id: "here", ...gate(asks) },
  work: null,
  needs: [],
  site: "spread",
  resumeFrom: null,
  onlyAfter: null,
  begins: null,
  ...more,
});
