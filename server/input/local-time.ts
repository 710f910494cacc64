import { Temporal } from "temporal-polyfill";
import type { WallTime } from "../../machines/install/ids.ts";

/** A local day or time of the zone; a day means its first moment at the start and its last at the end. `null` where it is neither. */
export function localTime(text: string, zone: string, end: "start" | "end"): WallTime | null {
  try {
    if (text.includes("T")) return Temporal.PlainDateTime.from(text).toZonedDateTime(zone).epochMilliseconds;
    const day = Temporal.PlainDate.from(text);
    const from = day.toZonedDateTime(zone).epochMilliseconds;
    return end === "start" ? from : day.add({ days: 1 }).toZonedDateTime(zone).epochMilliseconds - 1;
  } catch {
    return null;
  }
}

/** The same the other way: a moment as the clock of a zone shows it, to the minute, as a form has it. */
export const asLocal = (at: WallTime, zone: string): string =>
  Temporal.Instant.fromEpochMilliseconds(at).toZonedDateTimeISO(zone).toPlainDateTime().toString({ smallestUnit: "minute" });
