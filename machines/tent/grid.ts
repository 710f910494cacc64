import type { Point } from "./types.ts";

/** Feet kept to a millionth of a foot, so that no noise of floating point reaches a screen or a record. */
export const toGrid = (ft: number): number => Math.round(ft * 1e6) / 1e6 + 0;

/** Two lengths in feet that are the same but for rounding. */
export const same = (aFt: number, bFt: number): boolean => Math.abs(aFt - bFt) < 1e-5;

/** Between two points in feet. By `sqrt` alone: its last digit is the same on every machine, that of `hypot` is not. */
export const distanceFt = (a: Point, b: Point): number => toGrid(Math.sqrt((a.xFt - b.xFt) ** 2 + (a.yFt - b.yFt) ** 2));
