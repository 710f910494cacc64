import type { Brief } from "../../machines/install/brief.ts";
import type { Forecast } from "../../machines/install/forecast.ts";
import type { WeatherPlan } from "../../machines/install/weather-plan.ts";
import { briefOf, MINUTE, SMALL, START } from "../proof/fixtures.ts";

export const HOUR = 60 * MINUTE;

/** A weather plan that a customer's person would agree to. */
export const WEATHER_PLAN: WeatherPlan = {
  watchedBy: "watcher",
  warnedBy: "radio",
  at60: "readOften",
  at80: "getReady",
  atLimit: "everybodyOut",
  clearMin: 15,
  lowerMin: 60,
  readEveryMin: 20,
  readWindyMin: 10,
};

/** A forecast that is over every limit, two days after the job begins. */
export const FORECAST: Forecast = {
  gustMph: 34,
  from: START + 48 * HOUR,
  to: START + 54 * HOUR,
  issuedBy: "the weather service",
  readAt: START,
  clearBy: null,
};

export type WeatherParts = Pick<Brief, "forecast" | "weatherPlan">;
/** The brief of the smallest tent with these parts. */
export const withWeather = (parts: WeatherParts): Brief => ({ ...briefOf(SMALL), ...parts });
