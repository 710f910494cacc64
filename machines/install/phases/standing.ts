import type { TentPlan } from "../../tent/types.ts";
import type { Brief } from "../brief.ts";
import { COMPETENT, gate, yes } from "../gates.ts";
import type { Limits } from "../limits.ts";
import type { StepDraft } from "../step.ts";

/** Opened, tensioned again, and watched: readings at any time, a walk round every day, until it is to come down. */
export function standing(_brief: Brief, _plan: TentPlan, { walkS, recheckS }: Limits): StepDraft[] {
  return [
    {
      id: "tension.again",
      work: "outside",
      gate: gate(yes, { roles: COMPETENT, recheck: { after: "round.again", afterS: recheckS.is }, reopenedBy: ["rain"] }),
    },
    { id: "open", work: "use" },
    {
      id: "watch",
      work: "use",
      gate: gate(yes, { stays: true, roles: COMPETENT, validForS: walkS.is, reopenedBy: ["stations", "anchors", "poles", "rain", "blow"] }),
    },
    // After clearing the tent from here, work resumes at the walk, not at the strike.
    { id: "watch.end", resumeFrom: "watch", gate: gate(yes, { roles: COMPETENT }) },
  ];
}
