import { describe, expect, it } from "vitest";
import { workOf } from "../../machines/install/quantities.ts";
import type { SpecInput } from "../../machines/tent/spec-input.ts";
import { estimate } from "../../machines/time/estimate.ts";
import { forecast } from "../../machines/time/forecast.ts";
import { factorOf, factorsFrom, PRIOR } from "../../machines/time/learning.ts";
import {
  normalUpperQuantile,
  normalUpperTail,
  PHASE_CORRELATION,
  rangeOf,
  remainingAfter,
  studentT90,
  sumOf,
} from "../../machines/time/log-normal.ts";
import { type Phase, RAISE_PHASES } from "../../machines/time/rates.ts";
import { sharesOf } from "../../machines/time/shares.ts";
import { assumedMin, finished, frozenWith, standingAt, unstarted } from "../support/time.ts";
import { eighty, hundred } from "../tent/tents.ts";

// Tables of the standard normal distribution and of Student's t, as any statistics book prints them; from memory.
describe("tables of the normal distribution and of Student's t", () => {
  it.each([
    [0, 0.5],
    [1, 0.1587],
    [1.2816, 0.1],
    [1.96, 0.025],
    [2.3263, 0.01],
    [3.0902, 0.001],
  ])("a standard normal value is above %d with probability %d", (z, share) => {
    expect(normalUpperTail(z)).toBeCloseTo(share, 4);
    expect(normalUpperTail(-z)).toBeCloseTo(1 - share, 4);
    expect(normalUpperQuantile(share)).toBeCloseTo(z, 2);
  });
  it("the series and the continued fraction agree at 3", () => expect(normalUpperTail(3 - 1e-9) / normalUpperTail(3)).toBeCloseTo(1, 6));
  it.each([
    [4, 1.533],
    [5, 1.476],
    [6, 1.44],
    [8, 1.397],
    [10, 1.372],
    [20, 1.325],
    [30, 1.31],
    [120, 1.289],
  ])("the 90th percentile of t with %d degrees of freedom is %d", (degrees, t) => expect(studentT90(degrees)).toBeCloseTo(t, 2));
});

/** Seeded pseudorandom numbers: a 32-bit linear congruential generator, and normal values by Box–Muller. */
function random(seed: number) {
  let state = seed >>> 0;
  const uniform = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 4294967296;
  };
  const normal = () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
  return { uniform, normal };
}
type Random = ReturnType<typeof random>;

/** Durations of the phases of one job, as multiples of the assumed minutes, with a true factor, spread, and correlation. */
function jobOf({ normal }: Random, factor: number, sd: number, correlation = PHASE_CORRELATION): (phase: Phase) => number {
  const own = normal();
  const times = new Map<Phase, number>();
  return (phase) => {
    if (!times.has(phase)) times.set(phase, factor * Math.exp(sd * (Math.sqrt(correlation) * own + Math.sqrt(1 - correlation) * normal())));
    return times.get(phase)!;
  };
}

