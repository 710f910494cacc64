import type { Instant } from "../install/ids.ts";
import { type Work, workOf } from "../install/quantities.ts";
import type { Frozen } from "../install/step.ts";
import { workBetween } from "../record/work-time.ts";
import { type Estimate, estimate } from "./estimate.ts";
import type { Factor, Factors } from "./learning.ts";
import { leftInPhase } from "./left.ts";
import { type PhaseIs, phaseIs, type Standing, type Stands, standsOf } from "./place.ts";
import { type Phase, RAISE, TIMED } from "./rates.ts";
import { type Range, rangeOf, type Spread, scaled, sumOf } from "./spread.ts";

/** One phase in time. Minutes are minutes of work. */
export type PhaseTime = {
  readonly phase: Phase;
  readonly is: PhaseIs;
  /** By the assumed rates. */
  readonly estimate: Estimate;
  readonly factor: Factor;
  /** Estimate × factor; `null` where there is no estimate. */
  readonly whole: Range | null;
  readonly spentMin: number;
  /** Left of a phase under way, or all of one that is ahead. */
  readonly left: Range | null;
  /** Under way, and longer already than 9 in 10 would have taken. */
  readonly overdue: boolean;
};
/** Where a job stands in time, and when what is under way will be done. */
export type Forecast = {
  readonly stands: Stands;
  readonly held: boolean;
  readonly people: number;
  readonly work: Work;
  /** What is told of: the raise, the strike, or nothing. A tent that stands has its strike before it; making safe has no end that can be told. */
  readonly of: "raise" | "strike" | null;
  /** Minutes of work left of it; `null` where there are none to tell, or too few people to tell them. */
  readonly left: Range | null;
  /** The same as instants from now on, where it is under way, without a stop. */
  readonly finish: Range | null;
  /** Phases of it still to come that cannot be timed with so few people. */
  readonly tooFew: readonly { readonly phase: Phase; readonly least: number }[];
  /** Finished jobs that the least known phase still to come rests on. */
  readonly jobs: number;
  readonly spentMin: number;
  readonly phases: readonly PhaseTime[];
};

/**
 * The forecast of a job at a moment; `null` where its plan cannot be counted. `people` in the place of those on the brief:
 * what it would be with so many, for all of it that is not done.
 */
export function forecast(frozen: Frozen, at: Standing, factors: Factors, now: Instant, people?: number): Forecast | null {
  const work = workOf(frozen);
  if (!work) return null;
  const crew = people ?? work.people;
  const stands = standsOf(at);
  const timed = TIMED.map((phase) => timedPhase(phase, frozen, work, crew, at, factors[phase], now));
  const of = stands === "before" || stands === "raising" ? "raise" : stands === "standing" || stands === "striking" ? "strike" : null;
  const ahead = timed.filter(({ time }) => of !== null && isAhead(time) && RAISE.includes(time.phase) === (of === "raise"));
  const tooFew = ahead.flatMap(({ time: { phase, estimate: e } }) => (e.is === "tooFew" ? [{ phase, least: e.least }] : []));
  const left = ahead.length > 0 && tooFew.length === 0 ? rangeOf(sumOf(ahead.flatMap((t) => t.left ?? []))) : null;
  const underWay = stands === "raising" || stands === "striking";
  return {
    stands,
    held: at.worked.held && stands !== "closed",
    people: crew,
    work,
    of,
    left,
    finish: left && underWay ? { low: then(now, left.low), likely: then(now, left.likely), high: then(now, left.high) } : null,
    tooFew,
    jobs: ahead.length === 0 ? 0 : Math.min(...ahead.map(({ time }) => time.factor.jobs)),
    spentMin: timed.reduce((sum, { time }) => sum + time.spentMin, 0),
    phases: timed.map(({ time }) => time),
  };
}

const isAhead = ({ is }: PhaseTime): boolean => is === "now" || is === "later";
const then = (now: Instant, minutes: number): Instant => Math.round(now + minutes * 60_000);

type Timed = { readonly time: PhaseTime; readonly left: Spread | null };

function timedPhase(phase: Phase, frozen: Frozen, work: Work, crew: number, at: Standing, factor: Factor, now: Instant): Timed {
  const is = phaseIs(phase, at);
  // What is done was done by those on the brief, and so was what is done of a phase under way.
  const own = estimate(phase, work.quantities, work.people);
  const planned = is === "done" || is === "skipped" ? own : estimate(phase, work.quantities, crew);
  const sinceMin = is === "now" ? workBetween(at, now) / 60_000 : 0;
  const spentMin = (at.worked.byPhase[phase] ?? 0) / 60_000 + sinceMin;
  const told = { phase, is, estimate: planned, factor, spentMin };
  if (planned.is === "tooFew") return { time: { ...told, whole: null, left: null, overdue: false }, left: null };
  const whole = scaled(factor.spread, planned.minutes);
  const begun = own.is === "estimate" ? own : planned;
  const begunWhole = scaled(factor.spread, begun.minutes);
  const overdue = is === "now" && spentMin > rangeOf(begunWhole).high;
  const left = is === "later" ? whole : is === "now" ? scaled(leftNow(), planned.minutes / begun.minutes) : null;
  return { time: { ...told, whole: rangeOf(whole), left: left && rangeOf(left), overdue }, left };

  function leftNow(): Spread {
    const steps = frozen.script.steps.filter((s) => s.phase === phase);
    return leftInPhase(steps, at.worked.step, begun, begunWhole, spentMin, at.worked.atCallMs / 60_000 + sinceMin);
  }
}
