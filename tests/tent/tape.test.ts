import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { planTent } from "../../machines/tent/plan.ts";
import { checkSpec } from "../../machines/tent/spec.ts";
import type { SpecInput } from "../../machines/tent/spec-input.ts";
import { diagonalsOf, edgeTapes, stakeLines, toEighthIn, toMm } from "../../machines/tent/tape.ts";
import type { TentPlan } from "../../machines/tent/types.ts";
import { eighty, planOf, sixty, twenty } from "./tents.ts";

const feet = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map((ft) => Math.round(ft * 1000) / 1000);
const place = fc.record({ xFt: feet(-2, 2), yFt: feet(-2, 2) });
const count = fc.option(
  fc.record({ plates: fc.integer({ min: 1, max: 6 }), more: fc.integer({ min: 0, max: 5 }) }).map(({ plates, more }) => ({
    plates,
    stakes: plates + more,
  })),
);
/** Sectional tents of odd dimensions, with any anchor counts and shifted corners. */
const tents = fc
  .record({
    widthFt: feet(20, 120),
    midsFt: fc.array(feet(5, 40), { maxLength: 5 }),
    splitEnds: fc.boolean(),
    spacingFt: feet(3, 20),
    setbackFt: feet(3, 12),
    anchors: fc.record({ corner: count, seamEnd: count, side: count }),
    shifted: fc.option(fc.record({ A: place, B: place, C: place, D: place })),
  })
  .map((t): SpecInput => ({ ...t, quarterRings: 1, centerPoleFt: 30 }))
  .filter((input) => "spec" in checkSpec(input));
const forEveryTent = (holds: (plan: TentPlan) => void) =>
  fc.assert(
    fc.property(tents, (input) => holds(planOf(input))),
    { numRuns: 100 },
  );

const TINY = 3e-6;
const isIncreasing = (all: readonly number[]) => all.every((n, i) => i === 0 || n > all[i - 1]! - TINY);

describe("the tape along an edge", () => {
  it("starts at zero on the first corner and ends at the edge's length on the last", () =>
    forEveryTent((plan) => {
      for (const { edge, marks, lengthFt, from, to } of edgeTapes(plan)) {
        expect([marks[0]!.station, marks.at(-1)!.station]).toEqual([from, to]);
        expect([marks[0]!.readingFt, marks.at(-1)!.backFt]).toEqual([0, 0]);
        expect(marks.at(-1)!.readingFt).toBe(lengthFt);
        expect(lengthFt).toBeCloseTo(plan.edges.find((e) => e.name === edge)!.lengthFt, 5);
      }
    }));
  it("increases from mark to mark by the bays of the plan", () =>
    forEveryTent((plan) => {
      for (const [i, { marks }] of edgeTapes(plan).entries()) {
        const bays = marks.slice(1).map((m, n) => m.readingFt - marks[n]!.readingFt);
        expect(bays).toHaveLength(plan.edges[i]!.baysFt.length);
        for (const [n, bay] of bays.entries()) {
          expect(bay).toBeGreaterThan(0);
          expect(Math.abs(bay - plan.edges[i]!.baysFt[n]!)).toBeLessThan(TINY);
        }
      }
    }));
  it("has each station between corners once, and each corner twice", () =>
    forEveryTent((plan) => {
      const marks = edgeTapes(plan).flatMap((t) => t.marks.map((m) => m.station));
      for (const { id, kind } of plan.stations) expect(marks.filter((m) => m === id)).toHaveLength(kind === "corner" ? 2 : 1);
    }));
  it("reads back from the far corner the rest of the edge", () =>
    forEveryTent((plan) => {
      for (const { marks, lengthFt } of edgeTapes(plan))
        for (const m of marks) expect(Math.abs(m.readingFt + m.backFt - lengthFt)).toBeLessThan(TINY);
    }));
  it("rounds each reading on its own, so that errors do not accumulate", () =>
    forEveryTent((plan) => {
      for (const { marks } of edgeTapes(plan))
        for (const { readingFt } of marks) {
          expect(Math.abs(toEighthIn(readingFt) - readingFt) * 12).toBeLessThanOrEqual(1 / 16 + 1e-9);
          expect(Math.abs(toMm(readingFt) - readingFt * 304.8)).toBeLessThanOrEqual(0.5 + 1e-9);
        }
    }));
  it("does not add up rounded bays: sixths of 100 ft end on 100 ft", () => {
    const plan = planOf({ ...eighty, widthFt: 100, lengthFt: 100, midsFt: [], quarterRings: 1, spacingFt: 16.7 });
    const readings = edgeTapes(plan)[0]!.marks.map((m) => toMm(m.readingFt));
    expect(readings.at(-1)).toBe(30480);
    expect(readings).toEqual([0, 5080, 10160, 15240, 20320, 25400, 30480]);
  });
});

