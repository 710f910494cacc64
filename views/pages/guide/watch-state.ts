import type { Instant } from "../../../machines/install/ids.ts";
import { currentStep, type Job } from "../../../machines/install/job.ts";
import { LEVELS } from "../../../machines/install/watch.ts";
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
  };
  readonly levels: readonly { readonly gust: string; readonly does: string; readonly now: boolean }[];
};

/** The watch of a tent that stands by a weather plan; `null` for any other job. */
export function watchState(job: Job, at: Instant, { weatherPlan: text }: Words): WatchState | null {
  const { watch } = job.frozen.script;
  const { context } = job.snapshot;
  const due = watch?.plan && readingDue(watch, context, at);
  if (!watch?.plan || !due || currentStep(job)?.phase !== "standing") return null;
  const { plan } = watch;
  const levels = levelsNow(watch, context);
  const here = levelAt(watch, context);
  const everyS = due.everyMin * 60;
  const dueInS = Math.round((due.dueAt - at) / 1000);
  return {
    due: {
      inS: context.wind ? [dueInS, dueInS + everyS / 2, dueInS + everyS] : [0, 0, everyS],
      says: { quiet: text.due.quiet, top: text.due.top(due.everyMin), loud: text.due.loud(due.everyMin) },
      is: due.is,
    },
    levels: LEVELS.map((level) => ({ gust: text.gust(levels[level]), does: text.does(level, plan), now: level === here })),
  };
}
