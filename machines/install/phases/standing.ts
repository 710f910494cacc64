import type { TentPlan } from "../../tent/types.ts";
import type { Brief } from "../brief.ts";
import { COMPETENT, gate, yes } from "../gates.ts";
import type { StepDraft } from "../step.ts";

/** How long a walk round the standing tent is good for. Common practice, no source: every day, and after every blow. */
const WALK_GOOD_S = 24 * 3600;

/** Handed over and watched: readings at any time, a walk round every day, until it is to come down. */
export function standing(_brief: Brief, _plan: TentPlan): StepDraft[] {
  return [
    { id: "watch", gate: gate(yes, { roles: COMPETENT, validForS: WALK_GOOD_S, reopenedBy: ["stations", "anchors", "poles"] }) },
    { id: "watch.end", gate: gate(yes, { roles: COMPETENT }) },
  ];
}
