import { type Asks, gate } from "../../machines/install/gates.ts";
import type { Step } from "../../machines/install/step.ts";

/** A call that asks something, or nothing, with words of its own. */
export const stepWith = (asks: Asks | null, more: Partial<Step> = {}): Step => ({
  id: "here",
  phase: "sectionsJoined",
  call: "here",
  of: {},
  gate: asks === null ? null : { id: "here", ...gate(asks) },
  committed: false,
  site: "spread",
  goOnFrom: null,
  ...more,
});
