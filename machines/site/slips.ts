/** A way in which a tape is misread: by so many feet, and how unlikely that is, in twice the log of odds against reading right. */
export type Slip = { readonly byFt: number; readonly cost: number };

/** A whole foot, either way, at any of six lengths: one job in twenty has one. Common practice, no source. */
const ONE_FOOT = 6;
/** Two feet, five, ten, and digits said the other way round, each about a tenth as often. Common practice, no source. */
const SELDOM = 12;
/** Any other. Common practice, no source. */
export const SLIPS_ANY = 18;
const WHOLE_FEET = [
  [1, ONE_FOOT],
  [2, SELDOM],
  [5, SELDOM],
  [10, SELDOM],
] as const;

/**
 * What somebody may have read instead of what was there: whole feet off, or the last two digits of the feet swapped.
 *
 * @example slipsOf(98).some(({ byFt }) => byFt === 9) // true
 */
export function slipsOf(readFt: number): Slip[] {
  const off = WHOLE_FEET.flatMap(([byFt, cost]) => [
    { byFt, cost },
    { byFt: -byFt, cost },
  ]);
  const feet = Math.floor(readFt);
  const [tens, ones] = [Math.floor(feet / 10) % 10, feet % 10];
  const swapped = (tens - ones) * 9;
  return swapped === 0 ? off : [...off, { byFt: swapped, cost: SELDOM }];
}
