import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { factorOf, factorsFrom, MAX_PLAUSIBLE_RATIO, PRIOR } from "../../machines/time/learning.ts";
import { TIMED_PHASES } from "../../machines/time/rates.ts";
import { finished, frozenWith } from "../support/time.ts";

const frozen = frozenWith(6);
const many = (n: number, times: number) => Array.from({ length: n }, (_, i) => finished(`job-${i}`, frozen, times));

describe("a factor from finished jobs", () => {
  it("without jobs is 1, with a range from about half to about double", () => {
    for (const phase of TIMED_PHASES) {
      const { likely, low, high, jobs } = factorsFrom([], null)[phase];
      expect([likely, jobs]).toEqual([1, 0]);
      expect([low, high].map((n) => n.toFixed(2))).toEqual(["0.47", "2.14"]);
    }
  });
  it("after ten jobs that took twice as long is 2^(10/11), because the prior counts as one job", () => {
    const { likely, jobs } = factorsFrom(many(10, 2), null).anchorsSet;
    expect([likely, jobs]).toEqual([expect.closeTo(2 ** (10 / (10 + PRIOR.jobs)), 9), 10]);
    expect(likely).toBeGreaterThan(1.85);
  });
  it("after a hundred jobs that took twice as long is 2, within 1%", () =>
    expect(factorOf(Array(100).fill(2)).likely).toBeGreaterThan(1.98));
  it("after one job that took twice as long is the square root of 2", () => expect(factorOf([2]).likely).toBeCloseTo(Math.SQRT2, 9));
  it("has a narrower range the more jobs agree", () => {
    const widths = [0, 2, 5, 20].map((n) => factorOf(Array(n).fill(1)).distribution.sd);
    expect(widths).toEqual([...widths].sort((a, b) => b - a));
    expect(widths[3]).toBeLessThan(widths[0]! / 2);
  });
  it("has a wide range if jobs differ a lot", () => {
    expect(factorOf([0.5, 2, 0.5, 2, 0.5, 2]).distribution.sd).toBeGreaterThan(1.5 * factorOf([1, 1, 1, 1, 1, 1]).distribution.sd);
  });
  it("moves by less than a tenth for one outlier among ten", () => {
    const without = factorOf(Array(9).fill(1.2)).likely;
    for (const outlier of [0.17, 5.9])
      expect(Math.abs(Math.log(factorOf([...Array(9).fill(1.2), outlier]).likely / without))).toBeLessThan(0.1);
  });
  it("excludes and counts jobs with implausible times", () => {
    expect(factorOf([0.01, 40, 1.5])).toMatchObject({ jobs: 1, leftOut: 2 });
    expect(factorOf([0.01]).likely).toBe(1);
    expect(factorOf([MAX_PLAUSIBLE_RATIO]).jobs).toBe(1);
  });
  it("uses only its own phase", () => {
    const slow = [finished("a", frozen, (p) => (p === "anchorsSet" ? 3 : 1))];
    const factors = factorsFrom(slow, null);
    expect([factors.anchorsSet.likely > 1.3, factors.sectionsJoined.likely]).toEqual([true, expect.closeTo(1, 9)]);
  });
});

describe("jobs that are ignored", () => {
  const nothing = factorsFrom([], null);
  const [job] = many(1, 2);
  it.each([
    ["the job itself", [job!], "job-0"],
    ["a rehearsal", [{ ...job!, rehearsal: true }], null],
    ["a record that does not verify", [{ ...job!, mismatch: 12 }], null],
    [
      "a job that is still being raised",
      [{ ...job!, phase: "tensioned", worked: { ...job!.worked, done: ["anchorsSet" as const] } }],
      null,
    ],
    ["a job whose plan cannot be counted", [{ ...job!, worked: { ...job!.worked, work: null } }], null],
  ])("%s", (_what, jobs, except) => expect(factorsFrom(jobs, except)).toEqual(nothing));
  it("the phases after a job was stood down, and its strike", () => {
    const down = { ...job!, worked: { ...job!.worked, done: ["utilitiesMarked" as const, "anchorsSet" as const, "struck" as const] } };
    const factors = factorsFrom([down], null);
    expect(TIMED_PHASES.map((phase) => factors[phase].jobs)).toEqual([1, 1, 0, 0, 0, 0, 0, 0]);
  });
  it("a phase worked by fewer people than the minimum", () => {
    const few = { ...job!, worked: { ...job!.worked, work: { ...job!.worked.work!, people: 3 } } };
    const factors = factorsFrom([few], null);
    expect([factors.interiorRaised.jobs, factors.anchorsSet.jobs]).toEqual([0, 1]);
  });
});

it("a job that was handed over counts for its raise, not its strike", () => {
  const [job] = many(1, 2);
  const standing = { ...job!, phase: "standing", worked: { ...job!.worked, done: TIMED_PHASES.filter((p) => p !== "struck") } };
  const factors = factorsFrom([standing], null);
  expect(TIMED_PHASES.map((phase) => factors[phase].jobs)).toEqual([1, 1, 1, 1, 1, 1, 1, 0]);
});

it("for any ratios low ≤ likely ≤ high, positive and finite, with likely between 1 and the ratios", () =>
  fc.assert(
    fc.property(fc.array(fc.double({ min: 0.001, max: 1000, noNaN: true }), { maxLength: 40 }), (ratios) => {
      const { low, likely, high, jobs, leftOut } = factorOf(ratios);
      expect(low > 0 && low <= likely && likely <= high && Number.isFinite(high)).toBe(true);
      expect(jobs + leftOut).toBe(ratios.length);
      const seen = [1, ...ratios.filter((r) => r >= 1 / MAX_PLAUSIBLE_RATIO && r <= MAX_PLAUSIBLE_RATIO)];
      expect(likely).toBeGreaterThanOrEqual(Math.min(...seen) - 1e-9);
      expect(likely).toBeLessThanOrEqual(Math.max(...seen) + 1e-9);
    }),
  ));
