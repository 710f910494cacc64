import type { WorkTime } from "../record/work-time.ts";
import { estimate } from "./estimate.ts";
import { type LogNormal, rangeOf, studentT90 } from "./log-normal.ts";
import { type Phase, RAISE_PHASES, TIMED_PHASES } from "./rates.ts";

/** The prior: what is assumed before any finished job is known. All three are common practice, no source. */
export const PRIOR = {
  /** Weight of the assumed rates, in finished jobs. The rates have no source, so one of the firm's own jobs weighs as much. */
  jobs: 1,
  /** Standard deviation between jobs on the log scale: two in three are within a factor of e^0.35 = 1.4 either way. */
  sd: 0.35,
  /** Weight of that standard deviation, in jobs. */
  sdJobs: 4,
} as const;

/**
 * Largest plausible ratio of worked to estimated time, either way. Beyond it the job was not timed as it happened: somebody
 * pressed through it afterward, or left it open.
 */
export const MAX_PLAUSIBLE_RATIO = 6;

/** How the firm's jobs compare with the assumed rates in one phase. Estimate × factor is the forecast for the next job. */
export type Factor = {
  /** Number of finished jobs it is based on. */
  readonly jobs: number;
  /** Number of finished jobs excluded because their times are implausible. */
  readonly leftOut: number;
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  readonly distribution: LogNormal;
};
export type Factors = Readonly<Record<Phase, Factor>>;
/** The part of a job's fold that is learned from. */
export type JobHistory = {
  readonly job: string;
  readonly rehearsal: boolean;
  readonly mismatch: number | null;
  readonly phase: string;
  readonly worked: WorkTime;
};

/**
 * A factor for each phase from the finished jobs, excluding the job to be forecast. Rehearsals, records that do not verify,
 * and unfinished phases are ignored.
 */
export function factorsFrom(jobs: readonly JobHistory[], except: string | null): Factors {
  const finished = jobs.filter((j) => j.job !== except && !j.rehearsal && j.mismatch === null && isFinished(j));
  return Object.fromEntries(
    TIMED_PHASES.map((phase) => [phase, factorOf(finished.flatMap(({ worked }) => ratioForPhase(worked, phase)))]),
  ) as Factors;
}

/** Whether the raise is over for good, so that its times will not change. */
const isFinished = ({ phase, worked }: JobHistory): boolean =>
  ["standing", "struck", "closed"].includes(phase) || RAISE_PHASES.every((p) => worked.done.includes(p));

/** Worked over estimated minutes for the crew on the brief, as a list of one; empty if either is unknown. */
function ratioForPhase({ byPhase, done, work }: WorkTime, phase: Phase): number[] {
  // A tent that was stood down halfway is less work to strike, so only a strike after a complete raise counts.
  if (!done.includes(phase) || !work || (phase === "struck" && !RAISE_PHASES.every((p) => done.includes(p)))) return [];
  const estimated = estimate(phase, work.quantities, work.people);
  const minutes = (byPhase[phase] ?? 0) / 60_000;
  return estimated.is === "estimate" && minutes > 0 ? [minutes / estimated.minutes] : [];
}

/**
 * The factor from ratios of worked to estimated time: the posterior predictive distribution of the next job's ratio. The
 * logarithms y of the ratios are modeled as normal with unknown mean and variance. The prior counts as n0 = `PRIOR.jobs`
 * earlier jobs of ratio 1 and, for the variance sd0², as v0 = `PRIOR.sdJobs` degrees of freedom:
 *
 *   mean = Σy / (n0 + n)              on the log scale, shrunk toward a ratio of 1
 *   s²   = (v0·sd0² + Σ(y − ȳ)² + ȳ²·n0·n/(n0 + n)) / (v0 + n)
 *   next = mean ± t(v0 + n)·s·√(1 + 1/(n0 + n))
 *
 * Normal model with conjugate prior; a textbook result, from memory.
 */
export function factorOf(ratios: readonly number[]): Factor {
  const plausible = ratios.filter((r) => r >= 1 / MAX_PLAUSIBLE_RATIO && r <= MAX_PLAUSIBLE_RATIO);
  const y = winsorize(plausible.map(Math.log));
  const n = y.length;
  const total = y.reduce((a, b) => a + b, 0);
  const sampleMean = n === 0 ? 0 : total / n;
  const mean = total / (PRIOR.jobs + n);
  const sumOfSquares = y.reduce((sum, v) => sum + (v - sampleMean) ** 2, 0);
  const degreesOfFreedom = PRIOR.sdJobs + n;
  const shrinkage = (sampleMean ** 2 * PRIOR.jobs * n) / (PRIOR.jobs + n);
  const variance = (PRIOR.sdJobs * PRIOR.sd ** 2 + sumOfSquares + shrinkage) / degreesOfFreedom;
  const predictiveSd = Math.sqrt(variance * (1 + 1 / (PRIOR.jobs + n)));
  // A log-normal with the same 80% interval as Student's t.
  const sd = (predictiveSd * studentT90(degreesOfFreedom)) / studentT90(Number.POSITIVE_INFINITY);
  const distribution: LogNormal = { median: Math.exp(mean), sd };
  return { jobs: n, leftOut: ratios.length - n, ...rangeOf(distribution), distribution };
}

/**
 * Limits the pull of an outlier among three or more values by clamping each to within WINSOR_SDS standard deviations of the
 * median. The standard deviation is the assumed one, or 1.4826 × the median absolute deviation if that is wider; for normal
 * values the two agree. A textbook rule, from memory.
 */
function winsorize(y: readonly number[]): number[] {
  if (y.length < 3) return [...y];
  const center = median(y);
  const limit = WINSOR_SDS * Math.max(PRIOR.sd, 1.4826 * median(y.map((v) => Math.abs(v - center))));
  return y.map((v) => Math.max(center - limit, Math.min(center + limit, v)));
}
const WINSOR_SDS = 2.5;

function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const half = sorted.length / 2;
  return (sorted[Math.ceil(half) - 1]! + sorted[Math.floor(half)]!) / 2;
}
