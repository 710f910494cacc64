import type { Step } from "../install/step.ts";
import type { Estimate } from "./estimate.ts";
import { sharesOf } from "./shares.ts";
import { leftOf, type Spread, scaled, sumOf } from "./spread.ts";

/**
 * How far the share of a phase that its calls are given can be from what they take: the logarithm of the time of a share x
 * is off by SHARE·√((1 − x)/x), never by more than SHARE_MOST. Common practice, no source.
 */
const SHARE = 0.5;
const MAX_SHARE = 0.8;
/** A pace beyond a sixth or six times says that calls were pressed through or gone over twice: it counts as that and no more. */
const MAX_PACE = Math.log(6);

const shareSd = (share: number): number => Math.min(MAX_SHARE, SHARE * Math.sqrt(Math.max(0, 1 - share) / Math.max(share, 1e-6)));

/**
 * What is left of the phase under way, in minutes: the rest of its present call and all calls after it. The pace of the
 * calls behind is one more reading of how long this phase takes, weighed against the plan's by their precisions:
 *
 *   pace = y·sd² / (sd² + e²),   sd'² = sd²·e² / (sd² + e²)
 *
 * y is the log of worked over expected time of the calls behind, sd the plan's spread, e what shares can be off by. Normal
 * mean with known variances; a textbook result, from memory. `whole` is the phase as the plan has it; `spentMin` is all
 * work in the phase, `atCallMin` that at the present call.
 */
export function leftInPhase(
  steps: readonly Step[],
  here: string,
  phase: Extract<Estimate, { is: "estimate" }>,
  whole: Spread,
  spentMin: number,
  atCallMin: number,
): Spread {
  const shares = sharesOf(steps, phase);
  const at = steps.findIndex((s) => s.id === here);
  if (at < 0) return leftOf(whole, spentMin);
  const behind = shares.slice(0, at).reduce((a, b) => a + b, 0);
  const present = shares[at]!;
  const rest = Math.max(0, 1 - behind - present);
  const { median, sd } = paced(whole, behind, spentMin - atCallMin);
  const off = (share: number) => Math.hypot(sd, shareSd(share));
  const call = leftOf({ median: median * present, sd: off(present) }, atCallMin);
  return rest > 1e-9 ? sumOf([call, scaled({ median, sd: off(rest) }, rest)]) : call;
}

/** The whole phase as its calls behind make it look. */
function paced(whole: Spread, behind: number, spentMin: number): Spread {
  if (behind <= 0 || spentMin <= 0) return whole;
  const seen = Math.log(spentMin / (whole.median * behind));
  const y = Math.max(-MAX_PACE, Math.min(MAX_PACE, seen));
  const plan = whole.sd ** 2;
  const off = shareSd(behind) ** 2;
  if (plan + off === 0) return whole;
  return { median: whole.median * Math.exp((y * plan) / (plan + off)), sd: Math.sqrt((plan * off) / (plan + off)) };
}
