import { inverse, Matrix } from "ml-matrix";
import { CORNERS } from "../tent/types.ts";
import { cosines } from "./fit-marks.ts";
import { type LengthName, type Lengths, lengthFt, type Marks, measuredNames, tapeSdFt, toBaselineFrame } from "./lengths.ts";
import { SLIPS_ANY, slipsOf } from "./slips.ts";

/** A length without which the others agree: the reading, and what was likely there, in feet. */
export type Suspect = { readonly name: LengthName; readonly readFt: number; readonly likelyFt: number };

/**
 * Prior: standard deviation of a mark from its place before anything is measured, in inches, across and along: 0.2 ft. Common
 * practice, no source. Without a prior, six lengths show that one is wrong but never which: one redundant length leaves one
 * equation, and changing any of the six can satisfy it.
 */
export const MARK_SD_IN = 2.4;
/** A tape errs by this share of what a job allows for: what is allowed has room for pull and sag. Common practice, no source. */
const TAPE_SHARE = 0.75;
/** The same of marks that were laid out badly. */
const BADLY_LAID_SD_IN = 12;
/**
 * What badly laid marks cost, in twice the log of odds: one job in twenty, and five coordinates of a figure that may each be so
 * much farther off: 2 ln 20 + 10 ln (12 / 2.4). Common practice, no source.
 */
const BADLY_LAID_COST = 6 + 16.1;
/** Largest cost at which what is left of the lengths is plausible: chi-squared, six degrees, one in a thousand. */
const MAX_COST_LEFT = 22.5;
/** A second suspect is named where it explains the lengths nearly as well: odds of less than seven to one. */
const NEAR = 4;

/** What six lengths come to: how well they are explained with none of them misread, and by which of them, the likeliest first. */
export type Doubted = { readonly suspects: readonly Suspect[]; readonly likely: boolean };

/**
 * Which length was most likely misread: every length by every way in which a tape is misread (`slips.ts`), against marks near
 * their places, badly laid ones at a cost. Two are named where they are near, the likeliest first; none where no single one
 * explains the rest. `likely` where one misread explains the lengths better than none. Method: data snooping after Baarda (1968),
 * with the wanted marks as additional observations (from memory), over a list of slips by their odds (Bayes' rule).
 */
export function findMisread(lengths: Lengths, want: Marks, sdInAt100Ft: number): Doubted {
  const names = measuredNames(lengths);
  const marks = toBaselineFrame(want);
  const residuals = names.map((name) => lengths[name]! - lengthFt(marks, name));
  const laid = [
    { cost: 0, weights: inverse(covarianceOf(marks, names, { markSdIn: MARK_SD_IN, sdInAt100Ft })) },
    { cost: BADLY_LAID_COST, weights: inverse(covarianceOf(marks, names, { markSdIn: BADLY_LAID_SD_IN, sdInAt100Ft })) },
  ].map(({ cost, weights }) => {
    const weighted = weights.mmul(Matrix.columnVector(residuals)).to1DArray();
    return { weights, weighted, cost: cost + residuals.reduce((sum, r, i) => sum + r * weighted[i]!, 0) };
  });
  const none = Math.min(...laid.map(({ cost }) => cost));
  const ranked = names
    .map((name, i) => {
      const readFt = lengths[name]!;
      const ways = laid.flatMap(({ weights, weighted, cost }) => {
        const weight = weights.get(i, i);
        // Without this length: the shift that fits the others best.
        const freeFt = weighted[i]! / weight;
        const by = (shiftFt: number) => cost - 2 * shiftFt * weighted[i]! + shiftFt * shiftFt * weight;
        return [...slipsOf(readFt), { byFt: freeFt, cost: SLIPS_ANY }].map((slip) => ({
          cost: by(slip.byFt) + slip.cost,
          left: by(slip.byFt),
          likelyFt: readFt - slip.byFt,
        }));
      });
      return { name, readFt, ...ways.reduce((a, b) => (b.cost < a.cost ? b : a)) };
    })
    .sort((a, b) => a.cost - b.cost);
  const [best, next] = ranked as [(typeof ranked)[0], (typeof ranked)[0]];
  const named = best.left > MAX_COST_LEFT ? [] : next.cost - best.cost < NEAR ? [best, next] : [best];
  return {
    suspects: named.map(({ name, readFt, likelyFt }) => ({ name, readFt, likelyFt })),
    likely: named.length > 0 && best.cost < none,
  };
}

type Errors = { readonly markSdIn: number; readonly sdInAt100Ft: number };

/** Covariance of the lengths in square feet, from errors of the marks and of the tape. */
function covarianceOf(marks: Marks, names: readonly LengthName[], { markSdIn, sdInAt100Ft }: Errors): Matrix {
  const sdFt = markSdIn / 12;
  const tape = sdInAt100Ft * TAPE_SHARE;
  const design = new Matrix(names.map((name) => CORNERS.flatMap((corner) => [...cosines(marks, name, corner)])));
  const covariance = design.mmul(design.transpose()).mul(sdFt ** 2);
  for (const [i, name] of names.entries()) covariance.set(i, i, covariance.get(i, i) + tapeSdFt(lengthFt(marks, name), tape) ** 2);
  return covariance;
}
