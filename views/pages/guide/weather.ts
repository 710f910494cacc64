import type { Instant, WallTime } from "../../../machines/install/ids.ts";
import type { Job } from "../../../machines/install/job.ts";
import type { Wind } from "../../../machines/install/state.ts";
import { wallTime } from "../../../machines/install/wall-time.ts";
import { isWatchedByOthers } from "../../../machines/install/watched.ts";
import { thundery, type Weather, warned, worstMph } from "../../../machines/install/weather.ts";
import { windwardEdges } from "../../../machines/install/windward-call.ts";
import type { EdgeName } from "../../../machines/tent/types.ts";

const MINUTE_MS = 60_000;

/** What the weather allows and rests on. `zone` is the site's, for clocks; `windward` are the edges that the wind comes at. */
export type WeatherFacts = {
  readonly is: Weather;
  readonly zone: string;
  readonly wind: Wind | null;
  readonly windMinAgo: number;
  readonly windward: readonly EdgeName[];
  readonly stops: { readonly lightningUntil: WallTime | null; readonly warning: boolean; readonly windFromMph: number | null };
};

/** The last wind of whoever watches a standing tent and lets nobody in with it, and its age in whole minutes; `null` where no newer one was read. */
export type WatchedWind = Pick<Wind, "mph" | "gustMph"> & { readonly minAgo: number };
export function watchedWind({ snapshot: { context }, frozen: { script } }: Job, at: Instant): WatchedWind | null {
  const { wind, watched } = context;
  if (!watched || !isWatchedByOthers(script) || (wind && watched.takenAt <= wind.takenAt)) return null;
  return { mph: watched.mph, gustMph: watched.gustMph, minAgo: Math.max(0, Math.floor((at - watched.takenAt) / MINUTE_MS)) };
}

/** What the weather's words are about: which edge the wind comes at, and all that stops work. */
export function weatherFacts({ snapshot: { context }, frozen: { brief } }: Job, is: Weather, at: Instant): WeatherFacts {
  const { wind, limits } = context;
  const quietAt = thundery(context, at) && context.thunderAt !== null ? context.thunderAt + limits.thunderS * 1000 : null;
  return {
    is,
    zone: brief.zone,
    wind,
    windMinAgo: wind ? Math.max(0, Math.floor((at - wind.takenAt) / MINUTE_MS)) : 0,
    windward: windwardEdges(brief, context),
    stops: {
      lightningUntil: quietAt === null ? null : wallTime(quietAt, context),
      warning: warned(context),
      windFromMph: wind && worstMph(wind) >= limits.stopGustMph ? limits.stopGustMph : null,
    },
  };
}
