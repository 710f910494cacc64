import { inverse, Matrix, solve } from "ml-matrix";
import type { Corner } from "../tent/types.ts";
import { endsOf, framed, type LengthName, type Lengths, lengthFt, type Marks, measuredOf, tapeSdFt } from "./lengths.ts";

/** The four marks that fit measured lengths best, in the frame of `framed`. */
export type Figure = {
  readonly marks: Marks;
  /** Root of the weighted sum of squares of what is left over, in standard deviations of a reading; 0 with five lengths. */
  readonly misfit: number;
  /** Standard error of each mark in feet, across and along, as the tape's own error makes it. A is held, and B on the baseline. */
  readonly seFt: Marks;
};

/** What is free once A is held and B stays on the baseline. */
const FREE = ["By", "Cx", "Cy", "Dx", "Dy"] as const;
const MAX_STEPS = 60;

/**
 * Fits four marks to five or six lengths in feet by least squares, each weighed by its tape's error: Gauss and Newton,
 * from the wanted marks, so that of a figure and its mirror images the one near the wanted one is found. `null` where
 * no figure is come to. Method: adjustment of observations by variation of coordinates, as in any textbook on surveying.
 */
export function fitMarks(lengths: Lengths, want: Marks, sdInAt100Ft: number): Figure | null {
  const names = measuredOf(lengths);
  let marks = framed(want);
  const sd = (ft: number) => tapeSdFt(ft, sdInAt100Ft);
  let left = weighted(lengths, marks, names, sd);
  for (let step = 0; step < MAX_STEPS; step++) {
    const design = designOf(marks, names, lengths, sd);
    const by = attempt(() => solve(design, Matrix.columnVector(left), true).to1DArray());
    if (!by) return null;
    const next = halved(by, (part) => {
      const moved = withStep(marks, part);
      const rest = weighted(lengths, moved, names, sd);
      return sumOfSquares(rest) <= sumOfSquares(left) + 1e-12 ? { moved, rest } : null;
    });
    if (!next) break;
    const farthestFt = Math.max(...by.map(Math.abs));
    [marks, left] = [next.moved, next.rest];
    if (farthestFt < 1e-10) break;
  }
  const seFt = errorsOf(designOf(marks, names, lengths, sd));
  return seFt && { marks, misfit: Math.sqrt(sumOfSquares(left)), seFt };
}

/** Whether the marks stand clockwise A B C D with no corner folded in. */
export function isConvex(marks: Marks): boolean {
  const ring = [marks.A, marks.B, marks.C, marks.D];
  return ring.every((b, i) => {
    const a = ring[(i + 3) % 4]!;
    const c = ring[(i + 1) % 4]!;
    return (b.xFt - a.xFt) * (c.yFt - b.yFt) - (b.yFt - a.yFt) * (c.xFt - b.xFt) < 0;
  });
}

/** Change of a length as one of its ends moves across or along: the cosines of its direction. */
export function cosines(marks: Marks, name: LengthName, corner: Corner): readonly [across: number, along: number] {
  const [a, b] = endsOf(name);
  if (corner !== a && corner !== b) return [0, 0];
  const [from, to] = corner === a ? [marks[b], marks[a]] : [marks[a], marks[b]];
  const ft = lengthFt(marks, name);
  return [(to.xFt - from.xFt) / ft, (to.yFt - from.yFt) / ft];
}

/** Standard deviation of a reading, by its length in feet. */
type SdFt = (ft: number) => number;

function designOf(marks: Marks, names: readonly LengthName[], lengths: Lengths, sdFt: SdFt): Matrix {
  return new Matrix(
    names.map((name) => {
      const sd = sdFt(lengths[name]!);
      return FREE.map((free) => cosines(marks, name, free[0] as Corner)[free[1] === "x" ? 0 : 1] / sd);
    }),
  );
}

const weighted = (lengths: Lengths, marks: Marks, names: readonly LengthName[], sdFt: SdFt): number[] =>
  names.map((name) => (lengths[name]! - lengthFt(marks, name)) / sdFt(lengths[name]!));

function withStep({ A, B, C, D }: Marks, [by, cx, cy, dx, dy]: readonly number[]): Marks {
  return {
    A,
    B: { xFt: B.xFt, yFt: B.yFt + by! },
    C: { xFt: C.xFt + cx!, yFt: C.yFt + cy! },
    D: { xFt: D.xFt + dx!, yFt: D.yFt + dy! },
  };
}

/** The step, or half of it, or half of that: the first that leaves no more over than before. */
function halved<T>(step: readonly number[], take: (part: readonly number[]) => T | null): T | null {
  for (let part = 1; part > 1e-6; part /= 2) {
    const taken = take(step.map((s) => s * part));
    if (taken) return taken;
  }
  return null;
}

function errorsOf(design: Matrix): Marks | null {
  const spread = attempt(() => inverse(design.transpose().mmul(design)).diagonal());
  if (!spread?.every((v) => Number.isFinite(v) && v >= 0)) return null;
  const [by, cx, cy, dx, dy] = spread.map(Math.sqrt) as [number, number, number, number, number];
  const at = (xFt: number, yFt: number) => ({ xFt, yFt });
  return { A: at(0, 0), B: at(0, by), C: at(cx, cy), D: at(dx, dy) };
}

const sumOfSquares = (values: readonly number[]): number => values.reduce((sum, v) => sum + v * v, 0);

/** The library throws where a matrix cannot be inverted: then there is no figure. */
function attempt<T>(work: () => T): T | null {
  try {
    return work();
  } catch {
    return null;
  }
}
