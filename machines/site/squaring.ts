import { type FarOff, farOff } from "./far-off.ts";
import { type FittedMarks, fitMarks, isConvex } from "./fit-marks.ts";
import {
  LENGTHS,
  type LengthName,
  type Lengths,
  lengthFt,
  type Marks,
  measuredNames,
  type Taping,
  tapeSdFt,
  toBaselineFrame,
} from "./lengths.ts";
import { findMisread, type Suspect } from "./misread.ts";
import { type Move, movesNeeded } from "./moves.ts";

export { LENGTHS, type LengthName, type Lengths, type Marks } from "./lengths.ts";
export type { Move } from "./moves.ts";
export type SquareTarget = { readonly want: Marks; readonly inPer50Ft: number; readonly taping: Taping };
/** A length, measured or computed from the fitted marks, with its target and tolerance. */
export type LengthComparison = {
  readonly name: LengthName;
  readonly ft: number;
  readonly measured: boolean;
  readonly wantFt: number;
  readonly withinIn: number;
  readonly good: boolean;
};

export type Squared =
  | { readonly is: "notEnough"; readonly missing: readonly LengthName[] }
  /** Three lengths that make no triangle: one is longer than the other two together. */
  | {
      readonly is: "noTriangle";
      readonly longest: LengthName;
      readonly others: readonly [LengthName, LengthName];
      /** Which length was likely misread, here and below: at most two, the likeliest first; none where no single one stands out. */
      readonly suspects: readonly Suspect[];
      /** Where the lengths are far from the wanted figure, too, and nothing explains that. */
      readonly far: FarOff | null;
    }
  /** Far from the wanted figure: another unit or other corners, as far as that explains it. */
  | { readonly is: "farOff"; readonly far: FarOff }
  /** The lengths fit no marks, or only marks in the wrong order. */
  | { readonly is: "noFigure"; readonly suspects: readonly Suspect[] }
  /** Six lengths that do not agree with each other. */
  | { readonly is: "misread"; readonly suspects: readonly Suspect[] }
  | {
      readonly is: "square" | "out";
      readonly lengths: readonly LengthComparison[];
      /** Where the marks are, as fitted: in the frame of `toBaselineFrame`. */
      readonly marks: Marks;
      /** Empty if it is square. */
      readonly moves: readonly Move[];
      /** Where the marks fit, and one misread is likelier than marks so far out: that one is measured again before anything is moved. */
      readonly suspects: readonly Suspect[];
      /** Largest standard error of a mark, in inches. */
      readonly seIn: number;
      /** False with five lengths, which cannot reveal a misread. */
      readonly checked: boolean;
    };

/**
 * Compares at least five lengths in feet between the four corner marks with the wanted marks. It is square if every length is
 * within its tolerance and, with six, the lengths agree with each other. Equal diagonals alone prove nothing. Uses only
 * `+ − × ÷ √`, so that the result is the same on every machine.
 *
 * @example squared({ AB: 120, BC: 60, CD: 120, DA: 60, AC: 134.164, BD: 134.164 }, { want, inPer50Ft: 1, taping }).is // "square"
 */
export function squared(lengths: Readonly<Record<string, number>>, wanted: SquareTarget): Squared {
  const names = measuredNames(lengths);
  const given = Object.fromEntries(names.map((name) => [name, lengths[name]!])) as Lengths;
  const { want, taping } = wanted;
  const { minLengths, sdInAt100Ft, maxMisfit } = taping;
  if (names.length < minLengths) return { is: "notEnough", missing: LENGTHS.filter((name) => !names.includes(name)) };
  const isRedundant = names.length > minLengths;
  const doubted = isRedundant ? findMisread(given, want, sdInAt100Ft) : { suspects: [], likely: false };
  const { suspects } = doubted;
  const far = suspects.length > 0 ? null : farOff(given, want);
  if (far && far.is !== "unknown") return { is: "farOff", far };
  const triangle = impossibleTriangle(given, taping);
  if (triangle) return { is: "noTriangle", ...triangle, suspects, far };
  if (far) return { is: "farOff", far };
  const fit = fitMarks(given, want, sdInAt100Ft);
  if (fit && isRedundant && fit.misfit > maxMisfit) return { is: "misread", suspects };
  // Five lengths that fit at all fit exactly, so a misfit means they fit no marks.
  if (!fit || fit.misfit > maxMisfit || !isConvex(fit.marks)) return { is: "noFigure", suspects };
  return compareWithTarget(given, { ...fit, suspects: doubted.likely ? suspects : [] }, wanted);
}

/** No length is held to less, in inches: pins, paint and a tape in the wind show no finer. Common practice, no source. */
const MIN_TOLERANCE_IN = 0.5;

/**
 * Tolerance of a length in inches: with its length, and never under half an inch.
 *
 * @example toleranceIn(120, 1) // 2.4
 */
export const toleranceIn = (wantFt: number, inPer50Ft: number): number => Math.max(MIN_TOLERANCE_IN, (wantFt / 50) * inPer50Ft);

function compareWithTarget(
  given: Lengths,
  fit: FittedMarks & { readonly suspects: readonly Suspect[] },
  { want, inPer50Ft, taping }: SquareTarget,
): Squared {
  const compared = LENGTHS.map((name): LengthComparison => {
    const ft = given[name] ?? lengthFt(fit.marks, name);
    const wantFt = lengthFt(want, name);
    const within = toleranceIn(wantFt, inPer50Ft);
    return { name, ft, measured: given[name] !== undefined, wantFt, withinIn: within, good: Math.abs(ft - wantFt) * 12 <= within + 1e-9 };
  });
  const good = compared.every((c) => c.good);
  const withinIn = Object.fromEntries(compared.map((c) => [c.name, c.withinIn])) as Record<LengthName, number>;
  const standardErrorsFt = [fit.seFt.B, fit.seFt.C, fit.seFt.D].flatMap(({ xFt, yFt }) => [xFt, yFt]);
  return {
    is: good ? "square" : "out",
    lengths: compared,
    marks: fit.marks,
    suspects: good ? [] : fit.suspects,
    moves: good ? [] : movesNeeded(toBaselineFrame(want), fit.marks, withinIn),
    seIn: 12 * Math.max(...standardErrorsFt),
    checked: Object.keys(given).length > taping.minLengths,
  };
}

const TRIANGLES: readonly (readonly [LengthName, LengthName, LengthName])[] = [
  ["AB", "BC", "AC"],
  ["AB", "DA", "BD"],
  ["BC", "CD", "BD"],
  ["CD", "DA", "AC"],
];

/** The first three lengths that make no triangle, beyond the error of the tape. */
function impossibleTriangle(
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
