/** Feet kept to a millionth of a foot, so that no noise of floating point reaches a screen or a record. */
export const toGrid = (ft: number): number => Math.round(ft * 1e6) / 1e6 + 0;

/** Two lengths in feet that are the same but for rounding. */
export const same = (aFt: number, bFt: number): boolean => Math.abs(aFt - bFt) < 1e-5;
