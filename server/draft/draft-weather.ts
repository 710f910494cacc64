import type { Forecast } from "../../machines/install/forecast.ts";
import { gustLimits } from "../../machines/install/limits.ts";
import { closedFromMph } from "../../machines/install/watch.ts";
import { heldForecast } from "../../views/pages/weather-plan/build-state.ts";
import type { HeldForecast } from "../../views/pages/weather-plan/state.ts";
import { readForecast } from "../input/forecast.ts";
import type { Fields } from "../input/form.ts";
import type { Wrong } from "../input/problem.ts";
import { typed } from "../input/typed.ts";
import { weatherFromForm } from "../input/weather-form.ts";
import { readWeatherPlan } from "../input/weather-plan.ts";
import { isUnknown, zoneOf } from "./draft-brief.ts";
import { type PartFields, partField, partsEntered } from "./draft-parts.ts";

/** What a draft keeps of a form of both parts; or what is wrong with it, by field. */
export function weatherTyped(form: Fields, f: Fields): { readonly fields: PartFields } | { readonly wrong: Wrong } {
  const { weatherPlan, forecast } = weatherFromForm(form);
  const read = [
    ...(weatherPlan === null ? [] : [readWeatherPlan(weatherPlan)]),
    ...(forecast === null ? [] : [readForecast(forecast, zoneOf(f))]),
  ];
  const wrong: Wrong = Object.assign({}, ...read.map((part) => ("wrong" in part ? part.wrong : {})));
  if (Object.keys(wrong).length > 0) return { wrong };
  return { fields: { weatherPlan: partField(weatherPlan), forecast: partField(forecast) } };
}

/** What stands in that form for a draft. */
export function weatherShown(f: Fields): Fields {
  const { weatherPlan, forecast } = partsEntered(f);
  return Object.fromEntries(
    Object.entries({ weatherPlan, forecast }).flatMap(([part, entered]) =>
      Object.entries((entered ?? {}) as object).map(([key, is]) => [`${part}.${key}`, is === null ? "" : String(is)]),
    ),
  );
}

/** The forecast of a draft, held against the gusts of its sheet as far as that is told; `null` where it has none that can be read. */
export function heldOnDraft(f: Fields): HeldForecast | null {
  const forecast = forecastOf(f);
  if (!forecast) return null;
  const limits = gustLimits(isUnknown(f, "sheet") ? null : gustsTyped(f));
  return heldForecast(forecast, closedFromMph(limits), limits.raiseGustMph.is);
}

function forecastOf(f: Fields): Forecast | null {
  const { forecast } = partsEntered(f);
  const read = forecast === undefined ? null : readForecast(forecast, zoneOf(f));
  return read && "forecast" in read ? read.forecast : null;
}

function gustsTyped(f: Fields) {
  const gust = (key: string): number | null => {
    const mph = typed(f[`sheet.${key}`], "mph");
    return typeof mph === "number" ? mph : null;
  };
  return { raiseGustMph: gust("raiseGustMph"), stopGustMph: gust("stopGustMph"), insideGustMph: gust("insideGustMph") };
}
