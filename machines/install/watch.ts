import type { Brief } from "./brief.ts";
import type { Forecast } from "./forecast.ts";
import type { Limits } from "./limits.ts";
import type { WeatherPlan } from "./weather-plan.ts";

/** What a standing tent is watched by: its weather plan, its forecast, and the limits that they are held against. Frozen with the script. */
export type Watch = {
  readonly plan: WeatherPlan | null;
  readonly forecast: Forecast | null;
  /** The gust at which nobody is inside, mph: the lower of the two that keep the tent closed. */
  readonly limitMph: number;
  /** The gust from which nothing is raised, and from which nothing is lowered, mph. */
  readonly raiseMph: number;
  readonly lowerMph: number;
  /** How long a wind reading is good for while poles come down, s. */
  readonly windS: number;
};

/** What a tent of this brief is watched by; `null` where neither plan nor forecast was told. */
export function watchOf({ weatherPlan, forecast }: Brief, limits: Limits): Watch | null {
  if (!weatherPlan && !forecast) return null;
  return {
    plan: weatherPlan ?? null,
    forecast: forecast ?? null,
    limitMph: closedFromMph(limits),
    raiseMph: limits.raiseGustMph.is,
    lowerMph: limits.stopGustMph.is,
    windS: limits.windLiftingS.is,
  };
}

/** The gust at which nobody is inside by a job's limits, mph. */
export const closedFromMph = ({ insideGustMph, stopGustMph }: Pick<Limits, "insideGustMph" | "stopGustMph">): number =>
  Math.min(insideGustMph.is, stopGustMph.is);

/** The gusts at which a plan says what to do, whole mph: three fifths and four fifths of the limit, rounded down, and the limit. */
export type Levels = { readonly at60: number; readonly at80: number; readonly atLimit: number };
export const LEVELS = ["at60", "at80", "atLimit"] as const satisfies readonly (keyof Levels)[];
export const levelsOf = (limitMph: number): Levels => ({
  at60: Math.floor(limitMph * 0.6),
  at80: Math.floor(limitMph * 0.8),
  atLimit: limitMph,
});