// Simulation, no outside source: makes up jobs with a known factor and spread, and compares the stated range with what a job
// took.
// Common practice, no source: what practiced crews take for tents of these sizes, walls and truck included.
describe("hours that a crew takes by the assumed rates", () => {
  const hours = (people: number, tent: SpecInput, phases: readonly Phase[]) => {
    const job = frozenWith(people, tent, { use: { walls: true } });
    return phases.reduce((sum, phase) => sum + assumedMin(job, phase), 0) / 60;
  };
  it.each([
    ["80 × 100", "up", eighty, 6, RAISE_PHASES, 9, 11],
    ["80 × 100", "down", eighty, 6, ["struck"], 4, 4.5],
    ["100 × 200", "up", hundred, 10, RAISE_PHASES, 14, 17],
    ["100 × 200", "down", hundred, 10, ["struck"], 6, 7],
  ] as const)("%s ft %s", (_size, _way, tent, people, phases, from, to) => {
    const took = hours(people, tent, phases);
    expect(took).toBeGreaterThanOrEqual(from);
    expect(took).toBeLessThanOrEqual(to);
  });
  it.each([
    ["walls of an 80 × 100 ft tent with six, 30 to 40 min", eighty, 6, "inspected", ["walls"], 30, 40],
    ["walls of a 100 × 200 ft tent with ten, 30 to 40 min", hundred, 10, "inspected", ["walls"], 30, 40],
    ["tension of an 80 × 100 ft tent with six, 40 to 50 min", eighty, 6, "tensioned", ["tensioning"], 40, 50],
    ["inside ties of an 80 × 100 ft tent with six, about 20 min", eighty, 6, "interiorRaised", ["tyingQuarters", "tyingCenters"], 18, 22],
  ] as const)("%s", (_what, tent, people, phase, keys, from, to) => {
    const { quantities } = workOf(frozenWith(people, tent, { use: { walls: true } }))!;
    const planned = estimate(phase, quantities, people);
    if (planned.is === "tooFew") throw new Error("enough people");
    const minutes = planned.parts.filter((p) => (keys as readonly string[]).includes(p.key)).reduce((sum, p) => sum + p.minutes, 0);
    expect(minutes).toBeGreaterThanOrEqual(from);
    expect(minutes).toBeLessThanOrEqual(to);
  });
});

describe("an 80% range holds about eight in ten", () => {
  const frozen = frozenWith(7);
  const JOBS = 500;
  const raiseOf = (times: (phase: Phase) => number) =>
    RAISE_PHASES.reduce((sum, phase) => sum + assumedMin(frozen, phase) * times(phase), 0);

  function coveragePercent(
    seed: number,
    n: number,
    truth: (c: Random) => { factor: number; sd: number },
    correlation = PHASE_CORRELATION,
  ): number {
    const c = random(seed);
    let held = 0;
    for (let i = 0; i < JOBS; i++) {
      const { factor, sd } = truth(c);
      const before = Array.from({ length: n }, (_, j) => finished(`j${j}`, frozen, jobOf(c, factor, sd, correlation)));
      const took = raiseOf(jobOf(c, factor, sd, correlation));
      const { left } = forecast(frozen, unstarted(frozen), factorsFrom(before, null), 0)!;
      if (took >= left!.low && took <= left!.high) held++;
    }
    return (100 * held) / JOBS;
  }
  it.each([
    [5, 1, 0.35],
    [10, 1, 0.35],
    [10, 1.5, 0.35],
    [10, 0.7, 0.35],
    [20, 1.5, 0.3],
    [30, 2, 0.4],
    [40, 1.3, 0.5],
  ])("after %i jobs of true factor %d, spread %d", (n, factor, sd) => {
    const held = coveragePercent(n * 1000 + factor * 100, n, () => ({ factor, sd }));
    expect(held).toBeGreaterThanOrEqual(72);
    expect(held).toBeLessThanOrEqual(88);
  });
  it("more than that if phases are independent, and at least 6 in 10 if they are fully correlated", () => {
    expect(coveragePercent(31, 10, () => ({ factor: 1.2, sd: 0.35 }), 0)).toBeGreaterThan(88);
    expect(coveragePercent(32, 10, () => ({ factor: 1.2, sd: 0.35 }), 1)).toBeGreaterThan(60);
  });
  it("before any job, with the factor distributed as assumed", () => {
    const held = coveragePercent(7, 0, ({ normal }) => ({ factor: Math.exp((PRIOR.sd / Math.sqrt(PRIOR.jobs)) * normal()), sd: PRIOR.sd }));
    expect(held).toBeGreaterThanOrEqual(72);
    expect(held).toBeLessThanOrEqual(95);
  });
  it("for one phase, after ten jobs", () => {
    const c = random(11);
    let held = 0;
    for (let i = 0; i < JOBS; i++) {
      const { low, high } = factorOf(Array.from({ length: 10 }, () => 1.2 * Math.exp(0.35 * c.normal())));
      const next = 1.2 * Math.exp(0.35 * c.normal());
      if (next >= low && next <= high) held++;
    }
    expect((100 * held) / JOBS).toBeGreaterThanOrEqual(72);
    expect((100 * held) / JOBS).toBeLessThanOrEqual(88);
  });
  it("in the middle of a job, with call shares distributed as assumed", () => {
    const c = random(23);
    const steps = frozen.script.steps.filter((s) => s.phase === "sectionsJoined");
    const here = steps[Math.floor(steps.length / 2)]!.id;
    const whole = assumedMin(frozen, "sectionsJoined");
    const behindShare = shareBefore(frozen, here);
    let held = 0;
    for (let i = 0; i < JOBS; i++) {
      const before = Array.from({ length: 10 }, (_, j) => finished(`j${j}`, frozen, jobOf(c, 1.2, 0.35)));
      const times = jobOf(c, 1.2, 0.35);
      const off = (share: number) => Math.exp(0.5 * Math.sqrt((1 - share) / share) * c.normal());
      const spent = whole * times("sectionsJoined") * behindShare * off(behindShare);
      const rest = whole * times("sectionsJoined") * (1 - behindShare) * off(1 - behindShare);
      const later = RAISE_PHASES.slice(RAISE_PHASES.indexOf("perimeterRaised")).reduce(
        (sum, p) => sum + assumedMin(frozen, p) * times(p),
        0,
      );
      const { left } = forecast(frozen, standingAt(frozen, here, { before: spent }), factorsFrom(before, null), 0)!;
      if (rest + later >= left!.low && rest + later <= left!.high) held++;
    }
    expect((100 * held) / JOBS).toBeGreaterThanOrEqual(72);
    expect((100 * held) / JOBS).toBeLessThanOrEqual(88);
  });
});

