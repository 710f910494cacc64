import type { Corner, Point } from "../tent/types.ts";

/** The lengths between four corner marks: the edges clockwise from the baseline, then the diagonals. */
export const LENGTHS = ["AB", "BC", "CD", "DA", "AC", "BD"] as const;
export type LengthName = (typeof LENGTHS)[number];
/** Lengths in feet, as read off the tape. */
export type Lengths = Readonly<Partial<Record<LengthName, number>>>;
export type Marks = Readonly<Record<Corner, Point>>;

/**
 * The corners at the two ends of a length.
 *
 * @example endsOf("BD") // ["B", "D"]
 */
export const endsOf = (name: LengthName): readonly [Corner, Corner] => [name[0] as Corner, name[1] as Corner];
/**
 * The names of the measured lengths, in the order of `LENGTHS`. Unknown names are ignored.
 *
 * @example measuredNames({ BC: 60, AB: 120, XY: 1 }) // ["AB", "BC"]
 */
export const measuredNames = (lengths: Readonly<Record<string, number | undefined>>): LengthName[] =>
  LENGTHS.filter((name) => lengths[name] !== undefined);

/** Distance between two marks, in feet. Uses `sqrt` because its last digit is the same on every machine; `hypot`'s is not. */
export function lengthFt(marks: Marks, name: LengthName): number {
  const [a, b] = endsOf(name);
  return Math.sqrt((marks[a].xFt - marks[b].xFt) ** 2 + (marks[a].yFt - marks[b].yFt) ** 2);
}

/** The limits by which taped lengths are judged together. */
export type Taping = {
  /** Fewest lengths that can be judged. Five determine four marks; only a sixth, redundant one can reveal a misread. */
  readonly minLengths: number;
  /** Standard deviation of a 100 ft reading, in inches. */
  readonly sdInAt100Ft: number;
  /** Largest misfit at which six lengths agree, in standard deviations. */
  readonly maxMisfit: number;
};

/**
 * Standard deviation of a tape reading in feet: `sdInAt100Ft` inches at 100 ft, growing with the square root of the length
 * because errors of pull, sag, and marking add up at random. The square root: surveying practice, from memory. It weights
 * lengths against each other and shows when six cannot all be right; it opens no gate.
 *
 * @example tapeSdFt(100, 0.24) // 0.02
 */
export const tapeSdFt = (ft: number, sdInAt100Ft: number): number => (sdInAt100Ft / 12) * Math.sqrt(Math.max(ft, 1) / 100);

/** The marks in the frame used for moves: A at the origin, y along A–B, x to the right, toward D and C. */
export function toBaselineFrame(marks: Marks): Marks {
  const { xFt: x0, yFt: y0 } = marks.A;
  const baseFt = lengthFt(marks, "AB");
  const [ux, uy] = [(marks.B.xFt - x0) / baseFt, (marks.B.yFt - y0) / baseFt];
  const turn = ({ xFt, yFt }: Point): Point => ({
    xFt: (xFt - x0) * uy - (yFt - y0) * ux,
    yFt: (xFt - x0) * ux + (yFt - y0) * uy,
  });
  return { A: turn(marks.A), B: turn(marks.B), C: turn(marks.C), D: turn(marks.D) };
}
