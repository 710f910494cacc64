import type { Forecast } from "../../../machines/time/forecast.ts";
import type { Words } from "../../text/words.ts";

/** The clock at a site: instants to five minutes, the time alone today and with its day on any other; and whether one is today. */
export function clockAt(zone: string, now: number, { when }: Words): { short: (at: number) => string; today: (at: number) => boolean } {
  const FIVE = 5 * 60_000;
  const rounded = (at: number) => Math.round(at / FIVE) * FIVE;
  const today = (at: number) => when.day(zone, rounded(at)) === when.day(zone, now);
  return { today, short: (at) => (today(at) ? when.clock : when.dayAndClock)(zone, rounded(at)) };
}

/** The forecast in one short line, for a strip; `null` where there is none to give. */
export function forecastLine(told: Forecast, zone: string, now: number, words: Words): string | null {
  const { about, time } = words;
  if (!told.left || told.held) return null;
  if (told.finish) {
    const clock = clockAt(zone, now, words).short;
    const what = told.covers === "strike" ? time.struck : time.raised;
    return time.line(time.likely(what, clock(told.finish.likely)), clock(told.finish.low), clock(told.finish.high));
  }
  const whole = told.covers === "strike" ? time.strike : time.raise;
  return time.line(whole(about(told.left.likely)), about(told.left.low), about(told.left.high));
}
