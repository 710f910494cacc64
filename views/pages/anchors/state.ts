import { screenedOf } from "../../../machines/install/anchor-screening.ts";
import { ballastOf, type Weights, type WeightsNotKnown } from "../../../machines/install/ballast.ts";
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
  /** What the weights have to weigh, or why that is not known; `null` where none is used. */
  readonly ballast: Weights | WeightsNotKnown | null;
};

/** Worked out when the page is asked for: nothing of it is stored but what a call tells. */
export function anchorsState(job: string, { brief, plan }: Frozen): AnchorsState {
  const screened = screenedOf(brief, plan);
  return {
    job,
    title: brief.title,
    plan,
    screening: screened?.screening ?? null,
    worst: screened?.worst?.station ?? null,
    ballast: ballastOf(brief, plan),
  };
}
