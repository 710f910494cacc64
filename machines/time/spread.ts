/**
 * A number of minutes that is not known for sure: half the time less than the median, half the time more, and spread evenly
 * on the log scale, because work is out by a half as readily as by double. `sd` is the standard deviation of its logarithm.
 */
export type Spread = { readonly median: number; readonly sd: number };
/** `low` and `high` hold the true figure about 8 times in 10: 1 in 10 ends below, 1 in 10 above. */
export type Range = { readonly low: number; readonly likely: number; readonly high: number };

/** Standard normal value that 1 in 10 lie above. Tables of the normal distribution, from memory. */
export const Z = 1.2815515655;

/**
 * How alike the phases of one job are: a crew or a ground that is slow in one is likely to be slow in the next. 0 would be
 * not at all, 1 wholly. Common practice, no source.
 */
export const ALIKE = 0.5;

export const rangeOf = ({ median, sd }: Spread): Range => ({
  low: median * Math.exp(-Z * sd),
  likely: median,
  high: median * Math.exp(Z * sd),
});

export const scaled = ({ median, sd }: Spread, by: number): Spread => ({ median: median * by, sd });

/**
 * The sum of several, as one that has the sum's mean and variance. Means m_i = median·exp(sd²/2), variances
 * m_i²(exp(sd²) − 1), covariances m_i·m_j(exp(alike·sd_i·sd_j) − 1); then sd² = ln(1 + V/M²) and median = M·exp(−sd²/2).
 * Moment matching of log-normal sums (Fenton–Wilkinson), with the covariance of correlated log-normals; from memory.
 */
export function sumOf(all: readonly Spread[], alike = ALIKE): Spread {
  const means = all.map(({ median, sd }) => median * Math.exp((sd * sd) / 2));
  const mean = means.reduce((a, b) => a + b, 0);
  if (mean <= 0) return { median: 0, sd: 0 };
  let variance = 0;
  for (const [i, a] of all.entries())
    for (const [j, b] of all.entries()) variance += means[i]! * means[j]! * Math.expm1((i === j ? 1 : alike) * a.sd * b.sd);
  const sd = Math.sqrt(Math.log1p(variance / (mean * mean)));
  return { median: mean * Math.exp((-sd * sd) / 2), sd };
}

/**
 * What remains of something when `spent` has gone already and it is not done: the median and the point that 1 in 10 lie
 * above, of all those that would have lasted this long. What is overdue is never done "now": the longer it is overdue,
 * the longer it may still be. Truncated normal distribution of the logarithm; standard statistics, from memory.
 */
export function leftOf(whole: Spread, spent: number): Spread {
  if (spent <= 0 || whole.median <= 0) return whole;
  if (whole.sd <= 0) return { median: Math.max(whole.median - spent, 0), sd: 0 };
  const z = Math.min(30, Math.log(spent / whole.median) / whole.sd);
  const lasting = above(z);
  const at = (share: number) => Math.max(whole.median * Math.exp(whole.sd * valueAbove(lasting * share)) - spent, 1e-9);
  const median = at(0.5);
  return { median, sd: Math.log(at(0.1) / median) / Z };
}

/** Chance that a standard normal value lies above z: series below 3, continued fraction from there. Standard forms, from memory. */
export function above(z: number): number {
  if (z < 0) return 1 - above(-z);
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

/** The standard normal value that a share of all lie above, by halving. The share is more than 0 and less than 1. */
export function valueAbove(share: number): number {
  let [low, high] = [-38, 38];
  for (let n = 0; n < 100; n++) {
    const middle = (low + high) / 2;
    if (above(middle) > share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * The value of Student's t that 1 in 10 lie above, for so many degrees of freedom, 4 or more: good to a hundredth.
 * The usual expansion in 1/degrees round the normal value; from memory, held against the table in tests/checks.
 */
export function tValue(degrees: number): number {
  const z = Z;
  return (
    z +
    (z ** 3 + z) / (4 * degrees) +
    (5 * z ** 5 + 16 * z ** 3 + 3 * z) / (96 * degrees ** 2) +
    (3 * z ** 7 + 19 * z ** 5 + 17 * z ** 3 - 15 * z) / (384 * degrees ** 3)
  );
}
