import type { LiveJob } from "../../../machines/conversation/live-job.ts";
import { trendNow } from "../../../machines/conversation/wind-trend.ts";
import { currentStep } from "../../../machines/install/job.ts";
import { cold } from "../../../machines/weather/cold.ts";
import { heat } from "../../../machines/weather/heat.ts";
import type { Words } from "../../text/words.ts";

/** How long what was told of the air is good for, ms: an hour. Common practice, no source. */
export const AIR_GOOD_FOR_MS = 60 * 60_000;

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
  return lines.slice(0, 2);
}
