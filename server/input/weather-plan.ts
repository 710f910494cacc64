import * as v from "valibot";
import {
  AT_60,
  AT_80,
  AT_LIMIT,
  PLAN_MINUTES,
  type PlanMinutes,
  WARNED_BY,
  WATCHED_BY,
  type WeatherPlan,
} from "../../machines/install/weather-plan.ts";
import { saidOf, saysOf, wrongKindOf } from "./issue.ts";
import type { Sentence, Wrong } from "./problem.ts";
import { noFields, strict } from "./strict.ts";

const oneOf = <const T extends readonly string[]>(names: T) =>
  v.picklist(
    names,
    saysOf(({ errors }, given) => (given ? errors.notOneOf(given, names) : errors.oneOf(names))),
  );
const minutes = (field: PlanMinutes) => {
  const { from, to } = PLAN_MINUTES[field];
  const outside = saysOf(({ weatherPlan }, given) => weatherPlan.minutesOutside(Number(given), from, to));
  return v.pipe(
    v.number(saysOf(({ errors }, given) => (typeof given === "string" ? errors.notNumber(given) : errors.notANumber))),
    v.check((n) => n >= from && n <= to, outside),
    v.integer(saysOf(({ errors }) => errors.whole)),
  );
};
const schema = strict({
  watchedBy: oneOf(WATCHED_BY),
  warnedBy: oneOf(WARNED_BY),
  at60: oneOf(AT_60),
  at80: oneOf(AT_80),
  atLimit: oneOf(AT_LIMIT),
  clearMin: minutes("clearMin"),
  lowerMin: minutes("lowerMin"),
  readEveryMin: minutes("readEveryMin"),
  readWindyMin: minutes("readWindyMin"),
});

/** A weather plan as a page or an office script sends it, or what is wrong with it, by field. */
export function readWeatherPlan(input: unknown): { readonly weatherPlan: WeatherPlan } | { readonly wrong: Wrong } {
  const read = v.safeParse(schema, input);
  const wrong = noFields<Sentence>();
  if (!read.success) {
    for (const issue of read.issues) wrong[fieldOf(v.getDotPath(issue) ?? "")] ??= saidOf(issue) ?? wrongKindOf(issue);
    return { wrong };
  }
  const { readEveryMin, readWindyMin } = read.output;
  if (readWindyMin >= readEveryMin) wrong["weatherPlan.readWindyMin"] = (w) => w.weatherPlan.windyNotShorter(readWindyMin, readEveryMin);
  return Object.keys(wrong).length > 0 ? { wrong } : { weatherPlan: read.output };
}

const fieldOf = (path: string): string => (path === "" ? "weatherPlan" : `weatherPlan.${path}`);
