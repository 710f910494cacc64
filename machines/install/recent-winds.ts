import type { WindAt } from "../weather/trend.ts";
import type { Reading } from "./commands.ts";
import { inALee } from "./reading.ts";
import type { JobState, WindRead } from "./state.ts";
import { worstMph } from "./weather.ts";

/** So many readings of each kind, and those of the last hour, are kept: a trend is made of no others. */
const MAX_KEPT = 30;
const MAX_AGE_MS = 60 * 60_000;

/** The winds that are kept with one more reading, marked where it only counts for the watch; one in a lee is none of the site. */
export function windsAnd(winds: readonly WindRead[], reading: Reading, only: "watch" | null = null): readonly WindRead[] {
  if (reading.kind !== "wind" || inALee(reading)) return winds;
  const { mph, gustMph, takenAt } = reading;
  const one: WindRead = { mph, gustMph, takenAt, ...(only === null ? {} : { onlyWatched: true }) };
  const kept = [...winds.filter((before) => takenAt - before.takenAt <= MAX_AGE_MS), one];
  const ofItsKind = kept.filter(({ onlyWatched }) => onlyWatched === one.onlyWatched);
  const over = new Set(ofItsKind.slice(0, -MAX_KEPT));
  return kept.filter((wind) => !over.has(wind));
}

/** As one series: the gusts; or, where none was read, what the means may gust to. The two are never mixed. */
export function asSeries(winds: readonly WindRead[]): readonly WindAt[] {
  const gusty = winds.filter(({ gustMph }) => gustMph !== null);
  return (gusty.length > 0 ? gusty : winds).map((wind) => ({ takenAt: wind.takenAt, mph: worstMph(wind) }));
}

/**
 * The series of a job that a trend is seen from, each wind as the gust that counts: all that was read, and each apart of
 * what only counts for the watch and what does not. A wind of the watch may so make a trend, and takes none back.
 */
export function recentWinds({ wind, winds }: Pick<JobState, "wind" | "winds">): readonly (readonly WindAt[])[] {
  const all: readonly WindRead[] = winds ?? (wind ? [wind] : []);
  const watched = all.filter(({ onlyWatched }) => onlyWatched);
  if (watched.length === 0) return [asSeries(all)];
  return [all, watched, all.filter(({ onlyWatched }) => !onlyWatched)].map(asSeries);
}
