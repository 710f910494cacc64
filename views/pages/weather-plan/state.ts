import type { Forecast, ForecastVerdict } from "../../../machines/install/forecast.ts";
import type { Levels } from "../../../machines/install/watch.ts";
import type { WeatherPlan } from "../../../machines/install/weather-plan.ts";

/** A forecast with what it comes to, and the gust in mph that it was held against for that. */
export type HeldForecast = Forecast & { readonly verdict: ForecastVerdict; readonly limitMph: number };

/** What the page of a weather plan shows of a job. Gusts in mph. */
export type WeatherPlanState = {
  readonly job: string;
  readonly title: string;
  readonly zone: string;
  readonly shelter: string | null;
  readonly plan: WeatherPlan | null;
  readonly levels: Levels;
  readonly forecast: HeldForecast | null;
};
