import * as v from "valibot";
import { type Forecast, MAX_FORECAST_DAYS, MAX_FORECAST_GUST_MPH } from "../../machines/install/forecast.ts";
import { saidOf, says, saysOf, wrongKindOf } from "./issue.ts";
import { localTime } from "./local-time.ts";
import type { Sentence, Wrong } from "./problem.ts";
import { noFields, strict } from "./strict.ts";

const DAY_MS = 24 * 3_600_000;
const MAX_ISSUER = 80;
const time = v.pipe(v.string(), v.trim(), v.minLength(1, says("empty")), v.maxLength(40, says("tooLong", 40)));
const schema = strict({
  gustMph: v.pipe(
    v.number(saysOf(({ errors }, given) => (typeof given === "string" ? errors.notNumber(given) : errors.notANumber))),
    v.check(
      (mph) => mph >= 0 && mph <= MAX_FORECAST_GUST_MPH,
      saysOf(({ weatherPlan }, mph) => weatherPlan.gustOutside(Number(mph), MAX_FORECAST_GUST_MPH)),
    ),
  ),
  from: time,
  to: time,
  issuedBy: v.pipe(v.string(), v.trim(), v.minLength(1, says("empty")), v.maxLength(MAX_ISSUER, says("tooLong", MAX_ISSUER))),
  readAt: time,
  clearBy: v.optional(v.nullable(time), null),
});

/** A forecast as a page or an office script sends it, times local to the zone, or what is wrong with it, by field. */
export function readForecast(input: unknown, zone: string): { readonly forecast: Forecast } | { readonly wrong: Wrong } {
  const read = v.safeParse(schema, input);
  const wrong = noFields<Sentence>();
  if (!read.success) {
    for (const issue of read.issues) wrong[fieldOf(v.getDotPath(issue) ?? "")] ??= saidOf(issue) ?? wrongKindOf(issue);
    return { wrong };
  }
  const { gustMph, issuedBy, ...told } = read.output;
  const at = (field: "from" | "to" | "readAt" | "clearBy"): number => {
    const text = told[field] ?? "";
    const ms = localTime(text, zone, field === "to" ? "end" : "start");
    if (ms === null) wrong[fieldOf(field)] = (w) => w.errors.date(text);
    return ms ?? 0;
  };
  const [from, to, readAt] = [at("from"), at("to"), at("readAt")];
  const clearBy = told.clearBy === null ? null : at("clearBy");
  if (Object.keys(wrong).length > 0) return { wrong };
  if (to <= from) wrong["forecast.to"] = (w) => w.weatherPlan.endsFirst(w.when.dayAndClock(zone, to), w.when.dayAndClock(zone, from));
  else if (to - from > MAX_FORECAST_DAYS * DAY_MS) wrong["forecast.to"] = (w) => w.weatherPlan.tooManyDays(MAX_FORECAST_DAYS);
  if (readAt >= to) wrong["forecast.readAt"] = (w) => w.weatherPlan.readAfter(w.when.dayAndClock(zone, to));
  if (clearBy !== null && clearBy > from)
    wrong["forecast.clearBy"] = (w) => w.weatherPlan.emptyTooLate(w.when.dayAndClock(zone, clearBy), w.when.dayAndClock(zone, from));
  return Object.keys(wrong).length > 0 ? { wrong } : { forecast: { gustMph, from, to, issuedBy, readAt, clearBy } };
}

const fieldOf = (path: string): string => (path === "" ? "forecast" : `forecast.${path}`);
