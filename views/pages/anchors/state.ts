import type { Amount } from "../../../machines/figures/line.ts";
import { amount } from "../../../machines/figures/line.ts";
import { screenedOf } from "../../../machines/install/anchor-screening.ts";
import { ballastOf } from "../../../machines/install/ballast.ts";
import type { Frozen } from "../../../machines/install/step.ts";
import type { Screening } from "../../../machines/loads/screening.ts";
import type { TentPlan } from "../../../machines/tent/types.ts";

/** What the anchors of a job come to; `null` where nobody told anything of them. */
export type AnchorsState = {
  readonly job: string;
  readonly title: string;
  readonly plan: TentPlan;
  readonly screening: Screening | null;
  /** The station with the largest load of a stake. */
  readonly worst: string | null;
  /** Where weights are used: what each weighs, and how many straps end at one. */
  readonly ballast: { readonly each: Amount; readonly straps: number } | null;
};

/** Worked out when the page is asked for: nothing of it is stored but what a call tells. */
export function anchorsState(job: string, { brief, plan }: Frozen): AnchorsState {
  const screened = screenedOf(brief, plan);
  const weights = ballastOf(brief, plan);
  return {
    job,
    title: brief.title,
    plan,
    screening: screened?.screening ?? null,
    worst: screened?.worst?.station ?? null,
    ballast: weights && { each: amount(weights.eachLb, "lb"), straps: weights.straps },
  };
}
