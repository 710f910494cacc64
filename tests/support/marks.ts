import { DEFAULTS } from "../../machines/install/limits.ts";
import { LENGTHS, type LengthName, lengthFt, type Marks } from "../../machines/site/lengths.ts";
import { CORNERS, type Corner } from "../../machines/tent/types.ts";

/** Corner marks of a rectangle in feet. */
export const rectangle = (widthFt: number, lengthFt: number): Marks => ({
  A: { xFt: 0, yFt: 0 },
  B: { xFt: 0, yFt: lengthFt },
  C: { xFt: widthFt, yFt: lengthFt },
  D: { xFt: widthFt, yFt: 0 },
});

/** Marks with one of them elsewhere, in inches. */
export const moved = (marks: Marks, corner: Corner, acrossIn: number, alongIn: number): Marks => ({
  ...marks,
  [corner]: { xFt: marks[corner].xFt + acrossIn / 12, yFt: marks[corner].yFt + alongIn / 12 },
});

/** What a tape without error reads between marks, in feet. */
export const taped = (marks: Marks): Record<LengthName, number> =>
  Object.fromEntries(LENGTHS.map((name) => [name, lengthFt(marks, name)])) as Record<LengthName, number>;

export const without = (lengths: Record<LengthName, number>, name: LengthName) =>
  Object.fromEntries(Object.entries(lengths).filter(([n]) => n !== name)) as Record<LengthName, number>;

/** Chance that repeats: numbers from 0 to 1, and normal ones, from a seed. */
export function chance(seed: number) {
  let state = seed >>> 0;
  // A Weyl sequence, mixed well enough that neighbors are independent.
  const even = () => {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 16), 0x85ebca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
    return (((mixed ^ (mixed >>> 16)) >>> 0) + 0.5) / 2 ** 32;
  };
  const normal = () => Math.sqrt(-2 * Math.log(even())) * Math.cos(2 * Math.PI * even());
  return { even, normal };
}

/** Marks each off by chance, with a standard deviation in inches across and along. */
export const scattered = (marks: Marks, sdIn: number, normal: () => number): Marks =>
  Object.fromEntries(
    CORNERS.map((c) => [c, { xFt: marks[c].xFt + (normal() * sdIn) / 12, yFt: marks[c].yFt + (normal() * sdIn) / 12 }]),
  ) as Marks;

/** As lengths are judged on a job. */
export const TAPING = DEFAULTS.taping.is;
