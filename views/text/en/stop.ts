import { worstMph } from "../../../machines/install/weather.ts";
import type { WeatherFacts } from "../../pages/guide/weather.ts";
import { wholeMinute } from "../whole-minute.ts";
import { number } from "./names.ts";
import { when } from "./when.ts";

/** The weather stops all work: what stands larger than any call. */
export const stop = {
  /** Why, as few words as it takes: "STOP: lightning, not before 21:33". */
  why: ({ zone, wind, stops }: Pick<WeatherFacts, "zone" | "wind" | "stops">): string => {
    const why = [
      stops.lightningUntil === null ? [] : `lightning, not before ${when.clock(zone, wholeMinute(stops.lightningUntil))}`,
      stops.warning ? "weather warning" : [],
      stops.windFromMph === null || wind === null
        ? []
        : `${wind.gustMph === null ? "gusts to" : "gust"} ${number(Math.round(worstMph(wind)))}, limit ${number(stops.windFromMph)}`,
    ].flat();
    return `STOP: ${why.join("; ")}`;
  },
  /** What is begun is not left as it is; then the shelter, by its name. */
  todo: (begun: boolean, shelter: string | null): string => {
    const place = ended(shelter ?? "not known, ask the lead");
    return begun ? `Finish or lower what's in hand. Then to shelter: ${place}` : `Everybody to shelter: ${place}`;
  },
} as const;

const ended = (place: string): string => (/[.!?]$/.test(place) ? place : `${place}.`);
