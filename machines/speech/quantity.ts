import type { Unit } from "../install/checks/units.ts";

/** A number with the unit that was said, if any. */
export type Quantity = { readonly n: number; readonly unit: Unit | "mph" | null };
/** The unit a number is wanted in. */
export type Wants = Unit | "mph" | "count";

/** Kilometers in an international mile: exact (NIST SP 811, B.8). */
export const KM_PER_MILE = 1.609344;
/** Kilometers per hour in a knot: the international nautical mile is 1852 m, exact (NIST SP 811, B.8). */
export const KM_PER_NAUTICAL_MILE = 1.852;
/** Newtons in a pound-force: the pound of 0.45359237 kg at 9.80665 m/s², both exact (NIST SP 811, B.8). */
export const NEWTONS_PER_LBF = 0.45359237 * 9.80665;

/**
 * Converts a quantity to the wanted unit; a bare number is assumed to be in it. `null` if the unit is of another kind.
 *
 * @example inUnit({ n: 2, unit: "ft" }, "in") // 24
 */
export function inUnit({ n, unit }: Quantity, wants: Wants): number | null {
  if (unit === null || unit === wants) return n;
  if (unit === "ft" && wants === "in") return n * 12;
  return unit === "in" && wants === "ft" ? n / 12 : null;
}
