import type { WindAt } from "../weather/trend.ts";
import type { Reading } from "./commands.ts";
import { inALee } from "./reading.ts";
import type { JobState, WindRead } from "./state.ts";
import { worstMph } from "./weather.ts";

/** So many readings, and those of the last hour, are kept: a trend is made of no others. */
const MAX_KEPT = 30;
const MAX_AGE_MS = 60 * 60_000;

/** The winds that are kept with one more reading, marked where it only counts for the watch; one in a lee is none of the site. */
export function windsAnd(winds: readonly WindRead[], reading: Reading, only: "watch" | null = null): readonly WindRead[] {
  if (reading.kind !== "wind" || inALee(reading)) return winds;
  const { mph, gustMph, takenAt } = reading;
  const one: WindRead = { mph, gustMph, takenAt, ...(only === null ? {} : { onlyWatched: true }) };
  return [...winds.filter((before) => takenAt - before.takenAt <= MAX_AGE_MS), one].slice(-MAX_KEPT);
}

/** As one series: the gusts; or, where none was read, what the means may gust to. The two are never mixed. */
export function asSeries(winds: readonly WindRead[]): readonly WindAt[] {
  const gusty = winds.filter(({ gustMph }) => gustMph !== null);
  return (gusty.length > 0 ? gusty : winds).map((wind) => ({ takenAt: wind.takenAt, mph: worstMph(wind) }));
}

/**
 * The series of a job that a trend is seen from, each wind as the gust that counts: all that was read, and that without what only counts for
 * the watch. A wind of the watch may so make a trend, and takes none back.
 */
export function recentWinds({ wind, winds }: Pick<JobState, "wind" | "winds">): readonly (readonly WindAt[])[] {
  const all = winds ?? (wind ? [wind] : []);
  const cleared = all.filter(({ onlyWatched }) => !onlyWatched);
  return cleared.length < all.length ? [asSeries(all), asSeries(cleared)] : [asSeries(all)];
}
