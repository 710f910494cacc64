import type { LiveJob } from "../../../machines/conversation/live-job.ts";
import { trendNow } from "../../../machines/conversation/wind-trend.ts";
import { AIR_GOOD_FOR_MS } from "../../../machines/install/air.ts";
import { currentStep } from "../../../machines/install/job.ts";
import { cold } from "../../../machines/weather/cold.ts";
import { heat } from "../../../machines/weather/heat.ts";
import type { Words } from "../../text/words.ts";

/** What the crew has to know of the sky beside the call, the graver first: a wind on its way to the limit, heat and cold that ask for breaks. */
export function skyLines(live: LiveJob, { sky }: Words): string[] {
  const { job } = live;
  if (currentStep(job) === null) return [];
  const { context } = job.snapshot;
  const lines: string[] = [];
  const trend = trendNow(live);
  if (trend.is === "rising") lines.push(sky.rising(trend.limitMph, Math.floor(trend.likelyMin)));
  if (context.heat) {
    const told = heat(context.heat);
    if (told.rest.is !== "asUsual" || told.band === "danger" || told.band === "extremeDanger") lines.push(sky.heatShort(told));
  }
  if (context.cold) {
    const told = cold(context.cold);
    if (told.warmUp.is !== "asUsual" || told.frostbiteIn30Min) lines.push(sky.coldShort(told));
  }
  const { at } = live.now;
  const oldest = Math.min(context.heat?.takenAt ?? at, context.cold?.takenAt ?? at);
  if (currentStep(job)?.phase !== "standing" && at - oldest > AIR_GOOD_FOR_MS)
    lines.push(sky.airTooOld(Math.floor((at - oldest) / 60_000)));
  return lines.slice(0, 2);
}
