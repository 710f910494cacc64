import type { LiveJob } from "../../../machines/conversation/live-job.ts";
import type { Published } from "../../../machines/figures/source.ts";
import { AIR_GOOD_FOR_MS } from "../../../machines/install/air.ts";
import { warned } from "../../../machines/install/weather.ts";
import { cold } from "../../../machines/weather/cold.ts";
import { gustiness } from "../../../machines/weather/gust.ts";
import { heat } from "../../../machines/weather/heat.ts";
import type { Words } from "../../text/words.ts";

/** Something that was told of the air and what it comes to, line by line; `null` where nobody told it. */
type Told = { readonly lines: readonly string[] } | null;

/** What the pages of the sky show besides what the guide does. */
export type AirState = {
  /** That the wind gusts more than open ground makes it. */
  readonly gusty: string | null;
  /** The warnings in force, as they were read out. */
  readonly warnings: readonly string[];
  readonly heat: Told;
  readonly cold: Told;
};

/** What was told of the air, at a moment, in the words of a screen. */
export function airState({ job, now: { at } }: LiveJob, { sky, weatherWords: _, ...words }: Words): AirState {
  const { context } = job.snapshot;
  const { wind } = context;
  const gusts = wind && wind.gustMph !== null ? gustiness({ mph: wind.mph, gustMph: wind.gustMph }) : null;
  const age = (takenAt: number) => {
    const ms = Math.max(0, at - takenAt);
    return sky.read(Math.floor(ms / 60_000), ms > AIR_GOOD_FOR_MS);
  };
  const told = context.heat && heat(context.heat);
  const chilled = context.cold && cold(context.cold);
  return {
    gusty: gusts?.turbulent ? sky.gusty(gusts) : null,
    warnings: warned(context) ? (context.warnings ?? []).map(sky.warning) : [],
    heat:
      told && context.heat
        ? {
            lines: [
              words.intentText({ type: "reading", reading: { kind: "heat", ...context.heat } }),
              sky.heatLine(told),
              ...(told.waterQtPerHour === null ? [] : [sky.water(told.waterQtPerHour)]),
              age(context.heat.takenAt),
              sky.source(sourcesOf([told.bandSource, told.triggerSource, ...told.lines.map((line) => line.source)], sky.memory)),
            ],
          }
        : null,
    cold:
      chilled && context.cold
        ? {
            lines: [
              words.intentText({ type: "reading", reading: { kind: "cold", ...context.cold } }),
              sky.coldLine(chilled),
              age(context.cold.takenAt),
              sky.source(
                sourcesOf([chilled.frostbiteSource, chilled.gloves.source, ...chilled.lines.map((line) => line.source)], sky.memory),
              ),
            ],
          }
        : null,
  };
}

/** Each title once; what is from memory says so. */
function sourcesOf(sources: readonly unknown[], memory: string): readonly string[] {
  const titles = sources.flatMap((source) => {
    if (typeof source !== "object" || source === null || !("title" in source)) return [];
    const { title, seen } = source as Published;
    return [seen === "memory" ? `${title} (${memory})` : title];
  });
  return [...new Set(titles)];
}
