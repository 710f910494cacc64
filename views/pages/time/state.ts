import type { Forecast } from "../../../machines/time/forecast.ts";
import type { PhaseStatus } from "../../../machines/time/job-stage.ts";
import type { Range } from "../../../machines/time/log-normal.ts";

/** Crew and time of one job, in words and in figures: what the page and its data are made from. */
export type TimeState = {
  readonly job: string;
  readonly title: string;
  readonly zone: string;
  readonly rehearsal: boolean;
  /** The moment it was worked out for, UTC. */
  readonly at: string;
  readonly stands: Forecast["stage"] | null;
  readonly held: boolean;
  /** People it is worked out for, and those on the brief; `null` where the plan cannot be counted. */
  readonly people: number | null;
  readonly onBrief: number | null;
  /** What has to be said before it: held, standing. */
  readonly lead: string | null;
  /** The largest line on the page. */
  readonly headline: string;
  readonly between: string | null;
  /** What belongs to it. */
  readonly notes: readonly string[];
  readonly caveat: string | null;
  /** Finished jobs that the least known phase still to come rests on. */
  readonly jobs: number;
  readonly leftMin: Range | null;
  /** Instants in UTC. */
  readonly finish: { readonly low: string; readonly likely: string; readonly high: string } | null;
  readonly phases: readonly PhaseRow[];
  readonly assumed: readonly string[];
};
export type PhaseRow = {
  readonly phase: string;
  readonly name: string;
  readonly is: PhaseStatus;
  /** Whom it is worked out for: what is done was done by those on the brief. */
  readonly people: number;
  /** Minutes by the assumed figures; `null` where there are too few people, and then `least` says how many it takes. */
  readonly estimateMin: number | null;
  readonly least: number | null;
  readonly restsOn: readonly string[];
  readonly factor: {
    readonly likely: number;
    readonly low: number;
    readonly high: number;
    readonly jobs: number;
    readonly leftOut: number;
  };
  readonly wholeMin: Range | null;
  readonly spentMin: number;
  readonly leftMin: Range | null;
  readonly overdue: boolean;
};
