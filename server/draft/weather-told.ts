import type { Fields } from "../input/form.ts";
import { parseJson } from "../input/json.ts";

/** The fields of a draft that have its weather plan and its forecast, as JSON: no form of a step shows them. */
export const WEATHER_FIELDS = ["weatherPlan", "forecast"] as const;
export type WeatherField = (typeof WEATHER_FIELDS)[number];

/** Both as they were told, not checked: times as the clock at the site shows them. A part is absent where nobody told it. */
export const weatherTold = (f: Fields): { readonly [P in WeatherField]?: unknown } =>
  Object.fromEntries(WEATHER_FIELDS.flatMap((part) => (f[part] ? [[part, parseJson(f[part])]] : [])));
