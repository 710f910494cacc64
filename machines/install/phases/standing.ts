import type { TentPlan } from "../../tent/types.ts";
import type { Brief } from "../brief.ts";
import { COMPETENT, gate, yes } from "../gates.ts";
import type { Limits } from "../limits.ts";
import type { StepDraft } from "../step.ts";

/** Handed over and watched: readings at any time, a walk round every day, until it is to come down. */
export function standing(_brief: Brief, _plan: TentPlan, { walkS }: Limits): StepDraft[] {
  return [
    { id: "watch", gate: gate(yes, { roles: COMPETENT, validForS: walkS.is, reopenedBy: ["stations", "anchors", "poles"] }) },
    { id: "watch.end", gate: gate(yes, { roles: COMPETENT }) },
  ];
}
