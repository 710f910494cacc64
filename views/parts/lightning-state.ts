import type { Instant } from "../../machines/install/ids.ts";
import type { Job } from "../../machines/install/job.ts";
import { wallTime } from "../../machines/install/wall-time.ts";
import { thundery } from "../../machines/install/weather.ts";
import { lightning, STOP_MILES } from "../../machines/weather/lightning.ts";
import { wholeMinute } from "../text/whole-minute.ts";
import type { Words } from "../text/words.ts";
import type { LightningFacts } from "./lightning-facts.ts";

/** The last thunder, for as long as it stops work; `null` where none does. */
export function lightningFacts({ snapshot: { context }, frozen: { brief } }: Job, at: Instant, { when }: Words): LightningFacts | null {
  const { thunderAt, limits, flash } = context;
  if (thunderAt === null || !thundery(context, at)) return null;
  const quietAt = thunderAt + limits.thunderS * 1000;
  const told = flash?.at === thunderAt ? lightning(flash.seconds) : null;
  return {
    agoS: Math.max(0, Math.floor((at - thunderAt) / 1000)),
    leftS: Math.ceil((quietAt - at) / 1000),
    miles: told?.miles ?? null,
    stopMiles: STOP_MILES,
    withinStop: told?.withinStop ?? false,
    quietAt: when.clock(brief.zone, wholeMinute(wallTime(quietAt, context))),
  };
}
