import { inverse, Matrix } from "ml-matrix";
import { LENGTHS, type LengthName, lengthFt, type Marks } from "../../machines/site/lengths.ts";
import { type Squared, squared } from "../../machines/site/squaring.ts";
import { CORNERS, type Corner } from "../../machines/tent/types.ts";
import { chance, rectangle, scattered, TAPING, taped } from "./marks.ts";

/** The noise that sizes are held against: corner marks off by 0.2 ft, a tape by 0.01 ft, standard deviations. */
const NOISE = { markFt: 0.2, tapeFt: 0.01 };

const byName = (of: (name: LengthName) => number) =>
  Object.fromEntries(LENGTHS.map((name) => [name, of(name)])) as Record<LengthName, number>;

/** The length that is named first; `null` where none is. */
const doubtedIn = (found: Squared): LengthName | null => ("suspects" in found ? (found.suspects[0]?.name ?? null) : null);

/**
 * Bayes' rule by somebody who knows the noise exactly, that at most one length is misread, by a foot, and how often: no rule names
 * the right one more often. Gauss's law of error; written apart from the program, on `ml-matrix` alone.
 */
function bayes(want: Marks) {
  const step = 1e-4;
  const at = (corner: Corner, axis: "xFt" | "yFt"): Marks => ({
    ...want,
    [corner]: { ...want[corner], [axis]: want[corner][axis] + step },
  });
  const axes = CORNERS.flatMap((corner) => (["xFt", "yFt"] as const).map((axis) => [corner, axis] as const));
  const design = new Matrix(
    LENGTHS.map((name) => axes.map(([corner, axis]) => (lengthFt(at(corner, axis), name) - lengthFt(want, name)) / step)),
  );
  const weights = inverse(
    design
      .mmul(design.transpose())
      .mul(NOISE.markFt ** 2)
      .add(Matrix.eye(6).mul(NOISE.tapeFt ** 2)),
  );
  const cost = (off: readonly number[]) => {
    const weighted = weights.mmul(Matrix.columnVector([...off])).to1DArray();
    return off.reduce((sum, r, i) => sum + r * weighted[i]!, 0);
  };
  // Twice the log of odds: one reading in sixty is a foot off, either way.
  const SELDOM = 2 * Math.log(59 * 2);
  return (read: Record<LengthName, number>): LengthName | null => {
    const off = LENGTHS.map((name) => read[name] - lengthFt(want, name));
    const ways = LENGTHS.flatMap((name, i) =>
      [1, -1].map((foot) => ({ name: name as LengthName | null, cost: SELDOM + cost(off.map((r, k) => (k === i ? r - foot : r))) })),
    );
    return [{ name: null, cost: cost(off) }, ...ways].reduce((a, b) => (b.cost < a.cost ? b : a)).name;
  };
}

/** How often, of so many sets of lengths with one misread by a foot, the right one is named first, and what the best rule does. */
export function misreadsOf(widthFt: number, lengthFt_: number, runs: number) {
  const { normal, even } = chance(3 + widthFt * 700 + lengthFt_);
  const want = rectangle(widthFt, lengthFt_);
  const best = bayes(want);
  const count = { named: 0, wrongly: 0, passed: 0, alarms: 0, best: 0, bestWrongly: 0 };
  for (let n = 0; n < runs; n++) {
    const off = taped(scattered(want, NOISE.markFt * 12, normal));
    const lengths = byName((name) => off[name] + normal() * NOISE.tapeFt);
    if (doubtedIn(squared(lengths, { want, inPer50Ft: 1, taping: TAPING })) !== null) count.alarms++;
    const name = LENGTHS[Math.floor(even() * 6)]!;
    const read = { ...lengths, [name]: lengths[name] + (even() < 0.5 ? 1 : -1) };
    const found = squared(read, { want, inPer50Ft: 1, taping: TAPING });
    const first = doubtedIn(found);
    if (found.is === "square") count.passed++;
    if (first === name) count.named++;
    else if (first) count.wrongly++;
    const by = best(read);
    if (by === name) count.best++;
    else if (by) count.bestWrongly++;
  }
  const share = (n: number) => n / runs;
  return {
    passed: count.passed,
    named: share(count.named),
    wrongly: share(count.wrongly),
    alarms: share(count.alarms),
    best: share(count.best),
    bestWrongly: share(count.bestWrongly),
  };
}
