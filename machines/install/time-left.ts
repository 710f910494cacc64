import { windTrend } from "../weather/trend.ts";
import type { Instant } from "./ids.ts";
import { recentWinds } from "./recent-winds.ts";
import { indexOf } from "./script-index.ts";
import type { JobState } from "./state.ts";
import type { Script, Step, Work } from "./step.ts";
import { wallTime } from "./wall-time.ts";
import type { Watch } from "./watch.ts";
import { warned } from "./weather.ts";

/** What says how long there is until nothing may be lowered. */
export type TimeLeft = { readonly leftMin: number; readonly because: "warning" | "trend" | "forecast" };
/** Lowering takes longer than there is, both in minutes. */
export type TooLong = TimeLeft & { readonly needMin: number };

/** Work that sends people in to bring the tent down. */
const LOWERING: readonly (Work | null)[] = ["ease", "under", "lower"];
const isLowering = ({ phase, work }: Pick<Step, "phase" | "work">): boolean => phase === "struck" && LOWERING.includes(work);

/**
 * The minutes that are left before wind in which nothing is lowered; `null` where nothing says that it comes, which is no promise. A
 * warning in force leaves none, as nobody knows how long. Of a rising wind the soonest counts, of a forecast the beginning.
 */
export function timeLeft(watch: Watch, state: JobState, at: Instant): TimeLeft | null {
  const { forecast, lowerMph } = watch;
  const all: TimeLeft[] = [];
  if (warned(state)) all.push({ leftMin: 0, because: "warning" });
  for (const readings of recentWinds(state)) {
    const trend = windTrend({ readings, at, limitMph: lowerMph, goodForS: watch.windS });
    if (trend.is === "rising") all.push({ leftMin: Math.floor(trend.soonestMin), because: "trend" });
  }
  const now = wallTime(at, state);
  if (forecast && forecast.gustMph >= lowerMph && now < forecast.to)
    all.push({ leftMin: Math.max(0, Math.floor((forecast.from - now) / 60_000)), because: "forecast" });
  return all.sort((a, b) => a.leftMin - b.leftMin)[0] ?? null;
}

/** The minutes that bringing the tent down still takes from a call on: of the plan's time the share of the calls that are left. */
export function lowerMinFrom({ steps }: Script, call: Step, lowerMin: number): number {
  const all = steps.filter(isLowering);
  return Math.ceil((lowerMin * (all.length - Math.max(0, all.indexOf(call)))) / Math.max(1, all.length));
}

/** Why nobody is sent in to lower at a call; `null` where it is no such call, where no plan says how long it takes, or where there is time. */
export function tooLong(script: Script, { id }: Pick<Step, "id">, state: JobState, at: Instant): TooLong | null {
  const { watch } = script;
  const call = script.steps[indexOf(script).at.get(id) ?? -1];
  if (!watch?.plan || !call || !isLowering(call)) return null;
  const left = timeLeft(watch, state, at);
  const needMin = lowerMinFrom(script, call, watch.plan.lowerMin);
  return left && needMin > left.leftMin ? { ...left, needMin } : null;
}
