import { type Bounds, WIND_BOUNDS } from "../figures/bounds.ts";
import { type FigureProblem, FigureProblems } from "../figures/problems.ts";

/** Of what is read off a thermometer outside, °F, and a hygrometer: against slips. Common practice, no source. */
export const AIR_BOUNDS: Bounds = { from: -80, to: 135 };
export const HUMIDITY_BOUNDS: Bounds = { from: 0, to: 100 };
/** From the flash to its thunder, s: nobody hears it from 60 miles. Common practice, no source. */
export const FLASH_TO_BANG_BOUNDS: Bounds = { from: 0, to: 300 };

/** Freezing point and degree of Celsius in Fahrenheit, and back: exact, by definition. */
export const fahrenheitOf = (celsius: number): number => celsius * 1.8 + 32;
export const celsiusOf = (fahrenheit: number): number => (fahrenheit - 32) / 1.8;

export const SUNS = ["full", "partly", "none"] as const;
/** How much sun falls on the crew. */
export type Sun = (typeof SUNS)[number];

/** The air that people work in. `sun` null: not known, and counted as full. */
export type HotAir = { readonly airF: number; readonly humidity: number; readonly sun: Sun | null };
export type ColdAir = { readonly airF: number; readonly windMph: number };

/** What is wrong with a reading for the heat; empty where nothing is. */
export function problemsOfHeat({ airF, humidity, sun }: Readonly<Record<keyof HotAir, unknown>>): readonly FigureProblem[] {
  const problems = new FigureProblems();
  problems.number(airF, { field: "airF", bounds: AIR_BOUNDS, unit: "degF" });
  problems.number(humidity, { field: "humidity", bounds: HUMIDITY_BOUNDS, unit: "percent" });
  problems.choiceOrUnknown(sun, "sun", SUNS);
  return problems.found;
}

/** The same for the cold. */
export function problemsOfCold({ airF, windMph }: Readonly<Record<keyof ColdAir, unknown>>): readonly FigureProblem[] {
  const problems = new FigureProblems();
  problems.number(airF, { field: "airF", bounds: AIR_BOUNDS, unit: "degF" });
  problems.number(windMph, { field: "windMph", bounds: WIND_BOUNDS, unit: "mph" });
  return problems.found;
}

/** The same for seconds from a flash to its thunder. */
export function problemsOfFlashToBang(seconds: unknown): readonly FigureProblem[] {
  const problems = new FigureProblems();
  problems.number(seconds, { field: "seconds", bounds: FLASH_TO_BANG_BOUNDS, unit: "s" });
  return problems.found;
}
