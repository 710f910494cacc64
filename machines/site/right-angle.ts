/** Usual length of a tape, in feet. Common practice, no source. */
export const USUAL_TAPE_FT = 100;

/** The legs and the diagonal of a 3-4-5 triangle, in whole feet. */
export type RightAngle = { readonly alongFt: number; readonly acrossFt: number; readonly diagonalFt: number };

/**
 * The largest 3-4-5 triangle in whole feet that fits two edges of a tent and a tape, all in feet: one leg along the baseline
 * and one across. The longer leg goes where there is more room. `null` if not even 3-4-5 ft fits.
 * Source: the converse of Pythagoras' theorem, Euclid I.48.
 *
 * @example rightAngle(120, 60, 100) // { alongFt: 80, acrossFt: 60, diagonalFt: 100 }
 */
export function rightAngle(alongFt: number, acrossFt: number, tapeFt: number): RightAngle | null {
  const scale = (along: number, across: number) => Math.floor(Math.min(alongFt / along, acrossFt / across, tapeFt / 5) + 1e-6);
  const [longerAlong, longerAcross] = [scale(4, 3), scale(3, 4)];
  const n = Math.max(longerAlong, longerAcross);
  if (n < 1) return null;
  const [along, across] = longerAlong >= longerAcross ? [4, 3] : [3, 4];
  return { alongFt: along * n, acrossFt: across * n, diagonalFt: 5 * n };
}
