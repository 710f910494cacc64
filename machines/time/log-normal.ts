/**
 * A log-normal distribution: work is as likely to take half as long as twice as long. `median` is in minutes, or a ratio; `sd`
 * is the standard deviation of the logarithm.
 */
export type LogNormal = { readonly median: number; readonly sd: number };
/** An 80% interval: the true figure is below `low` 1 time in 10 and above `high` 1 time in 10. */
export type Range = { readonly low: number; readonly likely: number; readonly high: number };

/** 90th percentile of the standard normal distribution. Tables of the normal distribution, from memory. */
export const Z_90 = 1.2815515655;

/**
 * Correlation between the phases of one job on the log scale: a crew or a site that is slow in one phase is likely to be slow
 * in the next. Common practice, no source.
 */
export const PHASE_CORRELATION = 0.5;

/** The 80% interval of a distribution. */
export const rangeOf = ({ median, sd }: LogNormal): Range => ({
  low: median * Math.exp(-Z_90 * sd),
  likely: median,
  high: median * Math.exp(Z_90 * sd),
});

/** The distribution of a multiple. */
export const scaled = ({ median, sd }: LogNormal, by: number): LogNormal => ({ median: median * by, sd });

/**
 * The sum of several correlated distributions, approximated by a log-normal with the same mean M and variance V. Means
 * m_i = median·exp(sd²/2), variances m_i²(exp(sd²) − 1), covariances m_i·m_j(exp(correlation·sd_i·sd_j) − 1); then
 * sd² = ln(1 + V/M²) and median = M·exp(−sd²/2). Moment matching of log-normal sums (Fenton–Wilkinson), with the covariance
 * of correlated log-normals; from memory.
 */
export function sumOf(all: readonly LogNormal[], correlation = PHASE_CORRELATION): LogNormal {
  const means = all.map(({ median, sd }) => median * Math.exp((sd * sd) / 2));
  const mean = means.reduce((a, b) => a + b, 0);
  if (mean <= 0) return { median: 0, sd: 0 };
  let variance = 0;
  for (const [i, a] of all.entries())
    for (const [j, b] of all.entries()) variance += means[i]! * means[j]! * Math.expm1((i === j ? 1 : correlation) * a.sd * b.sd);
  const sd = Math.sqrt(Math.log1p(variance / (mean * mean)));
  return { median: mean * Math.exp((-sd * sd) / 2), sd };
}

/**
 * What remains when `spent` has passed and the work is not done: conditions on lasting this long, and keeps the median and
 * the 90th percentile of the rest. Overdue work is never done "now": the longer it is overdue, the longer it may still take.
 * Truncated normal distribution of the logarithm; standard statistics, from memory.
 */
export function remainingAfter(whole: LogNormal, spent: number): LogNormal {
  if (spent <= 0 || whole.median <= 0) return whole;
  if (whole.sd <= 0) return { median: Math.max(whole.median - spent, 0), sd: 0 };
  const z = Math.min(30, Math.log(spent / whole.median) / whole.sd);
  const stillGoing = normalUpperTail(z);
  const at = (share: number) => Math.max(whole.median * Math.exp(whole.sd * normalUpperQuantile(stillGoing * share)) - spent, 1e-9);
  const median = at(0.5);
  return { median, sd: Math.log(at(0.1) / median) / Z_90 };
}

/**
 * Probability that a standard normal value is above z. Uses the series below 3 and the continued fraction from there on;
 * standard forms, from memory.
 */
export function normalUpperTail(z: number): number {
  if (z < 0) return 1 - normalUpperTail(-z);
  const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
  if (z < 3) {
    let term = z;
    let sum = z;
    for (let k = 3; term > 1e-17; k += 2) {
      term *= (z * z) / k;
      sum += term;
    }
    return 0.5 - density * sum;
  }
  let rest = z;
  for (let k = 60; k >= 1; k--) rest = z + k / rest;
  return density / rest;
}

/** The z that a standard normal value exceeds with probability `share`, by bisection. The share is between 0 and 1, exclusive. */
export function normalUpperQuantile(share: number): number {
  let [low, high] = [-38, 38];
  for (let n = 0; n < 100; n++) {
    const middle = (low + high) / 2;
    if (normalUpperTail(middle) > share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * 90th percentile of Student's t for 4 or more degrees of freedom, accurate to a hundredth. Expansion in 1/degrees around the
 * normal value; from memory, checked against the table in tests/checks.
 */
export function studentT90(degreesOfFreedom: number): number {
  const df = degreesOfFreedom;
  const z = Z_90;
  return (
    z +
    (z ** 3 + z) / (4 * df) +
    (5 * z ** 5 + 16 * z ** 3 + 3 * z) / (96 * df ** 2) +
    (3 * z ** 7 + 19 * z ** 5 + 17 * z ** 3 - 15 * z) / (384 * df ** 3)
  );
}
