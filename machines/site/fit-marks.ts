import { inverse, Matrix, solve } from "ml-matrix";
import type { Corner } from "../tent/types.ts";
import { endsOf, type LengthName, type Lengths, lengthFt, type Marks, measuredNames, tapeSdFt, toBaselineFrame } from "./lengths.ts";

/** The four marks that best fit the measured lengths, in the frame of `toBaselineFrame`. */
export type FittedMarks = {
  readonly marks: Marks;
  /** Root of the weighted sum of squared residuals, in standard deviations of a reading; 0 with five lengths. */
  readonly misfit: number;
  /** Standard error of each mark in feet, across and along, due to the tape alone. A is fixed, and B is on the baseline. */
  readonly seFt: Marks;
};

/** The free coordinates: A is fixed, and B stays on the baseline. */
const FREE = ["By", "Cx", "Cy", "Dx", "Dy"] as const;
const MAX_ITERATIONS = 60;

/**
 * Fits four marks to five or six lengths in feet by least squares, each weighted by the tape's error. Gauss–Newton, started at
 * the wanted marks so that it finds the solution near them and not a mirror image. `null` if the equations cannot be solved. Method:
 * adjustment of observations by variation of coordinates, as in any textbook on surveying.
 */
export function fitMarks(lengths: Lengths, want: Marks, sdInAt100Ft: number): FittedMarks | null {
  const names = measuredNames(lengths);
  let marks = toBaselineFrame(want);
  const sd = (ft: number) => tapeSdFt(ft, sdInAt100Ft);
  let residuals = weightedResiduals(lengths, marks, names, sd);
  for (let iteration = 0; iteration < MAX_ITERATIONS; iteration++) {
    const design = designMatrix(marks, names, lengths, sd);
    const step = orNull(() => solve(design, Matrix.columnVector(residuals), true).to1DArray());
    if (!step) return null;
    const next = halveUntilAccepted(step, (partialStep) => {
      const moved = applyStep(marks, partialStep);
      const after = weightedResiduals(lengths, moved, names, sd);
      return sumOfSquares(after) <= sumOfSquares(residuals) + 1e-12 ? { moved, after } : null;
    });
    if (!next) break;
    const largestStepFt = Math.max(...step.map(Math.abs));
    [marks, residuals] = [next.moved, next.after];
    if (largestStepFt < 1e-10) break;
  }
  const seFt = standardErrors(designMatrix(marks, names, lengths, sd));
  return seFt && { marks, misfit: Math.sqrt(sumOfSquares(residuals)), seFt };
}

/** Whether the marks are in clockwise order A B C D with no corner folded in. */
export function isConvex(marks: Marks): boolean {
  const ring = [marks.A, marks.B, marks.C, marks.D];
  return ring.every((b, i) => {
    const a = ring[(i + 3) % 4]!;
    const c = ring[(i + 1) % 4]!;
    return (b.xFt - a.xFt) * (c.yFt - b.yFt) - (b.yFt - a.yFt) * (c.xFt - b.xFt) < 0;
  });
}

/** Partial derivatives of a length by the coordinates of one of its ends: the direction cosines of the line. */
export function cosines(marks: Marks, name: LengthName, corner: Corner): readonly [across: number, along: number] {
  const [a, b] = endsOf(name);
  if (corner !== a && corner !== b) return [0, 0];
  const [from, to] = corner === a ? [marks[b], marks[a]] : [marks[a], marks[b]];
  const ft = lengthFt(marks, name);
  return [(to.xFt - from.xFt) / ft, (to.yFt - from.yFt) / ft];
}

/** Standard deviation of a reading in feet, by its length in feet. */
type SdFt = (ft: number) => number;

function designMatrix(marks: Marks, names: readonly LengthName[], lengths: Lengths, sdFt: SdFt): Matrix {
  return new Matrix(
    names.map((name) => {
      const sd = sdFt(lengths[name]!);
      return FREE.map((free) => cosines(marks, name, free[0] as Corner)[free[1] === "x" ? 0 : 1] / sd);
    }),
  );
}

const weightedResiduals = (lengths: Lengths, marks: Marks, names: readonly LengthName[], sdFt: SdFt): number[] =>
  names.map((name) => (lengths[name]! - lengthFt(marks, name)) / sdFt(lengths[name]!));

function applyStep({ A, B, C, D }: Marks, [by, cx, cy, dx, dy]: readonly number[]): Marks {
  return {
    A,
    B: { xFt: B.xFt, yFt: B.yFt + by! },
    C: { xFt: C.xFt + cx!, yFt: C.yFt + cy! },
    D: { xFt: D.xFt + dx!, yFt: D.yFt + dy! },
  };
}

/** Tries the step, half of it, a quarter, and so on, until one is accepted. */
function halveUntilAccepted<T>(step: readonly number[], take: (part: readonly number[]) => T | null): T | null {
  for (let part = 1; part > 1e-6; part /= 2) {
    const taken = take(step.map((s) => s * part));
    if (taken) return taken;
  }
  return null;
}

function standardErrors(design: Matrix): Marks | null {
  const variances = orNull(() => inverse(design.transpose().mmul(design)).diagonal());
  if (!variances?.every((v) => Number.isFinite(v) && v >= 0)) return null;
  const [by, cx, cy, dx, dy] = variances.map(Math.sqrt) as [number, number, number, number, number];
  const at = (xFt: number, yFt: number) => ({ xFt, yFt });
  return { A: at(0, 0), B: at(0, by), C: at(cx, cy), D: at(dx, dy) };
}

const sumOfSquares = (values: readonly number[]): number => values.reduce((sum, v) => sum + v * v, 0);

/** Null if the library throws because a matrix cannot be inverted. */
function orNull<T>(work: () => T): T | null {
  try {
    return work();
  } catch {
    return null;
  }
}
