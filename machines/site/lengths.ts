import type { Corner, Point } from "../tent/types.ts";

/** The lengths between four corner marks: the edges clockwise from the baseline, then the diagonals. */
export const LENGTHS = ["AB", "BC", "CD", "DA", "AC", "BD"] as const;
export type LengthName = (typeof LENGTHS)[number];
/** In feet, as read off the tape. */
export type Lengths = Readonly<Partial<Record<LengthName, number>>>;
export type Marks = Readonly<Record<Corner, Point>>;

export const endsOf = (name: LengthName): readonly [Corner, Corner] => [name[0] as Corner, name[1] as Corner];
/** The measured lengths by name, in the order of `LENGTHS`; names that are none are left out. */
export const measuredOf = (lengths: Readonly<Record<string, number | undefined>>): LengthName[] =>
  LENGTHS.filter((name) => lengths[name] !== undefined);

/** Between two marks, in feet. By `sqrt` alone: its last digit is the same on every machine, that of `hypot` is not. */
export function lengthFt(marks: Marks, name: LengthName): number {
  const [a, b] = endsOf(name);
  return Math.sqrt((marks[a].xFt - marks[b].xFt) ** 2 + (marks[a].yFt - marks[b].yFt) ** 2);
}

/** How lengths off a tape are judged together. */
export type Taping = {
  /** Fewest lengths that are judged: five fix four marks. With six one is left over, and only then can a misread show. */
  readonly minLengths: number;
  /** How far a reading of 100 ft is off, as a standard deviation in inches. */
  readonly sdInAt100Ft: number;
  /** Six lengths that leave more over than this, in standard deviations, are not all right. */
  readonly maxMisfit: number;
};

/**
 * How far a reading of a tape is off, as a standard deviation in feet: so many inches at 100 ft, and with the root of the
 * length, as errors of pull, sag and marking add up at random. The root: surveying practice, from memory. It weighs
 * lengths against each other and says when six cannot all be right; it opens no gate.
 */
export const tapeSdFt = (ft: number, sdInAt100Ft: number): number => (sdInAt100Ft / 12) * Math.sqrt(Math.max(ft, 1) / 100);

/** Marks in the frame that moves are said in: A at the origin, y along A–B, x to the right of it, where D and C stand. */
export function framed(marks: Marks): Marks {
  const { xFt: x0, yFt: y0 } = marks.A;
  const baseFt = lengthFt(marks, "AB");
  const [ux, uy] = [(marks.B.xFt - x0) / baseFt, (marks.B.yFt - y0) / baseFt];
  const turn = ({ xFt, yFt }: Point): Point => ({
    xFt: (xFt - x0) * uy - (yFt - y0) * ux,
    yFt: (xFt - x0) * ux + (yFt - y0) * uy,
  });
  return { A: turn(marks.A), B: turn(marks.B), C: turn(marks.C), D: turn(marks.D) };
}
