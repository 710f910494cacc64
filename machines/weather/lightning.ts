import { amount } from "../figures/line.ts";
import type { Published } from "../figures/source.ts";
import type { WeatherLine } from "./lines.ts";

const NWS: Published = {
  title: "US National Weather Service, lightning safety",
  section: "5 s a mile from flash to bang; shelter at 30 s or less, about 6 miles; thunder that is heard is in striking range",
  seen: "read",
};
const SECONDS_PER_MILE = 5;
const STOP_COUNT_S = 30;

/** Who sees lightning this near is in shelter by then, miles. */
export const STOP_MILES = STOP_COUNT_S / SECONDS_PER_MILE;

/** How far a flash was. There is nothing here that says to go on: thunder that is heard stops work however far it is. */
export type Lightning = {
  readonly miles: number;
  readonly stopMiles: number;
  /** At the distance from which everybody is in shelter by now; farther, they are on their way. */
  readonly withinStop: boolean;
  readonly line: WeatherLine;
};

/**
 * How far a flash was, from the seconds until its thunder, and the distance at which shelter is taken at the latest. The seconds must be
 * without problems (`problemsOfFlashToBang`).
 *
 * @example lightning(30).miles // 6
 */
export function lightning(seconds: number): Lightning {
  const miles = amount(seconds / SECONDS_PER_MILE, "mi");
  return {
    miles: miles.n,
    stopMiles: STOP_MILES,
    withinStop: seconds <= STOP_COUNT_S,
    line: {
      formula: "flashToBang",
      inputs: [
        { name: "count", is: amount(seconds, "s"), source: "site" },
        { name: "perMile", is: amount(SECONDS_PER_MILE, "s"), source: NWS },
      ],
      result: miles,
      source: NWS,
      leftOut: ["strikesAhead"],
    },
  };
}

/**
 * The earliest moment at which work may go on, in ms: a quiet time after the last thunder, and each thunder starts it over. `null` where
 * none was heard. The quiet time, s, is the job's (`limits.thunderS`).
 *
 * @example quietAt([1000, 901000], 1800) // 2701000
 */
export const quietAt = (thunders: readonly number[], quietS: number): number | null =>
  thunders.length === 0 ? null : Math.max(...thunders) + quietS * 1000;
