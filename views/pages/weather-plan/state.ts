import type { Forecast, ForecastVerdict } from "../../../machines/install/forecast.ts";
import type { Levels } from "../../../machines/install/watch.ts";
import type { WeatherPlan } from "../../../machines/install/weather-plan.ts";

/** What the page of a weather plan shows of a job. Gusts in mph. */
export type WeatherPlanState = {
  readonly job: string;
  readonly title: string;
  readonly zone: string;
  readonly shelter: string | null;
  readonly plan: WeatherPlan | null;
  readonly levels: Levels;
  readonly forecast: (Forecast & { readonly verdict: ForecastVerdict; readonly limitMph: number }) | null;
};
