import { levenbergMarquardt } from "ml-levenberg-marquardt";
import { describe, expect, test } from "vitest";
import { fitMarks } from "../../machines/site/fit-marks.ts";
import { LENGTHS, type LengthName, lengthFt, type Marks, tapeSdFt } from "../../machines/site/lengths.ts";
import { squared } from "../../machines/site/squaring.ts";
import { chance, rectangle, scattered, TAPING, taped, without } from "../support/marks.ts";
import { misreadsOf } from "../support/misreads.ts";

const SIZES = [
  [20, 20],
  [20, 40],
  [40, 40],
  [40, 80],
  [40, 120],
  [60, 60],
  [60, 120],
  [80, 100],
  [100, 100],
  [100, 200],
] as const;

/** Tape readings with errors as `tapeSdFt` assumes them. */
const read = (marks: Marks, normal: () => number): Record<LengthName, number> =>
  Object.fromEntries(Object.entries(taped(marks)).map(([name, ft]) => [name, ft + normal() * tapeSdFt(ft, TAPING.sdInAt100Ft)])) as Record<
    LengthName,
    number
  >;

describe("closed forms: two tapes from the ends of a baseline, x = (r1² − r2² + d²) / 2d, y = √(r1² − x²); geometry", () => {
  test("baseline 40, tapes 50 and 30: 40 along, 30 across", () => {
    // C is computed from A and B; D is any mark that the other lengths determine.
    const fit = fitMarks({ AB: 40, AC: 50, BC: 30, DA: 30, BD: 50 }, rectangle(30, 40), TAPING.sdInAt100Ft)!;
    expect(fit.marks.C.yFt).toBeCloseTo(40, 6);
    expect(fit.marks.C.xFt).toBeCloseTo(30, 6);
  });
  test("baseline 60, tapes 50 and 50: 30 along, 40 across", () => {
    const fit = fitMarks({ AB: 60, DA: 50, BD: 50, AC: 72.111, BC: 40 }, rectangle(40, 60), TAPING.sdInAt100Ft)!;
    expect(fit.marks.D.yFt).toBeCloseTo(30, 3);
    expect(fit.marks.D.xFt).toBeCloseTo(40, 3);
  });
  test("baseline 100, tapes 30 and 40 cannot meet", () =>
    expect(squared({ AB: 100, DA: 30, BD: 40, BC: 60, AC: 116.619 }, { want: rectangle(60, 100), inPer50Ft: 1, taping: TAPING }).is).toBe(
      "noTriangle",
    ));
  test("40×80 with diagonals of 89.890 and 88.996 is racked by 0.50 ft: asin((d1² − d2²) / 4ab), parallelogram law", () => {
    const found = squared(
      { AB: 80, BC: 40, CD: 80, DA: 40, AC: 89.89, BD: 88.996 },
      { want: rectangle(40, 80), inPer50Ft: 1, taping: TAPING },
    );
    expect(found).toMatchObject({
      is: "out",
      moves: [
        { corner: "C", alongIn: -6 },
        { corner: "D", alongIn: -6 },
      ],
    });
  });
});

describe("an independent least-squares solver: ml-levenberg-marquardt, with numerical gradients", () => {
  test.each(SIZES)("%d×%d, marks off by inches and a tape that errs: the same marks to 0.01 in", (widthFt, lengthFt_) => {
    const { normal } = chance(widthFt * 1000 + lengthFt_);
    const want = rectangle(widthFt, lengthFt_);
    for (let n = 0; n < 20; n++) {
      const lengths = read(scattered(want, 6, normal), normal);
      const sd = (name: LengthName) => tapeSdFt(lengths[name], TAPING.sdInAt100Ft);
      const marksOf = ([b, cx, cy, dx, dy]: number[]): Marks => ({
        A: want.A,
        B: { xFt: 0, yFt: b! },
        C: { xFt: cx!, yFt: cy! },
        D: { xFt: dx!, yFt: dy! },
      });
      const other = levenbergMarquardt(
        { x: LENGTHS.map((_, i) => i), y: LENGTHS.map((name) => lengths[name] / sd(name)) },
        // Dividing each length by its error is the same as weighting it.
        (params) => (i) => lengthFt(marksOf(params as number[]), LENGTHS[i]!) / sd(LENGTHS[i]!),
        {
          initialValues: [lengthFt_, widthFt, lengthFt_, widthFt, 0],
          damping: 1e-3,
          gradientDifference: 1e-5,
          centralDifference: true,
          maxIterations: 300,
          errorTolerance: 0,
          improvementThreshold: 0,
        },
      );
      const theirs = marksOf([...other.parameterValues]);
      const ours = fitMarks(lengths, want, TAPING.sdInAt100Ft)!.marks;
      for (const corner of ["B", "C", "D"] as const) {
        expect(Math.abs(ours[corner].xFt - theirs[corner].xFt)).toBeLessThan(0.01 / 12);
        expect(Math.abs(ours[corner].yFt - theirs[corner].yFt)).toBeLessThan(0.01 / 12);
      }
    }
  });
});

describe("simulation, no outside source: known errors of the corners and of the tape", () => {
  test.each(SIZES)("%d×%d: marks are recovered within three standard errors, as often as that should be", (widthFt, lengthFt_) => {
    const { normal } = chance(7 + widthFt * 500 + lengthFt_);
    const want = rectangle(widthFt, lengthFt_);
    let [within, all] = [0, 0];
    for (let n = 0; n < 300; n++) {
      // The frame: A is fixed, and B is on the line from A.
      const free = scattered(want, 4, normal);
      const marks: Marks = { ...free, A: want.A, B: { xFt: 0, yFt: free.B.yFt } };
      const lengths = read(marks, normal);
      for (const given of [lengths, without(lengths, LENGTHS[n % 6]!)]) {
        const { marks: ours, seFt } = fitMarks(given, want, TAPING.sdInAt100Ft)!;
        for (const [corner, axis] of [
          ["B", "yFt"],
          ["C", "xFt"],
          ["C", "yFt"],
          ["D", "xFt"],
          ["D", "yFt"],
        ] as const) {
          all++;
          if (Math.abs(ours[corner][axis] - marks[corner][axis]) <= 3 * seFt[corner][axis]) within++;
        }
      }
    }
    // 99.73% of normal errors are within three standard deviations.
    expect(within / all).toBeGreaterThan(0.994);
  });

  test("60×120: a length misread by a foot is named first in at least 95 of 100, and never passes (all sizes: misreads.long.test.ts)", () => {
    const { passed, named, wrongly } = misreadsOf(60, 120, 200);
    expect(passed).toBe(0);
    expect(named).toBeGreaterThanOrEqual(0.95);
    expect(wrongly).toBeLessThanOrEqual(0.02);
  });
});
