import type { Corner, Point } from "../tent/types.ts";
import { type Figure, fitMarks, isConvex } from "./figure.ts";
import { framed, LENGTHS, type LengthName, type Lengths, lengthFt, type Marks, measuredOf, type Taping, tapeSdFt } from "./lengths.ts";
import { type Suspect, suspectOf } from "./misread.ts";

export { LENGTHS, type LengthName, type Lengths, type Marks } from "./lengths.ts";
export type Wanted = { readonly want: Marks; readonly inPer50Ft: number; readonly taping: Taping };
/** A length as it is, measured or, where it was not, as the figure has it; with what is wanted and allowed. */
export type Compared = {
  readonly name: LengthName;
  readonly ft: number;
  readonly measured: boolean;
  readonly wantFt: number;
  readonly withinIn: number;
  readonly good: boolean;
};
/** A mark to be moved, in inches: across is away from A's and B's side, along is the way from A to B. To 1/8 in. */
export type Move = { readonly corner: Exclude<Corner, "A">; readonly acrossIn: number; readonly alongIn: number };

export type Squared =
  | { readonly is: "notEnough"; readonly missing: readonly LengthName[] }
  /** Three marks that no triangle joins: one length is longer than the other two together. */
  | {
      readonly is: "noTriangle";
      readonly longest: LengthName;
      readonly others: readonly [LengthName, LengthName];
      readonly suspect: Suspect | null;
    }
  /** The lengths fit only marks that stand out of order, or none at all. */
  | { readonly is: "noFigure"; readonly suspect: Suspect | null }
  /** Six lengths that are not all right. */
  | { readonly is: "misread"; readonly suspect: Suspect | null }
  | {
      readonly is: "square" | "out";
      readonly lengths: readonly Compared[];
      /** Empty where it is square. */
      readonly moves: readonly Move[];
      /** The largest standard error of a mark, in inches. */
      readonly seIn: number;
      /** False with five lengths: they cannot show a misread. */
      readonly checked: boolean;
    };

/**
 * Judges lengths in feet between four corner marks, at least five of them, against the marks that are wanted. Square is:
 * every length within its tolerance, and six lengths that agree with each other. Equal diagonals alone prove nothing.
 * Pure, by `+ − × ÷ √` alone, so that it judges the same on every machine.
 *
 * @example squared({ AB: 120, BC: 60, CD: 120, DA: 60, AC: 134.164, BD: 134.164 }, { want, inPer50Ft: 1, taping }).is // "square"
 */
export function squared(lengths: Readonly<Record<string, number>>, wanted: Wanted): Squared {
  const names = measuredOf(lengths);
  const given = Object.fromEntries(names.map((name) => [name, lengths[name]!])) as Lengths;
  const { want, taping } = wanted;
  const { minLengths, sdInAt100Ft, maxMisfit } = taping;
  if (names.length < minLengths) return { is: "notEnough", missing: LENGTHS.filter((name) => !names.includes(name)) };
  const whole = names.length > minLengths;
  const suspect = () => (whole ? suspectOf(given, want, sdInAt100Ft) : null);
  const apart = brokenTriangle(given, taping);
  if (apart) return { is: "noTriangle", ...apart, suspect: suspect() };
  const figure = fitMarks(given, want, sdInAt100Ft);
  if (figure && whole && figure.misfit > maxMisfit) return { is: "misread", suspect: suspect() };
  // Five lengths leave nothing over where there is a figure at all.
  if (!figure || figure.misfit > maxMisfit || !isConvex(figure.marks)) return { is: "noFigure", suspect: suspect() };
  return judged(given, figure, wanted);
}

/** How far a length may be off, in inches. */
export const toleranceIn = (wantFt: number, inPer50Ft: number): number => (wantFt / 50) * inPer50Ft;

function judged(given: Lengths, figure: Figure, { want, inPer50Ft, taping }: Wanted): Squared {
  const compared = LENGTHS.map((name): Compared => {
    const ft = given[name] ?? lengthFt(figure.marks, name);
    const wantFt = lengthFt(want, name);
    const within = toleranceIn(wantFt, inPer50Ft);
    return { name, ft, measured: given[name] !== undefined, wantFt, withinIn: within, good: Math.abs(ft - wantFt) * 12 <= within + 1e-9 };
  });
  const good = compared.every((c) => c.good);
  const errors = [figure.seFt.B, figure.seFt.C, figure.seFt.D].flatMap(({ xFt, yFt }) => [xFt, yFt]);
  return {
    is: good ? "square" : "out",
    lengths: compared,
    moves: good ? [] : movesTo(framed(want), figure.marks, Math.min(...compared.map((c) => c.withinIn))),
    seIn: 12 * Math.max(...errors),
    checked: Object.keys(given).length > taping.minLengths,
  };
}

/**
 * Marks that stand farther off than can be left. Two that are left, each up to half the narrowest tolerance less what
 * rounding takes, cannot bring a length out of its own.
 */
function movesTo(want: Marks, are: Marks, narrowestIn: number): Move[] {
  const leftIn = Math.max(1 / 16, narrowestIn / 2 - 1 / 8);
  return (["B", "C", "D"] as const).flatMap((corner): Move[] => {
    const by = inchesBetween(are[corner], want[corner]);
    if (Math.sqrt(by.acrossIn ** 2 + by.alongIn ** 2) <= leftIn) return [];
    return [{ corner, acrossIn: toEighth(by.acrossIn), alongIn: toEighth(by.alongIn) }];
  });
}

const inchesBetween = (from: Point, to: Point) => ({ acrossIn: (to.xFt - from.xFt) * 12, alongIn: (to.yFt - from.yFt) * 12 });
const toEighth = (inches: number): number => Math.round(inches * 8) / 8 + 0;

const TRIANGLES: readonly (readonly [LengthName, LengthName, LengthName])[] = [
  ["AB", "BC", "AC"],
  ["AB", "DA", "BD"],
  ["BC", "CD", "BD"],
  ["CD", "DA", "AC"],
];

/** The first triangle that cannot be joined, by more than the tape can be off. */
function brokenTriangle(
  given: Lengths,
  { maxMisfit, sdInAt100Ft }: Taping,
): { longest: LengthName; others: [LengthName, LengthName] } | null {
  for (const sides of TRIANGLES) {
    if (sides.some((name) => given[name] === undefined)) continue;
    const [longest, ...others] = [...sides].sort((a, b) => given[b]! - given[a]!) as [LengthName, LengthName, LengthName];
    const slackFt = maxMisfit * Math.max(...sides.map((name) => tapeSdFt(given[name]!, sdInAt100Ft)));
    if (given[longest]! > given[others[0]]! + given[others[1]]! + slackFt) return { longest, others };
  }
  return null;
}
