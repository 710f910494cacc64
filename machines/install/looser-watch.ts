import type { Brief } from "./brief.ts";
import type { PlanMinutes } from "./weather-plan.ts";

type Way = (from: number, to: number) => boolean;
const less: Way = (from, to) => to < from;
const more: Way = (from, to) => to > from;

/** Which way the minutes of a weather plan get looser: readings farther apart, and less time for clearing and lowering. */
const MINUTES: readonly (readonly [PlanMinutes, Way])[] = [
  ["readEveryMin", more],
  ["readWindyMin", more],
  ["clearMin", less],
  ["lowerMin", less],
];

/** What a change makes looser of how the standing tent is watched: a plan that goes, its minutes, a forecast of less wind, a later hour. */
export function looserWatch(was: Brief, is: Brief): string[] {
  return [...looserPlan(was.weatherPlan, is.weatherPlan), ...looserForecast(was.forecast, is.forecast)];
}

function looserPlan(was: Brief["weatherPlan"], is: Brief["weatherPlan"]): string[] {
  if (!was) return [];
  return MINUTES.flatMap(([key, looser]) => (!is || looser(was[key], is[key]) ? [`weatherPlan.${key}`] : []));
}

function looserForecast(was: Brief["forecast"], is: Brief["forecast"]): string[] {
  if (!was) return [];
  const looser: Readonly<Record<string, boolean>> = {
    gustMph: !is || is.gustMph < was.gustMph,
    from: is !== undefined && is.from > was.from,
    to: is !== undefined && is.to < was.to,
    clearBy: is !== undefined && is.clearBy !== null && (was.clearBy === null || is.clearBy > was.clearBy),
  };
  return Object.keys(looser).flatMap((key) => (looser[key] ? [`forecast.${key}`] : []));
}
