import type { Instant } from "../../../machines/install/ids.ts";
import { currentStep, type Job } from "../../../machines/install/job.ts";
import { wallTime } from "../../../machines/install/wall-time.ts";
import { LEVELS, type Watch } from "../../../machines/install/watch.ts";
import { levelAt, levelsNow, readingDue } from "../../../machines/install/watch-now.ts";
import type { Words } from "../../text/words.ts";

/** How loudly a reading is asked for. */
export const LOUDNESS = ["quiet", "top", "loud"] as const;
type Loudness = (typeof LOUDNESS)[number];

/** What whoever watches a standing tent sees: when the wind is to be read, and what happens at which gust. */
export type WatchState = {
  /** Seconds until it is said quietly, first of all, and aloud; below zero where that is past. What is said then, and how it stands now. */
  readonly due: {
    readonly inS: readonly number[];
    readonly says: Readonly<Record<Loudness, string>>;
    readonly is: Loudness | "later";
  } | null;
  readonly levels: readonly { readonly gust: string; readonly does: string; readonly now: boolean }[];
  /** The agreed hour by which nobody is inside, in words, until the wind that it is for is over; `null` where none is. */
  readonly clearBy: string | null;
};

/** The watch of a tent that stands by a weather plan, or with an hour agreed for clearing it; `null` for any other job. */
export function watchState(job: Job, at: Instant, words: Words): WatchState | null {
  const { watch } = job.frozen.script;
  if (!watch || currentStep(job)?.phase !== "standing") return null;
  const byPlan = planState(watch, job, at, words);
  const clearBy = hourAgreed(watch, job, at, words);
  return byPlan || clearBy !== null ? { due: null, levels: [], ...byPlan, clearBy } : null;
}

function hourAgreed({ forecast }: Watch, { frozen, snapshot }: Job, at: Instant, { weatherPlan: text, when }: Words): string | null {
  if (!forecast || forecast.clearBy === null || wallTime(at, snapshot.context) >= forecast.to) return null;
  const hour = when.dayAndClock(frozen.brief.zone, forecast.clearBy);
  return wallTime(at, snapshot.context) < forecast.clearBy ? text.emptyBy(hour) : text.hourCome(hour);
}

function planState(watch: Watch, job: Job, at: Instant, { weatherPlan: text }: Words): Pick<WatchState, "due" | "levels"> | null {
  const { context } = job.snapshot;
  const { plan } = watch;
  const due = readingDue(watch, context, at);
  if (!plan || !due) return null;
  const levels = levelsNow(watch, context);
  const here = levelAt(watch, context);
  const everyS = due.everyMin * 60;
  const dueInS = Math.round((due.dueAt - at) / 1000);
  return {
    due: {
      inS: context.wind || context.watched ? [dueInS, dueInS + everyS / 2, dueInS + everyS] : [0, 0, everyS],
      says: { quiet: text.due.quiet, top: text.due.top(due.everyMin), loud: text.due.loud(due.everyMin) },
      is: due.is,
    },
    levels: LEVELS.map((level) => ({ gust: text.gust(levels[level]), does: text.does(level, plan), now: level === here })),
  };
}
