import type { LiveJob } from "../../../machines/conversation/live-job.ts";
import { type Forecast, heldAgainst } from "../../../machines/install/forecast.ts";
import { closedFromMph, levelsOf } from "../../../machines/install/watch.ts";
import { AGREED, agreedMph } from "../../../machines/install/weather.ts";
import type { HeldForecast, WeatherPlanState } from "./state.ts";

/** The weather plan and the forecast of a job as they stand, with the gusts that they come to. */
export function weatherPlanState({ job: { frozen, snapshot }, entries }: LiveJob): WeatherPlanState {
  const { brief, limits } = frozen;
  const limitMph = closedFromMph(limits);
  return {
    job: entries.at(0)!.entry.job,
    title: brief.title,
    zone: brief.zone,
    shelter: brief.site.stormShelter,
    plan: brief.weatherPlan ?? null,
    levels: levelsOf(Math.min(limitMph, agreedMph(snapshot.context, AGREED.evacuate) ?? limitMph)),
    forecast: brief.forecast ? heldForecast(brief.forecast, limitMph, limits.raiseGustMph.is) : null,
  };
}

/** A forecast held against the gust at which the tent is empty, and the one from which nothing is raised, both in mph. */
export function heldForecast(forecast: Forecast, limitMph: number, raiseMph: number): HeldForecast {
  const verdict = heldAgainst(forecast, limitMph, raiseMph);
  return { ...forecast, verdict, limitMph: verdict === "overRaising" ? raiseMph : limitMph };
}
