/** What lengths are written in: feet and inches, or whole millimeters. */
export type Units = "ft" | "mm";
export const UNITS: readonly Units[] = ["ft", "mm"];
