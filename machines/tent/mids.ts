import { nearlyEqual, toGrid } from "./grid.ts";

/** Shortest mid that is accepted, in feet. Common practice, no source. */
export const MIN_MID_FT = 1;

/**
 * Mid lengths in feet that fill a tent between its two ends, for when the crew sheet does not list them: equal mids of the
 * first usual length that divides the gap (20, 30, 40 ft; 30 first for a 60 ft wide tent), otherwise equal mids no longer
 * than the first usual length. Common practice, no source.
 *
 * @example fillMids(80, 120) // [20, 20]
 */
export function fillMids(widthFt: number, lengthFt: number): number[] {
  const gapFt = toGrid(lengthFt - widthFt);
  if (gapFt <= 0) return [];
  const usual = widthFt === 60 ? [30, 20, 40] : [20, 30, 40];
  const fits = usual.find((ft) => Number.isInteger(gapFt / ft));
  return equalMids(gapFt, fits ? gapFt / fits : Math.ceil(gapFt / usual[0]!));
}

/**
 * Mids that add up to the tent's length, staying close to those given: the first one repeated if that fits, otherwise
 * `fillMids`. Lengths in feet.
 *
 * @example nearestMids([20, 20], 80, 140) // [20, 20, 20]
 */
export function nearestMids(given: readonly number[], widthFt: number, lengthFt: number): number[] {
  const gapFt = toGrid(lengthFt - widthFt);
  const first = given[0] ?? 0;
  const times = Math.round(gapFt / first);
  const repeats = first >= MIN_MID_FT && times > 0 && nearlyEqual(times * first, gapFt);
  return repeats ? equalMids(gapFt, times) : fillMids(widthFt, lengthFt);
}

/** The last mid absorbs the rounding error. */
function equalMids(gapFt: number, count: number): number[] {
  const each = toGrid(gapFt / count);
  return Array.from({ length: count }, (_, i) => (i < count - 1 ? each : toGrid(gapFt - each * (count - 1))));
}
