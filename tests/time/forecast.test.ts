import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { workOf } from "../../machines/install/quantities.ts";
import { PHASES } from "../../machines/install/step.ts";
import { MAX_WORK_GAP_MS } from "../../machines/record/work-time.ts";
import { estimate } from "../../machines/time/estimate.ts";
import { type Forecast, forecast } from "../../machines/time/forecast.ts";
import type { JobProgress } from "../../machines/time/job-stage.ts";
import { factorsFrom } from "../../machines/time/learning.ts";
import type { Range } from "../../machines/time/log-normal.ts";
import { RAISE_PHASES, TIMED_PHASES } from "../../machines/time/rates.ts";
import { sharesOf } from "../../machines/time/shares.ts";
import { assumedMin, finished, frozenWith, standingAt, unstarted } from "../support/time.ts";

const frozen = frozenWith(7);
const none = factorsFrom([], null);
const steps = frozen.script.steps;
const firstOf = (phase: string) => steps.find((s) => s.phase === phase)!.id;
const MINUTE = 60_000;
const forecastAt = (at: JobProgress, now = 0, people?: number, factors = none): Forecast => forecast(frozen, at, factors, now, people)!;
const width = ({ low, high }: Range) => high - low;

describe("before the start", () => {
  it("there is a total with a range, and no finish time", () => {
    const f = forecastAt(unstarted(frozen));
    expect([f.stage, f.covers, f.finish, f.spentMin]).toEqual(["before", "raise", null, 0]);
    const sum = RAISE_PHASES.reduce((all, phase) => all + assumedMin(frozen, phase), 0);
    expect(f.left!.likely).toBeGreaterThan(sum);
    expect(f.left!.likely).toBeLessThan(sum * 1.15);
    expect(f.left!.low).toBeLessThan(f.left!.likely * 0.7);
  });
  it("finished jobs that took 1.5 times as long make it longer and its range narrower", () => {
    const jobs = Array.from({ length: 8 }, (_, i) => finished(`j${i}`, frozen, 1.5));
    const learned = forecastAt(unstarted(frozen), 0, undefined, factorsFrom(jobs, "this"));
    expect(learned.left!.likely / forecastAt(unstarted(frozen)).left!.likely).toBeGreaterThan(1.25);
    expect(learned.jobs).toBe(8);
    expect(width(learned.left!) / learned.left!.likely).toBeLessThan(
      width(forecastAt(unstarted(frozen)).left!) / forecastAt(unstarted(frozen)).left!.likely,
    );
  });
  it("with too few people there is no total, and the phases are named", () => {
    const f = forecastAt(unstarted(frozen), 0, 4);
    expect([f.left, f.tooFew]).toEqual([null, [{ phase: "interiorRaised", minPeople: 5 }]]);
  });
  it("more people never take longer", () => {
    const likely = [5, 6, 8, 12, 20, 60].map((people) => forecastAt(unstarted(frozen), 0, people).left!.likely);
    expect(likely).toEqual([...likely].sort((a, b) => b - a));
  });
});

describe("during a raise", () => {
  it("the finish is now plus the work left", () => {
    const at = standingAt(frozen, firstOf("sectionsJoined"));
    const f = forecastAt(at, 10 * MINUTE);
    expect(f.finish!.likely).toBe(Math.round(10 * MINUTE + f.left!.likely * MINUTE));
  });
  it("the range narrows as phases finish", () => {
    const widths = RAISE_PHASES.map((phase) => width(forecastAt(standingAt(frozen, firstOf(phase))).left!));
    expect(widths).toEqual([...widths].sort((a, b) => b - a));
    expect(widths.at(-1)).toBeLessThan(widths[0]! / 4);
  });
  it("the range and the rest shrink within a phase that is on pace", () => {
    const phase = steps.filter((s) => s.phase === "sectionsJoined");
    const all = assumedMin(frozen, "sectionsJoined");
    const work = workOf(frozen)!;
    const planned = estimate("sectionsJoined", work.quantities, work.people);
    if (planned.is === "tooFew") throw new Error("too few to join");
    const shares = sharesOf(phase, planned);
    const at = [0.25, 0.5, 0.9].map((part) => {
      const i = Math.floor(phase.length * part);
      const before = all * shares.slice(0, i).reduce((a, b) => a + b, 0);
      return forecastAt(standingAt(frozen, phase[i]!.id, { before })).phases.find((p) => p.is === "now")!.left!;
    });
    expect(at.map((r) => r.likely)).toEqual(at.map((r) => r.likely).sort((a, b) => b - a));
    expect(at.map(width)).toEqual(at.map(width).sort((a, b) => b - a));
  });
  it("calls that took twice as long lengthen the phase, but not later ones", () => {
    const here = steps.filter((s) => s.phase === "sectionsJoined").at(-3)!.id;
    const all = assumedMin(frozen, "sectionsJoined");
    const [as, slow] = [all, all * 2].map((before) => forecastAt(standingAt(frozen, here, { before })));
    const left = (f: Forecast, phase: string) => f.phases.find((p) => p.phase === phase)!.left!.likely;
    expect(left(slow!, "sectionsJoined")).toBeGreaterThan(left(as!, "sectionsJoined") * 1.4);
    expect(left(slow!, "tensioned")).toBe(left(as!, "tensioned"));
  });
  it("time spent at a call shortens its rest", () => {
    const drive = standingAt(frozen, "drive.AB", { before: 50 });
    const [early, later] = [0, 10].map((min) => forecastAt(drive, min * MINUTE));
    expect(later!.left!.likely).toBeLessThan(early!.left!.likely);
    expect(later!.finish!.likely - early!.finish!.likely).toBeLessThan(10 * MINUTE);
  });
  it("an overdue call gets more time, and never finishes in the past", () => {
    const later = [30, 60, 300, 2000].map((atCall) => forecastAt(standingAt(frozen, "drive.DA", { before: 80, atCall })));
    const phase = later.map((f) => f.phases.find((p) => p.is === "now")!);
    expect(phase.map((p) => p.overdue)).toEqual([false, false, true, true]);
    for (const f of later) expect(f.finish!.low).toBeGreaterThan(0);
    expect(phase[3]!.left!.likely).toBeGreaterThan(phase[2]!.left!.likely);
  });
  it("a night is not work, and only moves the finish by its own length", () => {
    const at = standingAt(frozen, firstOf("tensioned"));
    const night = MAX_WORK_GAP_MS + 10 * 3_600_000;
    expect(forecastAt(at, night).left).toEqual(forecastAt(at, 0).left);
    expect(forecastAt(at, night).finish!.likely - forecastAt(at, 0).finish!.likely).toBe(night);
  });
  it("more people never take longer, even in the middle of a phase", () =>
    fc.assert(
      fc.property(
        fc.constantFrom(...steps.filter((s) => s.phase !== "standing")),
        fc.double({ min: 0, max: 500, noNaN: true }),
        fc.integer({ min: 5, max: 59 }),
        (step, before, people) => {
          const at = standingAt(frozen, step.id, { before });
          expect(forecastAt(at, 0, people + 1).left!.likely).toBeLessThanOrEqual(forecastAt(at, 0, people).left!.likely + 1e-6);
        },
      ),
    ));
  it("a crew too small for a finished phase does not prevent a forecast", () => {
    expect(forecastAt(standingAt(frozen, firstOf("tensioned")), 0, 3).left).not.toBeNull();
  });
  it("during a hold the time left does not change", () => {
    const at = standingAt(frozen, firstOf("tensioned"));
    const held = { ...at, worked: { ...at.worked, held: true } };
    expect(forecastAt(held, 30 * MINUTE)).toMatchObject({ held: true, left: forecastAt(at, 0).left });
  });
});

