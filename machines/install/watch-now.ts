import type { Instant } from "./ids.ts";
import type { JobState } from "./state.ts";
import { LEVELS, type Levels, levelsOf, type Watch } from "./watch.ts";
import { AGREED, agreedMph, worstMph } from "./weather.ts";

/** The gusts at which its plan says what to do, for a job as it stands: a lower gust may have been agreed. */
export const levelsNow = ({ limitMph }: Watch, state: Pick<JobState, "answers">): Levels =>
  levelsOf(Math.min(limitMph, agreedMph(state, AGREED.evacuate) ?? limitMph));

/** The level that the last wind is at; `null` where it is under all of them, or none was read. */
export function levelAt(watch: Watch, state: Pick<JobState, "answers" | "wind">): keyof Levels | null {
  const levels = levelsNow(watch, state);
  const worst = state.wind ? worstMph(state.wind) : 0;
  return [...LEVELS].reverse().find((level) => worst >= levels[level]) ?? null;
}

/** When the next reading is due, and how loudly that is said: one half of the interval quietly, the other half first of all, then aloud. */
export type ReadingDue = { readonly everyMin: number; readonly dueAt: Instant; readonly is: "later" | "quiet" | "top" | "loud" };

/** When the wind of a standing tent is to be read again by its plan; `null` where it has none. */
export function readingDue(watch: Watch, state: Pick<JobState, "answers" | "wind">, at: Instant): ReadingDue | null {
  if (!watch.plan) return null;
  const everyMin = levelAt(watch, state) === null ? watch.plan.readEveryMin : watch.plan.readWindyMin;
  const everyMs = everyMin * 60_000;
  const dueAt = state.wind ? state.wind.takenAt + everyMs : at;
  const late = (at - dueAt) / everyMs;
  return { everyMin, dueAt, is: late < 0 ? "later" : !state.wind || (late >= 0.5 && late < 1) ? "top" : late < 0.5 ? "quiet" : "loud" };
}
