const MINUTE_MS = 60_000;

/** The next whole minute: a clock that shows no seconds must never name a moment before the one that is meant. */
export const wholeMinute = (at: number): number => Math.ceil(at / MINUTE_MS) * MINUTE_MS;
