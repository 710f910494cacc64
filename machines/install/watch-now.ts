import type { Instant } from "./ids.ts";
import type { JobState } from "./state.ts";
import { LEVELS, type Levels, levelsOf, type Watch } from "./watch.ts";
import { AGREED, agreedMph, worstMph } from "./weather.ts";

/** The gusts at which its plan says what to do, for a job as it stands: a lower gust may have been agreed. */
export const levelsNow = ({ limitMph }: Watch, state: Pick<JobState, "answers">): Levels =>
  levelsOf(Math.min(limitMph, agreedMph(state, AGREED.evacuate) ?? limitMph));

type WatchState = Pick<JobState, "answers" | "wind" | "watched">;
/** Whether whoever watches read the wind last: until somebody who may clear work with a wind reads it. */
const isNewer = (watched: WatchState["watched"], wind: WatchState["wind"]): watched is NonNullable<typeof watched> =>
  watched !== undefined && (!wind || watched.takenAt >= wind.takenAt);

/**
 * The level that the wind is at; `null` where it is under all of them, or none was read. A wind of whoever watches takes back nothing: of it
 * and the one before it the worse counts, as that one may be somebody's warning, which keeps an older time.
 */
export function levelAt(watch: Watch, state: WatchState): keyof Levels | null {
  const levels = levelsNow(watch, state);
  const { wind, watched } = state;
  const counts = [...(wind ? [wind] : []), ...(isNewer(watched, wind) ? [watched] : [])];
  const worst = Math.max(0, ...counts.map(worstMph));
  return [...LEVELS].reverse().find((level) => worst >= levels[level]) ?? null;
}

/** When the next reading is due, and how loudly that is said: one half of the interval quietly, the other half first of all, then aloud. */
export type ReadingDue = { readonly everyMin: number; readonly dueAt: Instant; readonly is: "later" | "quiet" | "top" | "loud" };

/** When the wind of a standing tent is to be read again by its plan; `null` where it has none. */
export function readingDue(watch: Watch, state: WatchState, at: Instant): ReadingDue | null {
  if (!watch.plan) return null;
  const everyMin = levelAt(watch, state) === null ? watch.plan.readEveryMin : watch.plan.readWindyMin;
  const everyMs = everyMin * 60_000;
  const { wind, watched } = state;
  const last = isNewer(watched, wind) ? watched : wind;
  const dueAt = last ? last.takenAt + everyMs : at;
  const late = (at - dueAt) / everyMs;
  return { everyMin, dueAt, is: late < 0 ? "later" : !last || (late >= 0.5 && late < 1) ? "top" : late < 0.5 ? "quiet" : "loud" };
}
