import type { TentPlan } from "../tent/types.ts";
import type { Brief } from "./brief.ts";
import { limitsFor } from "./limits.ts";
import { scriptOf } from "./script.ts";
import { planOf } from "./slides.ts";
import type { Frozen } from "./step.ts";
import { PROCEDURE } from "./version.ts";

/** A brief with all that follows from it today: plan, limits and calls, as they go into the record whole. The same brief soon again gives the same one. */
export function freeze(brief: Brief): Frozen {
  const text = JSON.stringify(brief);
  const frozen = lately.get(text) ?? freezeOn(planOf(brief), brief);
  lately.delete(text);
  lately.set(text, frozen);
  if (lately.size > MAX_KEPT) lately.delete(lately.keys().next().value!);
  return frozen;
}
/** Building its chart takes longer than everything else that opens a job, and is kept with it. */
const lately = new Map<string, Frozen>();
const MAX_KEPT = 4;

/** The same on a plan that was made before. */
export function freezeOn(plan: TentPlan, brief: Brief): Frozen {
  const limits = limitsFor(brief);
  return { procedure: PROCEDURE, brief, plan, limits, script: scriptOf(brief, plan, limits) };
}
