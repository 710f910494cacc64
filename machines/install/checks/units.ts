export { METERS_PER_FOOT, METERS_PER_INCH } from "../../figures/units.ts";

/** The units that gates are asked in. */
export const UNITS = ["in", "ft", "deg", "lbf", "turns", "mph"] as const;
export type Unit = (typeof UNITS)[number];
/** A unit as numbers come in: metric too, and counts. */
export type AnyUnit = Unit | "mm" | "m" | "count";
