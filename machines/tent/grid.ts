import type { Point } from "./types.ts";

/** From here on a number has no millionths to keep; and far above, a million times it is no number any more. */
const NO_MILLIONTHS = 1e9;

/** Feet kept to a millionth of a foot, so that no noise of floating point reaches a screen or a record. */
export const toGrid = (ft: number): number => (Math.abs(ft) < NO_MILLIONTHS ? Math.round(ft * 1e6) / 1e6 + 0 : ft);

/** Two lengths in feet that are the same but for rounding. */
export const same = (aFt: number, bFt: number): boolean => Math.abs(aFt - bFt) < 1e-5;

/** Between two points in feet. By `sqrt` alone: its last digit is the same on every machine, that of `hypot` is not. */
export const distanceFt = (a: Point, b: Point): number => toGrid(Math.sqrt((a.xFt - b.xFt) ** 2 + (a.yFt - b.yFt) ** 2));
