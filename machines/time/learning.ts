import type { WorkTime } from "../record/work-time.ts";
import { estimate } from "./estimate.ts";
import { type Phase, RAISE, TIMED } from "./rates.ts";
import { rangeOf, type Spread, tValue } from "./spread.ts";

/** What is assumed before a single job is known. All three are common practice, no source. */
export const PRIOR = {
  /** The assumed rates weigh as much as so many finished jobs. They have no source: one job of the firm's own weighs as much. */
  jobs: 1,
  /** Standard deviation, on the log scale, from job to job: two in three lie within a factor of e^0.35 = 1.4 either way. */
  sd: 0.35,
  /** How firmly that spread is held, in jobs. */
  sdJobs: 4,
} as const;

/** A job whose phase took less than a sixth of its estimate, or more than six times it, was not timed: pressed through afterward, or left open. */
export const BELIEVABLE = 6;

/** How the firm's jobs compare with the assumed rates in one phase. Multiplied on an estimate it gives the next job's minutes. */
export type Factor = {
  /** Finished jobs that it rests on. */
  readonly jobs: number;
  /** Finished jobs that were not believable, and are not in it. */
  readonly leftOut: number;
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  readonly spread: Spread;
};
export type Factors = Readonly<Record<Phase, Factor>>;
/** What is kept of a job, as far as it can teach. */
export type Taught = {
  readonly job: string;
  readonly rehearsal: boolean;
  readonly mismatch: number | null;
  readonly phase: string;
  readonly worked: WorkTime;
};

/**
 * A factor for each phase from the finished jobs, the one to be forecast left out. Jobs whose record does not hang together,
 * rehearsals, and phases that were never finished teach nothing.
 */
export function factorsFrom(jobs: readonly Taught[], except: string | null): Factors {
  const finished = jobs.filter((j) => j.job !== except && !j.rehearsal && j.mismatch === null && isFinished(j));
  return Object.fromEntries(TIMED.map((phase) => [phase, factorOf(finished.flatMap(({ worked }) => ratioIn(worked, phase)))])) as Factors;
}

/** Handed over, or over and done with: nothing of its raise is gone back to. */
const isFinished = ({ phase, worked }: Taught): boolean =>
  ["standing", "struck", "closed"].includes(phase) || RAISE.every((p) => worked.done.includes(p));

/** Worked minutes over estimated minutes, with the people that the brief has on site; nothing where either is not known. */
function ratioIn({ byPhase, done, work }: WorkTime, phase: Phase): number[] {
  // A strike counts where the whole tent had stood: a tent that was stood down half way is less work to take down.
  if (!done.includes(phase) || !work || (phase === "struck" && !RAISE.every((p) => done.includes(p)))) return [];
  const wanted = estimate(phase, work.quantities, work.people);
  const minutes = (byPhase[phase] ?? 0) / 60_000;
  return wanted.is === "estimate" && minutes > 0 ? [minutes / wanted.minutes] : [];
}

/**
 * The factor from ratios of worked to estimated time. Logarithms y of the ratios are taken as normal about an unknown mean,
 * with the assumed rates as `PRIOR.jobs` earlier jobs of ratio 1 (n0) and the assumed spread as `PRIOR.sdJobs` (v0):
 *
 *   mean = Σy / (n0 + n)              the geometric mean, drawn toward 1
 *   s²   = (v0·sd0² + Σ(y − ȳ)² + ȳ²·n0·n/(n0 + n)) / (v0 + n)
 *   next = mean ± t(v0 + n)·s·√(1 + 1/(n0 + n))
 *
 * The normal model with its conjugate prior and the prediction of the next one; a textbook result, from memory.
 */
export function factorOf(ratios: readonly number[]): Factor {
  const all = ratios.filter((r) => r >= 1 / BELIEVABLE && r <= BELIEVABLE);
  const y = winsorize(all.map(Math.log));
  const n = y.length;
  const total = y.reduce((a, b) => a + b, 0);
  const own = n === 0 ? 0 : total / n;
  const mean = total / (PRIOR.jobs + n);
  const within = y.reduce((sum, v) => sum + (v - own) ** 2, 0);
  const degrees = PRIOR.sdJobs + n;
  const variance = (PRIOR.sdJobs * PRIOR.sd ** 2 + within + (own ** 2 * PRIOR.jobs * n) / (PRIOR.jobs + n)) / degrees;
  const next = Math.sqrt(variance * (1 + 1 / (PRIOR.jobs + n)));
  // As a normal spread whose 8 in 10 are those of Student's t.
  const spread: Spread = { median: Math.exp(mean), sd: (next * tValue(degrees)) / tValue(Number.POSITIVE_INFINITY) };
  return { jobs: n, leftOut: ratios.length - n, ...rangeOf(spread), spread };
}

/**
 * One wild job among three or more pulls no harder than one TAME spreads away from the middle one. The spread is the
 * assumed one, or the jobs' own where that is wider: 1.4826 times the middle distance from the middle, which for normal
 * values is the standard deviation. A textbook rule, from memory.
 */
function winsorize(y: readonly number[]): number[] {
  if (y.length < 3) return [...y];
  const middle = median(y);
  const most = WINSOR_SPREADS * Math.max(PRIOR.sd, 1.4826 * median(y.map((v) => Math.abs(v - middle))));
  return y.map((v) => Math.max(middle - most, Math.min(middle + most, v)));
}
const WINSOR_SPREADS = 2.5;

function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const half = sorted.length / 2;
  return (sorted[Math.ceil(half) - 1]! + sorted[Math.floor(half)]!) / 2;
}
