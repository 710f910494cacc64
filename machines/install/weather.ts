import type { Instant } from "./ids.ts";
import type { Limits } from "./limits.ts";
import type { JobState, WeatherLimits, Wind } from "./state.ts";

export type Weather = "unknown" | "workable" | "caution" | "stop";

/** Of a job's limits, those that the weather is judged by. */
export const weatherLimits = ({ raiseGustMph, stopGustMph, windOtherwiseS, thunderS }: Limits): WeatherLimits => ({
  raiseGustMph: raiseGustMph.is,
  stopGustMph: stopGustMph.is,
  windOtherwiseS: windOtherwiseS.is,
  thunderS: thunderS.is,
});

/** Whether something timed still holds. From the future it does not: an unknown age is never the kinder age. */
export const fresh = (takenAt: Instant, at: Instant, goodForS: number, lastAt: Instant): boolean =>
  at >= takenAt && at >= lastAt && at - takenAt <= goodForS * 1000;

/** The wind that counts: the gust where there is one. */
export const worstMph = (wind: Wind): number => Math.max(wind.mph, wind.gustMph ?? 0);

/** Thunder stops work until it has been quiet for the whole time; a clock that ran backwards does not shorten it. */
export const thundery = ({ thunderAt, limits }: JobState, at: Instant): boolean =>
  thunderAt !== null && at - thunderAt < limits.thunderS * 1000;

/** What the weather allows. Too much wind stays too much until a new reading says otherwise; it never ages into "unknown". */
export function weatherAt(state: JobState, at: Instant): Weather {
  const { wind, limits, lastAt } = state;
  if (thundery(state, at) || (wind && worstMph(wind) >= limits.stopGustMph)) return "stop";
  if (!wind || !fresh(wind.takenAt, at, limits.windOtherwiseS, lastAt)) return "unknown";
  return worstMph(wind) >= limits.raiseGustMph ? "caution" : "workable";
}
