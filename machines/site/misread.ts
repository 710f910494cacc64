import { inverse, Matrix } from "ml-matrix";
import { CORNERS } from "../tent/types.ts";
import { cosines } from "./figure.ts";
import { framed, type LengthName, type Lengths, lengthFt, type Marks, measuredOf, tapeSdFt } from "./lengths.ts";

/** One length that, left out, makes the others agree: what was read, and what they say it is. Feet. */
export type Suspect = { readonly name: LengthName; readonly readFt: number; readonly likelyFt: number };

/**
 * What is taken to be known before anything is measured: each mark stands near its place, with a standard deviation of
 * so many inches across and along. Common practice, no source. Without it six lengths show that one is wrong, and never
 * which: one length too many leaves one equation, which any of the six can satisfy.
 */
export const MARK_SD_IN = 2;
/** How much better than the next a suspect must explain the lengths: odds of more than four to one, as twice their logarithm. */
const CLEARLY = 3;
/** What is left over without the suspect must itself be likely: one in a thousand, five lengths. */
const PLAUSIBLE = 20.5;

/**
 * The length that was most likely misread, or `null` where no single one stands out. Each length in turn is left out, and
 * the others are weighed against marks near their places; the one without which they fit best is the suspect.
 * Method: data snooping after Baarda (1968), with the wanted marks as further observations; from memory.
 */
export function suspectOf(lengths: Lengths, want: Marks, sdInAt100Ft: number): Suspect | null {
  const names = measuredOf(lengths);
  const marks = framed(want);
  const off = names.map((name) => lengths[name]! - lengthFt(marks, name));
  const weight = inverse(spreadOf(marks, names, sdInAt100Ft));
  const pulled = weight.mmul(Matrix.columnVector(off)).to1DArray();
  const whole = off.reduce((sum, r, i) => sum + r * pulled[i]!, 0);
  const ranked = names
    .map((name, i) => {
      const own = weight.get(i, i);
      return { name, cost: whole - pulled[i]! ** 2 / own, likelyFt: lengths[name]! - pulled[i]! / own };
    })
    .sort((a, b) => a.cost - b.cost);
  const [best, next] = ranked as [(typeof ranked)[0], (typeof ranked)[0]];
  if (best.cost > PLAUSIBLE || next.cost - best.cost < CLEARLY) return null;
  return { name: best.name, readFt: lengths[best.name]!, likelyFt: best.likelyFt };
}

/** How the lengths vary together when marks stand a little off and the tape reads a little off: covariance in square feet. */
function spreadOf(marks: Marks, names: readonly LengthName[], sdInAt100Ft: number): Matrix {
  const sdFt = MARK_SD_IN / 12;
  const design = new Matrix(names.map((name) => CORNERS.flatMap((corner) => [...cosines(marks, name, corner)])));
  const spread = design.mmul(design.transpose()).mul(sdFt ** 2);
  for (const [i, name] of names.entries()) spread.set(i, i, spread.get(i, i) + tapeSdFt(lengthFt(marks, name), sdInAt100Ft) ** 2);
  return spread;
}
