import { GUST_FACTOR } from "../weather/gust.ts";
import { airStops } from "./air.ts";
import type { Reading } from "./commands.ts";
import type { GateId, Instant } from "./ids.ts";
import type { Limits } from "./limits.ts";
import type { JobState, WeatherLimits, Wind } from "./state.ts";

export type Weather = "unknown" | "workable" | "caution" | "stop";

/** Of a job's limits, those that the weather is judged by. */
export const weatherLimits = ({ raiseGustMph, stopGustMph, windOtherwiseS, thunderS, sessionS }: Limits): WeatherLimits => ({
  raiseGustMph: raiseGustMph.is,
  stopGustMph: stopGustMph.is,
  windOtherwiseS: windOtherwiseS.is,
  thunderS: thunderS.is,
  sessionS: sessionS.is,
});

/** Whether something timed still holds. From the future it does not: an unknown age is never the kinder age. */
export const fresh = (takenAt: Instant, at: Instant, goodForS: number, lastAt: Instant): boolean =>
  at >= takenAt && at >= lastAt && at - takenAt <= goodForS * 1000;

/** The wind that counts: the gust, or what the mean may gust to where nobody gave one. */
export const worstMph = ({ mph, gustMph }: Pick<Wind, "mph" | "gustMph">): number =>
  gustMph === null ? mph * GUST_FACTOR : Math.max(mph, gustMph);

/** Whether a reading can only stop work: such a one counts whoever says it, and whatever its time says. */
export const canOnlyStop = (reading: Reading, { limits }: Pick<JobState, "limits">): boolean =>
  reading.kind === "wind"
    ? worstMph(reading) >= limits.stopGustMph
    : reading.kind === "thunder" || reading.kind === "warning" || airStops(reading);

/** Gates whose answer is a gust, agreed with the customer's person, at which something is done. */
export const AGREED = { evacuate: "plan.evacuate", walls: "plan.walls" } as const;

/** The gust that was agreed at such a gate, in mph; `null` where nothing was. */
export function agreedMph({ answers }: Pick<JobState, "answers">, gate: GateId | undefined): number | null {
  const value = gate === undefined ? undefined : answers[gate]?.value;
  return value?.kind === "measure" ? value.n : null;
}

/**
 * Whether a wind is over a limit in force and worse than the one on record. Such a wind counts whoever reports it. It does not
 * renew the reading: that takes somebody who may read the wind.
 */
export function isWorse(reading: Reading, state: Pick<JobState, "limits" | "answers" | "wind">): boolean {
  if (reading.kind !== "wind") return false;
  const agreed = Object.values(AGREED).flatMap((gate) => agreedMph(state, gate) ?? []);
  const worst = worstMph(reading);
  return worst >= Math.min(state.limits.raiseGustMph, ...agreed) && (!state.wind || worst > worstMph(state.wind));
}

/** The gate of the weather warning: anybody may answer it with a warning, and those who may with none. */
export const WARNING = "warning";

/** A warning stops work until somebody who may says that it is over. */
export const warned = ({ answers }: Pick<JobState, "answers">): boolean => {
  const value = answers[WARNING]?.value;
  return value?.kind === "yesNo" && !value.yes;
};

/** Thunder stops work until it has been quiet for the whole time; a clock that ran backwards does not shorten it. */
export const thundery = ({ thunderAt, limits }: Pick<JobState, "thunderAt" | "limits">, at: Instant): boolean =>
  thunderAt !== null && at - thunderAt < limits.thunderS * 1000;

/** What the weather allows. Too much wind stays too much until a new reading says otherwise; it never ages into "unknown". */
export function weatherAt(state: Pick<JobState, "wind" | "limits" | "lastAt" | "thunderAt" | "answers">, at: Instant): Weather {
  const { wind, limits, lastAt } = state;
  if (thundery(state, at) || warned(state) || (wind && worstMph(wind) >= limits.stopGustMph)) return "stop";
  if (!wind || !fresh(wind.takenAt, at, limits.windOtherwiseS, lastAt)) return "unknown";
  return worstMph(wind) >= limits.raiseGustMph ? "caution" : "workable";
}
