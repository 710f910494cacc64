/** The units that gates are asked in. */
export const UNITS = ["in", "ft", "deg", "lbf", "turns", "mph"] as const;
export type Unit = (typeof UNITS)[number];
/** A unit as numbers come in: metric too, and counts. */
export type AnyUnit = Unit | "mm" | "m" | "count";

/** Meters in a foot and in an inch: exact by definition (NIST SP 811, B.8). */
export const METERS_PER_FOOT = 0.3048;
export const METERS_PER_INCH = 0.0254;
