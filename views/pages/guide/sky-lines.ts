import type { LiveJob } from "../../../machines/conversation/live-job.ts";
import { trendNow } from "../../../machines/conversation/wind-trend.ts";
import { AIR_GOOD_FOR_MS } from "../../../machines/install/air.ts";
import { currentStep } from "../../../machines/install/job.ts";
import { cold } from "../../../machines/weather/cold.ts";
import { heat } from "../../../machines/weather/heat.ts";
import type { Words } from "../../text/words.ts";

/** What is to be known of the sky, and the same in one line of a phone beside a number pad. */
export type SkyLine = { readonly line: string; readonly brief: string };

/** What the crew has to know of the sky beside the call, the graver first: a wind on its way to the limit, heat and cold that ask for breaks. */
export function skyLines(live: LiveJob, { sky }: Words): SkyLine[] {
  const { job } = live;
  if (currentStep(job) === null) return [];
  const { context } = job.snapshot;
  const lines: SkyLine[] = [];
  const trend = trendNow(live);
  if (trend.is === "rising") {
    const min = Math.floor(trend.likelyMin);
    lines.push({ line: sky.rising(trend.limitMph, min), brief: sky.risingBrief(trend.limitMph, min) });
  }
  if (context.heat) {
    const told = heat(context.heat);
    if (told.rest.is !== "asUsual" || told.band === "danger" || told.band === "extremeDanger") {
      lines.push({ line: sky.heatShort(told), brief: sky.heatBrief(told) });
    }
  }
  if (context.cold) {
    const told = cold(context.cold);
    if (told.warmUp.is !== "asUsual" || told.frostbiteIn30Min) {
      lines.push({ line: sky.coldShort(told), brief: sky.coldBrief(told) });
    }
  }
  const { at } = live.now;
  const oldest = Math.min(context.heat?.takenAt ?? at, context.cold?.takenAt ?? at);
  if (currentStep(job)?.phase !== "standing" && at - oldest > AIR_GOOD_FOR_MS)
    lines.push({ line: sky.airTooOld(Math.floor((at - oldest) / 60_000)), brief: sky.airTooOldBrief });
  return lines.slice(0, 2);
}