describe("sums and remainders of log-normals, against simulation", () => {
  const c = random(5);
  const N = 20_000;
  const share = (values: number[], under: number) => values.filter((v) => v < under).length / N;
  it("eight in ten sums of seven correlated phases are in the range of the sum", () => {
    const parts = [40, 110, 75, 60, 80, 60, 55].map((median) => ({ median, sd: 0.4 }));
    const { low, likely, high } = rangeOf(sumOf(parts));
    const sums = Array.from({ length: N }, () => {
      const own = c.normal();
      return parts.reduce((sum, p) => sum + p.median * Math.exp(p.sd * Math.SQRT1_2 * (own + c.normal())), 0);
    });
    for (const [at, part] of [
      [low, 0.1],
      [likely, 0.5],
      [high, 0.9],
    ] as const)
      expect(Math.abs(share(sums, at) - part)).toBeLessThan(0.015);
  });
  it("half of overdue work is done within the stated median", () => {
    const { low: _, likely, high } = rangeOf(remainingAfter({ median: 30, sd: 0.5 }, 45));
    const rest = Array.from({ length: 40 * N }, () => 30 * Math.exp(0.5 * c.normal()) - 45).filter((v) => v > 0);
    const under = (v: number) => rest.filter((r) => r < v).length / rest.length;
    expect(Math.abs(under(likely) - 0.5)).toBeLessThan(0.01);
    expect(Math.abs(under(high) - 0.9)).toBeLessThan(0.01);
  });
});

/** The share of a phase's minutes assigned to the calls before this one. */
function shareBefore(frozen: ReturnType<typeof frozenWith>, here: string): number {
  const { quantities, people } = workOf(frozen)!;
  const steps = frozen.script.steps.filter((s) => s.phase === "sectionsJoined");
  const planned = estimate("sectionsJoined", quantities, people);
  if (planned.is === "tooFew") throw new Error("seven people should be enough");
  const at = steps.findIndex((s) => s.id === here);
  return sharesOf(steps, planned)
    .slice(0, at)
    .reduce((a, b) => a + b, 0);
}