describe("other stages", () => {
  it("while making safe there is no finish", () => {
    const at = { ...standingAt(frozen, firstOf("interiorRaised")), phase: "makingSafe" };
    expect(forecastAt(at)).toMatchObject({ stage: "makingSafe", covers: null, left: null, finish: null, tooFew: [] });
  });
  it("a standing tent has minutes for its strike, and no finish", () => {
    const f = forecastAt(standingAt(frozen, "watch"));
    expect([f.stage, f.covers, f.finish]).toEqual(["standing", "strike", null]);
    expect(f.left).toEqual(f.phases.at(-1)!.whole);
  });
  it("a strike has a finish", () => {
    const f = forecastAt(standingAt(frozen, "strike.unlace", { before: 60 }));
    expect([f.stage, f.covers, f.finish !== null]).toEqual(["striking", "strike", true]);
    expect(f.left!.likely).toBeLessThan(forecastAt(standingAt(frozen, "watch")).left!.likely);
  });
  it("a tent that was stood down halfway skips the phases that were not raised", () => {
    const at = standingAt(frozen, "strike.stakes");
    const f = forecastAt({ ...at, worked: { ...at.worked, done: ["utilitiesMarked", "anchorsSet"] } });
    expect(f.phases.map((p) => p.is)).toEqual(["done", "done", "skipped", "skipped", "skipped", "skipped", "skipped", "now"]);
    expect(f.left!.likely).toBeLessThan(assumedMin(frozen, "struck"));
  });
  it("a closed job has nothing left, and the time it took", () => {
    const at = standingAt(frozen, firstOf("struck"), { before: 100 });
    const f = forecastAt({ ...at, phase: "closed", worked: { ...at.worked, done: PHASES } });
    expect(f).toMatchObject({ stage: "closed", left: null, finish: null });
    expect(f.spentMin).toBeCloseTo(
      RAISE_PHASES.reduce((all, phase) => all + assumedMin(frozen, phase), 100),
      6,
    );
  });
  it("a plan that cannot be counted has no forecast", () => {
    const bare = { ...frozen, plan: { widthFt: 40, lengthFt: 80 } as never };
    expect(forecast(bare, unstarted(frozen), none, 0)).toBeNull();
  });
});

it("at any call: low ≤ likely ≤ high, finite, not negative, not in the past", () =>
  fc.assert(
    fc.property(
      fc.constantFrom(...steps),
      fc.double({ min: 0, max: 5000, noNaN: true }),
      fc.double({ min: 0, max: 5000, noNaN: true }),
      fc.integer({ min: 5, max: 60 }),
      fc.array(fc.double({ min: 0.2, max: 5, noNaN: true }), { maxLength: 12 }),
      (step, before, atCall, people, ratios) => {
        const factors = factorsFrom(
          ratios.map((r, i) => finished(`j${i}`, frozen, r)),
          null,
        );
        const f = forecastAt(standingAt(frozen, step.id, { before, atCall }), 1000, people, factors);
        const ranges = [f.left, f.finish, ...f.phases.flatMap((p) => [p.whole, p.left])].filter((r) => r !== null);
        expect(f.phases.map((p) => p.phase)).toEqual(TIMED_PHASES);
        for (const { low, likely, high } of ranges) {
          expect(low >= 0 && low <= likely && likely <= high && Number.isFinite(high)).toBe(true);
        }
        if (f.finish) expect(f.finish.low).toBeGreaterThanOrEqual(1000);
      },
    ),
  ));
