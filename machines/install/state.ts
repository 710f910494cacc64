import type { Answer } from "./gates.ts";
import type { EntryNo, GateId, Instant, PersonId, StepId } from "./ids.ts";
import type { SiteState } from "./step.ts";

export type Wind = { readonly mph: number; readonly gustMph: number | null; readonly takenAt: Instant };

export type WeatherLimits = {
  readonly raiseGustMph: number;
  readonly stopGustMph: number;
  readonly windOtherwiseS: number;
  readonly thunderS: number;
};

/** The chart's context. With the chart's value it is all there is to a job's state. */
export type JobState = {
  /** The last entry that changed what "next" would mean. */
  readonly revision: EntryNo;
  /** Time of the last entry. A clock behind it makes every timed answer stale. */
  readonly lastAt: Instant;
  readonly heldBy: PersonId | null;
  /** What the weather is judged by, from the limits that the job was frozen with. */
  readonly limits: WeatherLimits;
  readonly site: SiteState;
  /** Where this run of calls began: the first call, or where a job was stood down to. */
  readonly startedFrom: StepId;
  /** While making safe: where going on starts again. */
  readonly resumeAt: StepId | null;
  readonly answers: Readonly<Record<GateId, Answer>>;
  readonly waived: Readonly<Record<GateId, { readonly because: string; readonly by: PersonId; readonly entry: EntryNo }>>;
  readonly wind: Wind | null;
  readonly thunderAt: Instant | null;
  readonly proposed: { readonly entry: EntryNo; readonly by: PersonId; readonly because: string } | null;
};
