import { Temporal } from "temporal-polyfill";
import type { WallTime } from "../install/ids.ts";
import type { Clock } from "../speech/clock.ts";

const MINUTE_MS = 60_000;

/**
 * The wall time that a time said aloud means at a site: so many minutes ago, or the last time the clock there showed it.
 * Where morning and afternoon are both possible it is the later one that is past. `null` means now.
 */
export function instantOf(clock: Clock | null, zone: string, now: WallTime): WallTime {
  if (clock === null) return now;
  if ("minutesAgo" in clock) return now - Math.round(clock.minutesAgo * MINUTE_MS);
  const here = Temporal.Instant.fromEpochMilliseconds(now).toZonedDateTimeISO(zone);
  const open = clock.half === null && clock.hour >= 1 && clock.hour <= 12;
  const hours = open ? [clock.hour % 12, (clock.hour % 12) + 12] : [clock.hour];
  const past = [0, 1].flatMap((days) =>
    hours.map(
      (hour) =>
        here
          .toPlainDate()
          .subtract({ days })
          .toZonedDateTime({ timeZone: zone, plainTime: { hour, minute: clock.minute } }).epochMilliseconds,
    ),
  );
  return Math.max(...past.filter((at) => at <= now));
}
