import { inverse, Matrix } from "ml-matrix";
import { CORNERS } from "../tent/types.ts";
import { cosines } from "./fit-marks.ts";
import { type LengthName, type Lengths, lengthFt, type Marks, measuredNames, tapeSdFt, toBaselineFrame } from "./lengths.ts";

/** A length without which the others agree: the reading, and what the others predict, in feet. */
export type Suspect = { readonly name: LengthName; readonly readFt: number; readonly likelyFt: number };

/**
 * Prior: standard deviation of a mark from its place before anything is measured, in inches, across and along. Common
 * practice, no source. Without a prior, six lengths show that one is wrong but never which: one redundant length leaves one
 * equation, and changing any of the six can satisfy it.
 */
export const MARK_SD_IN = 2;
/** How much better the suspect must explain the lengths than the next one: twice the log of odds of more than four to one. */
const MIN_COST_MARGIN = 3;
/** Largest cost without the suspect at which the other five lengths are plausible: chi-squared, one in a thousand. */
const MAX_REMAINING_COST = 20.5;

/**
 * Finds the length that was most likely misread; `null` if no single one stands out. Leaves out each length in turn and tests
 * the others against marks near their places; the suspect is the one without which they fit best. Method: data snooping after
 * Baarda (1968), with the wanted marks as additional observations; from memory.
 */
export function findMisread(lengths: Lengths, want: Marks, sdInAt100Ft: number): Suspect | null {
  const names = measuredNames(lengths);
  const marks = toBaselineFrame(want);
  const residuals = names.map((name) => lengths[name]! - lengthFt(marks, name));
  const weights = inverse(covarianceOf(marks, names, sdInAt100Ft));
  const weighted = weights.mmul(Matrix.columnVector(residuals)).to1DArray();
  const totalCost = residuals.reduce((sum, r, i) => sum + r * weighted[i]!, 0);
  const ranked = names
    .map((name, i) => {
      const weight = weights.get(i, i);
      return { name, cost: totalCost - weighted[i]! ** 2 / weight, likelyFt: lengths[name]! - weighted[i]! / weight };
    })
    .sort((a, b) => a.cost - b.cost);
  const [best, next] = ranked as [(typeof ranked)[0], (typeof ranked)[0]];
  if (best.cost > MAX_REMAINING_COST || next.cost - best.cost < MIN_COST_MARGIN) return null;
  return { name: best.name, readFt: lengths[best.name]!, likelyFt: best.likelyFt };
}

/** Covariance of the lengths in square feet, from errors of the marks and of the tape. */
function covarianceOf(marks: Marks, names: readonly LengthName[], sdInAt100Ft: number): Matrix {
  const sdFt = MARK_SD_IN / 12;
  const design = new Matrix(names.map((name) => CORNERS.flatMap((corner) => [...cosines(marks, name, corner)])));
  const covariance = design.mmul(design.transpose()).mul(sdFt ** 2);
  for (const [i, name] of names.entries()) covariance.set(i, i, covariance.get(i, i) + tapeSdFt(lengthFt(marks, name), sdInAt100Ft) ** 2);
  return covariance;
}
