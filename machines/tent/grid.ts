import type { Point } from "./types.ts";

/** From here on a double has no millionths to keep, and times a million it may overflow. */
const NO_MILLIONTHS = 1e9;

/**
 * Rounds feet (or degrees) to a millionth, so that floating-point noise never reaches a screen or a record.
 *
 * @example toGrid(0.1 + 0.2) // 0.3
 */
export const toGrid = (ft: number): number => (Math.abs(ft) < NO_MILLIONTHS ? Math.round(ft * 1e6) / 1e6 + 0 : ft);

/**
 * Whether two lengths in feet are equal apart from rounding.
 *
 * @example nearlyEqual(20 / 3, 6.666667) // true
 */
export const nearlyEqual = (aFt: number, bFt: number): boolean => Math.abs(aFt - bFt) < 1e-5;

/**
 * Distance between two points, in feet. Uses `sqrt` because its last digit is the same on every machine; `hypot`'s is not.
 *
 * @example distanceFt({ xFt: 0, yFt: 0 }, { xFt: 30, yFt: 40 }) // 50
 */
export const distanceFt = (a: Point, b: Point): number => toGrid(Math.sqrt((a.xFt - b.xFt) ** 2 + (a.yFt - b.yFt) ** 2));
