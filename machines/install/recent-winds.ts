import type { WindAt } from "../weather/trend.ts";
import type { Reading } from "./commands.ts";
import { inALee } from "./reading.ts";
import type { JobState, Wind } from "./state.ts";
import { worstMph } from "./weather.ts";

/** A wind as a trend is seen from it. */
export type WindRead = Pick<Wind, "mph" | "gustMph" | "takenAt">;

/** So many readings, and those of the last hour, are kept: a trend is made of no others. */
const MAX_KEPT = 30;
const MAX_AGE_MS = 60 * 60_000;

/** The winds that are kept with one more reading; one in a lee is none of the site. */
export function windsAnd(winds: readonly WindRead[], reading: Reading): readonly WindRead[] {
  if (reading.kind !== "wind" || inALee(reading)) return winds;
  const { mph, gustMph, takenAt } = reading;
  return [...winds.filter((one) => takenAt - one.takenAt <= MAX_AGE_MS), { mph, gustMph, takenAt }].slice(-MAX_KEPT);
}

/** As one series: the gusts; or, where none was read, what the means may gust to. The two are never mixed. */
export function asSeries(winds: readonly WindRead[]): readonly WindAt[] {
  const gusty = winds.filter(({ gustMph }) => gustMph !== null);
  return (gusty.length > 0 ? gusty : winds).map((wind) => ({ takenAt: wind.takenAt, mph: worstMph(wind) }));
}

/** The winds of a job that its trend is seen from, each as the gust that counts. */
export const recentWinds = ({ wind, winds }: Pick<JobState, "wind" | "winds">): readonly WindAt[] =>
  asSeries(winds ?? (wind ? [wind] : []));
