import { planTent } from "../tent/plan.ts";
import type { TentPlan } from "../tent/types.ts";
import type { Brief } from "./brief.ts";
import { limitsFor } from "./limits.ts";
import { scriptOf } from "./script.ts";
import type { Frozen } from "./step.ts";
import { PROCEDURE } from "./version.ts";

/** A brief with all that follows from it today: plan, limits and calls, as they go into the record whole. */
export function freeze(brief: Brief, plan: TentPlan = planTent(brief.tent)): Frozen {
  const limits = limitsFor(brief);
  return { procedure: PROCEDURE, brief, plan, limits, script: scriptOf(brief, plan, limits) };
}
