import type { Brief } from "../../machines/install/brief.ts";
import { PLAN_MINUTES } from "../../machines/install/weather-plan.ts";
import type { Fields } from "./form.ts";
import { asLocal } from "./local-time.ts";
import { typed } from "./typed.ts";

const MINUTES = Object.keys(PLAN_MINUTES);
const CHOICES = ["watchedBy", "warnedBy", "at60", "at80", "atLimit"] as const;
const TIMES = ["from", "to", "readAt", "clearBy"] as const;
const isTyped = (text: string | undefined) => (text ?? "").trim() !== "";

/** The form of a weather plan and a forecast as a brief has them, not checked yet. A part of which nothing is typed is `null`; choices alone say nothing. */
export function weatherFromForm(f: Fields): { readonly weatherPlan: unknown; readonly forecast: unknown } {
  const hasPlan = MINUTES.some((key) => isTyped(f[`weatherPlan.${key}`]));
  const hasForecast = Object.entries(f).some(([name, text]) => name.startsWith("forecast.") && isTyped(text));
  return {
    weatherPlan: hasPlan
      ? {
          ...Object.fromEntries(CHOICES.map((key) => [key, f[`weatherPlan.${key}`] ?? ""])),
          ...Object.fromEntries(MINUTES.map((key) => [key, minutesIn(f[`weatherPlan.${key}`])])),
        }
      : null,
    forecast: hasForecast
      ? {
          gustMph: typed(f["forecast.gustMph"], "mph") ?? undefined,
          from: f["forecast.from"] ?? "",
          to: f["forecast.to"] ?? "",
          issuedBy: f["forecast.issuedBy"] ?? "",
          readAt: f["forecast.readAt"] ?? "",
          clearBy: isTyped(f["forecast.clearBy"]) ? f["forecast.clearBy"] : null,
        }
      : null,
  };
}

/** What stands in that form for a brief. */
export function weatherToForm({ weatherPlan, forecast, zone }: Brief): Fields {
  const plan = Object.entries(weatherPlan ?? {}).map(([key, is]) => [`weatherPlan.${key}`, String(is)]);
  if (!forecast) return Object.fromEntries(plan);
  const times = TIMES.map((key) => [`forecast.${key}`, forecast[key] === null ? "" : asLocal(forecast[key], zone)]);
  return Object.fromEntries([
    ...plan,
    ["forecast.gustMph", String(forecast.gustMph)],
    ["forecast.issuedBy", forecast.issuedBy],
    ...times,
  ]) as Fields;
}

/** Minutes as somebody typed them, below zero too, so that what is said of them is their limit. */
function minutesIn(text: string | undefined): number | string | undefined {
  const below = /^\s*[-\u2212]\s*(\d+(?:\.\d+)?)\s*$/.exec(text ?? "")?.[1];
  return below === undefined ? (typed(text, "count") ?? undefined) : -Number(below);
}
