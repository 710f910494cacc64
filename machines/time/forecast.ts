import type { Instant } from "../install/ids.ts";
import { type Work, workOf } from "../install/quantities.ts";
import type { Frozen } from "../install/step.ts";
import { workBetween } from "../record/work-time.ts";
import { type Estimate, estimate } from "./estimate.ts";
import { type JobProgress, type JobStage, type PhaseStatus, phaseStatus, stageOf } from "./job-stage.ts";
import type { Factor, Factors } from "./learning.ts";
import { type LogNormal, type Range, rangeOf, scaled, sumOf } from "./log-normal.ts";
import { type Phase, RAISE_PHASES, TIMED_PHASES } from "./rates.ts";
import { remainingInPhase } from "./remaining.ts";

/** The forecast of one phase. Minutes are minutes of work. */
export type PhaseTime = {
  readonly phase: Phase;
  readonly is: PhaseStatus;
  /** At the assumed rates. */
  readonly estimate: Estimate;
  readonly factor: Factor;
  /** Estimate × factor; `null` if there is no estimate. */
  readonly whole: Range | null;
  readonly spentMin: number;
  /** The rest of a phase under way, or all of a later one. */
  readonly left: Range | null;
  /** Under way, and already longer than 9 in 10 would have taken. */
  readonly overdue: boolean;
};
/** The forecast of a job: what is under way, what is left of it, and when it will be done. */
export type Forecast = {
  readonly stage: JobStage;
  readonly held: boolean;
  readonly people: number;
  readonly work: Work;
  /** What the forecast covers. For a standing tent that is its strike; making safe cannot be forecast. */
  readonly covers: "raise" | "strike" | null;
  /** Minutes of work left; `null` if nothing is covered or there are too few people for a time. */
  readonly left: Range | null;
  /** The finish, if work under way goes on without a stop. */
  readonly finish: Range | null;
  /** Covered phases that cannot be timed with so few people. */
  readonly tooFew: readonly { readonly phase: Phase; readonly minPeople: number }[];
  /** Number of finished jobs behind the covered phase with the fewest. */
  readonly jobs: number;
  readonly spentMin: number;
  readonly phases: readonly PhaseTime[];
};

/**
 * Forecasts a job at a moment; `null` if the work cannot be counted from its plan. With `people`, everything that is not done
 * yet is forecast for a crew of that size instead of the one on the brief.
 */
export function forecast(frozen: Frozen, at: JobProgress, factors: Factors, now: Instant, people?: number): Forecast | null {
  const work = workOf(frozen);
  if (!work) return null;
  const crew = people ?? work.people;
  const stage = stageOf(at);
  const timed = TIMED_PHASES.map((phase) => forecastPhase(phase, frozen, work, crew, at, factors[phase], now));
  const covers = stage === "before" || stage === "raising" ? "raise" : stage === "standing" || stage === "striking" ? "strike" : null;
  const ahead = timed.filter(({ time }) => covers !== null && isAhead(time) && RAISE_PHASES.includes(time.phase) === (covers === "raise"));
  const tooFew = ahead.flatMap(({ time: { phase, estimate: e } }) => (e.is === "tooFew" ? [{ phase, minPeople: e.minPeople }] : []));
  const left = ahead.length > 0 && tooFew.length === 0 ? rangeOf(sumOf(ahead.flatMap((t) => t.left ?? []))) : null;
  const underWay = stage === "raising" || stage === "striking";
  return {
    stage,
    held: at.worked.held && stage !== "closed",
    people: crew,
    work,
    covers,
    left,
    finish:
      left && underWay
        ? { low: minutesAfter(now, left.low), likely: minutesAfter(now, left.likely), high: minutesAfter(now, left.high) }
        : null,
    tooFew,
    jobs: ahead.length === 0 ? 0 : Math.min(...ahead.map(({ time }) => time.factor.jobs)),
    spentMin: timed.reduce((sum, { time }) => sum + time.spentMin, 0),
    phases: timed.map(({ time }) => time),
  };
}

const isAhead = ({ is }: PhaseTime): boolean => is === "now" || is === "later";
const minutesAfter = (now: Instant, minutes: number): Instant => Math.round(now + minutes * 60_000);

type PhaseForecast = { readonly time: PhaseTime; readonly left: LogNormal | null };

function forecastPhase(
  phase: Phase,
  frozen: Frozen,
  work: Work,
  crew: number,
  at: JobProgress,
  factor: Factor,
  now: Instant,
): PhaseForecast {
  const is = phaseStatus(phase, at);
  // Everything done so far, in this phase too, was done by the crew on the brief.
  const briefCrew = estimate(phase, work.quantities, work.people);
  const planned = is === "done" || is === "skipped" ? briefCrew : estimate(phase, work.quantities, crew);
  const sinceMin = is === "now" ? workBetween(at, now) / 60_000 : 0;
  const spentMin = (at.worked.byPhase[phase] ?? 0) / 60_000 + sinceMin;
  const common = { phase, is, estimate: planned, factor, spentMin };
  if (planned.is === "tooFew") return { time: { ...common, whole: null, left: null, overdue: false }, left: null };
  const whole = scaled(factor.distribution, planned.minutes);
  const begun = briefCrew.is === "estimate" ? briefCrew : planned;
  const begunWhole = scaled(factor.distribution, begun.minutes);
  const overdue = is === "now" && spentMin > rangeOf(begunWhole).high;
  const left = is === "later" ? whole : is === "now" ? scaled(restOfPhase(), planned.minutes / begun.minutes) : null;
  return { time: { ...common, whole: rangeOf(whole), left: left && rangeOf(left), overdue }, left };

  function restOfPhase(): LogNormal {
    const steps = frozen.script.steps.filter((s) => s.phase === phase);
    return remainingInPhase(steps, at.worked.step, begun, begunWhole, spentMin, at.worked.atCallMs / 60_000 + sinceMin);
  }
}
