import type { StationScreened } from "../../machines/loads/screening.ts";

/** What the screening of one station's anchors comes to, as it is drawn. */
export type StationRatio = Pick<StationScreened, "station" | "verdict" | "ratio" | "isAtLeast">;

/** Ratios as they are drawn: by station; `null` where none is known, and then none are drawn. */
export const ratiosDrawn = (stations: readonly StationRatio[] | undefined): ReadonlyMap<string, StationRatio> | null =>
  stations?.some(({ ratio }) => ratio !== null) ? new Map(stations.map((one) => [one.station, one])) : null;
