import { Temporal } from "temporal-polyfill";
import type { WallTime } from "../../install/ids.ts";

/**
 * The day that it is at a site.
 *
 * @example dayAt(1780300800000, "America/Denver") // "2026-06-01"
 */
export const dayAt = (wall: WallTime, zone: string): string =>
  Temporal.Instant.fromEpochMilliseconds(wall).toZonedDateTimeISO(zone).toPlainDate().toString();
