import type { Step } from "../install/step.ts";
import type { Estimate } from "./estimate.ts";
import { type LogNormal, remainingAfter, scaled, sumOf } from "./log-normal.ts";
import { sharesOf } from "./shares.ts";

/**
 * Uncertainty of the share of a phase that is assigned to its calls. For a share x, the standard deviation of the log of its
 * time is SHARE_SD_SCALE·√((1 − x)/x), at most MAX_SHARE_SD. Common practice, no source.
 */
const SHARE_SD_SCALE = 0.5;
const MAX_SHARE_SD = 0.8;
/** A pace below a sixth or above six times the plan means calls were pressed through or repeated, so it is clamped. */
const MAX_LOG_PACE = Math.log(6);

const shareSd = (share: number): number =>
  Math.min(MAX_SHARE_SD, SHARE_SD_SCALE * Math.sqrt(Math.max(0, 1 - share) / Math.max(share, 1e-6)));

/**
 * What is left of the phase under way, in minutes: the rest of the current call and all calls after it. The pace of the
 * completed calls updates the planned duration of the phase, weighted by precision:
 *
 *   pace = y·sd² / (sd² + e²),   sd'² = sd²·e² / (sd² + e²)
 *
 * y is the log of worked over expected time of the completed calls, sd the planned standard deviation, and e that of their
 * share. Posterior of a normal mean with known variances; a textbook result, from memory. `whole` is the planned phase;
 * `spentMin` is all work in the phase, `atCallMin` the work at the current call.
 */
export function remainingInPhase(
  steps: readonly Step[],
  here: string,
  phase: Extract<Estimate, { is: "estimate" }>,
  whole: LogNormal,
  spentMin: number,
  atCallMin: number,
): LogNormal {
  const shares = sharesOf(steps, phase);
  const at = steps.findIndex((s) => s.id === here);
  if (at < 0) return remainingAfter(whole, spentMin);
  const completed = shares.slice(0, at).reduce((a, b) => a + b, 0);
  const current = shares[at]!;
  const later = Math.max(0, 1 - completed - current);
  const { median, sd } = adjustForPace(whole, completed, spentMin - atCallMin);
  const sdOf = (share: number) => Math.hypot(sd, shareSd(share));
  const call = remainingAfter({ median: median * current, sd: sdOf(current) }, atCallMin);
  return later > 1e-9 ? sumOf([call, scaled({ median, sd: sdOf(later) }, later)]) : call;
}

/** The whole phase, updated with the pace of its completed calls. */
function adjustForPace(whole: LogNormal, completedShare: number, spentMin: number): LogNormal {
  if (completedShare <= 0 || spentMin <= 0) return whole;
  const logPace = Math.log(spentMin / (whole.median * completedShare));
  const y = Math.max(-MAX_LOG_PACE, Math.min(MAX_LOG_PACE, logPace));
  const planVar = whole.sd ** 2;
  const shareVar = shareSd(completedShare) ** 2;
  if (planVar + shareVar === 0) return whole;
  return {
    median: whole.median * Math.exp((y * planVar) / (planVar + shareVar)),
    sd: Math.sqrt((planVar * shareVar) / (planVar + shareVar)),
  };
}
