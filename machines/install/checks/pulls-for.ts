import type { Bounds } from "../../figures/bounds.ts";
import { MAX_PULL_LBF } from "../../loads/capacity.ts";

/** What pulls on stakes are held against: the plate whose stakes have most to hold. Whole pounds. */
export type PullsFor = {
  /** Of each of its stakes, and of its strap, lbf. */
  readonly demandLbf: number;
  readonly tensionLbf: number;
  /** Stakes that the plan has there, and the most that the sheet allows; `null`, it says nothing. */
  readonly stakes: number;
  readonly allowed: number | null;
  /** Between what a stake held and what it may be counted for. */
  readonly factor: number;
};

/** What a pull can be believed to be, lbf: nobody pulls on to twice what is needed, nor past what any stake is known to hold. */
export const pullBounds = (against: PullsFor): Bounds => ({ from: 0, to: Math.max(MAX_PULL_LBF, 2 * pullToReachLbf(against)) });

/** What pulls that were too low come to: what a stake may be counted for, lbf, and how many at that plate it would take; `null`, none would. */
export type PullsHeld = PullsFor & { readonly safeLbf: number; readonly wanted: number | null };

/**
 * What the lowest of some pulls comes to.
 *
 * @example pullsHeld([900, 600], { demandLbf: 540, tensionLbf: 1080, stakes: 2, allowed: null, factor: 1.5 }).safeLbf // 400
 */
export function pullsHeld(pulls: readonly number[], against: PullsFor): PullsHeld {
  const safeLbf = Math.min(...pulls) / against.factor;
  const wanted = safeLbf > 0 ? Math.ceil(against.tensionLbf / safeLbf - 1e-9) : null;
  return { ...against, safeLbf, wanted };
}

/** The pull that each has to reach, in whole lbf: the load of a stake times the factor. */
export const pullToReachLbf = ({ demandLbf, factor }: PullsFor): number => Math.ceil(demandLbf * factor - 1e-6);
