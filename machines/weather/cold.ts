import { amount } from "../figures/line.ts";
import type { Published } from "../figures/source.ts";
import type { ColdAir } from "./air.ts";
import type { WeatherLine } from "./lines.ts";

const WIND_CHILL: Published = { title: "US National Weather Service, wind chill, 2001", section: "formula of the chart", seen: "read" };
/** From memory: the formula holds up to 50 °F and from 3 mph. Outside of that the air's own temperature is all that is said. */
export const CHILL = { maxAirF: 50, minMph: 3 } as const;
const FROSTBITE: Published = {
  title: "US National Weather Service, wind chill chart",
  section: "frostbite in 30 min from −18 °F down",
  seen: "read",
};
const FROSTBITE_F = -18;
const WARM_UP: Published = {
  title: "Saskatchewan, Work Warm-up Schedule, outdoor activities",
  section: "any four hours, 10 min in the warm at each break (studylib.net/doc/6592367)",
  seen: "read",
};
/** From memory (ACGIH): bare hands lose their skill below about 60 °F. */
const BARE_HANDS: Published = { title: "ACGIH, cold stress", section: "fine work with bare hands, about 60 °F", seen: "memory" };
const BARE_HANDS_F = 60;
/** Heavy work in the cold dries people out as well; no rule gives an amount. Common practice, no source. */
const WARM_DRINKS = "practice";

/** Steps of the schedule, from usual breaks to only what cannot wait. */
export type WarmUp =
  | { readonly is: "asUsual" }
  | { readonly is: "breaks"; readonly workMin: number; readonly breaksInFourHours: number; readonly source: Published }
  | { readonly is: "emergencyOnly"; readonly source: Published };

const SCHEDULE: readonly WarmUp[] = [
  { is: "asUsual" },
  { is: "asUsual" },
  { is: "breaks", workMin: 75, breaksInFourHours: 2, source: WARM_UP },
  { is: "breaks", workMin: 55, breaksInFourHours: 3, source: WARM_UP },
  { is: "breaks", workMin: 40, breaksInFourHours: 4, source: WARM_UP },
  { is: "breaks", workMin: 30, breaksInFourHours: 5, source: WARM_UP },
];

export type Cold = {
  /** The wind chill, or the air's own temperature where the formula does not hold. */
  readonly chillF: number;
  readonly frostbiteIn30Min: boolean;
  readonly frostbiteSource: Published;
  readonly warmUp: WarmUp;
  /** Wind over the 20 mph that the schedule ends at: what it gives is too little. */
  readonly beyondSchedule: boolean;
  readonly gloves: { readonly needed: boolean; readonly source: Published };
  /** Something warm to drink at each break. No rule gives an amount. */
  readonly drinks: { readonly needed: boolean; readonly source: typeof WARM_DRINKS };
  readonly lines: readonly WeatherLine[];
};

/**
 * Wind chill, frostbite, and the warm-up breaks of a crew at work. The air must be without problems (`problemsOfCold`).
 *
 * @example cold({ airF: 30, windMph: 0 }).chillF // 30
 */
export function cold({ airF, windMph }: ColdAir): Cold {
  const chill = airF <= CHILL.maxAirF && windMph >= CHILL.minMph ? chillLine(airF, windMph) : null;
  const chillF = chill?.result.n ?? airF;
  const warmUp = warmUpAt(airF, windMph);
  return {
    chillF,
    frostbiteIn30Min: chillF <= FROSTBITE_F,
    frostbiteSource: FROSTBITE,
    warmUp,
    beyondSchedule: warmUp.is === "breaks" && windMph > 20,
    gloves: { needed: airF < BARE_HANDS_F, source: BARE_HANDS },
    drinks: { needed: warmUp.is !== "asUsual", source: WARM_DRINKS },
    lines: chill ? [chill] : [],
  };
}

/**
 * The schedule goes one step up for every 5 °F from −15 °F down, and for every 5 mph of wind up to 20. Between two steps it is the stricter
 * one. Above −15 °F it gives nothing but the usual breaks.
 */
function warmUpAt(airF: number, windMph: number): WarmUp {
  const row = Math.ceil((-14 - airF) / 5) - 1;
  if (airF > -15 || row < 0) return { is: "asUsual" };
  const column = Math.min(4, Math.ceil(windMph / 5));
  return SCHEDULE[row + column] ?? { is: "emergencyOnly", source: WARM_UP };
}

function chillLine(airF: number, windMph: number): WeatherLine {
  const v = windMph ** 0.16;
  return {
    formula: "windChill",
    inputs: [
      { name: "air", is: amount(airF, "degF"), source: "site" },
      { name: "wind", is: amount(windMph, "mph"), source: "site" },
    ],
    result: amount(35.74 + 0.6215 * airF - 35.75 * v + 0.4275 * airF * v, "degF"),
    source: WIND_CHILL,
    leftOut: ["windAtTenMeters", "wetClothes"],
  };
}