describe("the tape along the stake line", () => {
  it("has every plate once, with its stakes", () =>
    forEveryTent((plan) => {
      const marks = stakeLines(plan).flatMap((l) => l.marks);
      expect(marks).toHaveLength(plan.plates.length);
      const named = marks.map((m) => `${m.station}.${m.plate}`);
      expect(new Set(named).size).toBe(plan.plates.length);
      for (const m of marks) {
        const plate = plan.plates.filter((p) => p.station === m.station)[m.plate - 1]!;
        expect([m.stakes, m.bearingDeg]).toEqual([plate.stakes, plate.bearingDeg]);
      }
    }));
  it("increases, and stays between its start and its end", () =>
    forEveryTent((plan) => {
      for (const { marks, lengthFt } of stakeLines(plan)) {
        expect(isIncreasing(marks.map((m) => m.readingFt))).toBe(true);
        for (const m of marks) {
          expect(m.readingFt).toBeGreaterThan(-0.2);
          expect(m.readingFt).toBeLessThan(lengthFt + 0.2);
          expect(Math.abs(m.readingFt + m.backFt - lengthFt)).toBeLessThan(TINY);
        }
      }
    }));
  it("leads to the plate of the plan: along the tape, then square out", () =>
    forEveryTent((plan) => {
      for (const { marks, start, end, lengthFt } of stakeLines(plan))
        for (const m of marks) {
          const plate = plan.plates.filter((p) => p.station === m.station)[m.plate - 1]!;
          const [ux, uy] = [(end.xFt - start.xFt) / lengthFt, (end.yFt - start.yFt) / lengthFt];
          expect(Math.abs(start.xFt + ux * m.readingFt - uy * m.asideFt - plate.xFt)).toBeLessThan(TINY * 2);
          expect(Math.abs(start.yFt + uy * m.readingFt + ux * m.asideFt - plate.yFt)).toBeLessThan(TINY * 2);
        }
    }));
  it("passes through every plate if no corner was shifted", () =>
    forEveryTent((plan) => {
      if (plan.spec.shifted) return;
      for (const { marks } of stakeLines(plan)) for (const m of marks) expect(Math.abs(m.asideFt)).toBeLessThan(TINY);
    }));
  it("starts at the setback from the corner, square to both edges", () => {
    const [ab] = stakeLines(planOf(eighty));
    expect([ab!.start, ab!.end, ab!.lengthFt]).toEqual([{ xFt: -6, yFt: -6 }, { xFt: -6, yFt: 106 }, 112]);
  });
  it("includes the corner plates on it, in order", () => {
    const [ab] = stakeLines(planOf(twenty));
    const read = ab!.marks.map((m) => [m.station, m.plate, m.readingFt, m.bearingDeg]);
    expect(read).toEqual([
      ["A", 2, 0, 225],
      ["A", 3, 6, 270],
      ["AB1", 1, 16, 270],
      ["B", 1, 26, 270],
    ]);
  });
});

describe("off the rectangle", () => {
  const shifted = planTent({ ...planOf(sixty).spec, shifted: { C: { xFt: 1, yFt: -0.5 } } });
  it("readings are between the shifted marks", () => {
    const [ab, bc] = edgeTapes(shifted);
    expect(ab!.lengthFt).toBe(120);
    expect(bc!.lengthFt).toBeCloseTo(Math.hypot(61, 0.5), 5);
    expect(diagonalsOf(shifted)).toEqual({ AC: expect.closeTo(Math.hypot(61, 119.5), 5), BD: expect.closeTo(Math.hypot(60, 120), 5) });
  });
  it("counted rings each have a mark", () => {
    const counted = planOf({ ...sixty, rings: { AB: 18 } });
    expect(edgeTapes(counted)[0]!.marks).toHaveLength(18);
  });
});
