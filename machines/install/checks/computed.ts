import { type CheckKind, DEFAULTS } from "./check-kind.ts";

/** One line, thing or edge that stands too near, and what of the tent is too near to it. */
export type Shortfall = {
  /** What it is near to: the kind of buried line, `overhead`, the kind of thing, the edge of the `ground`, or outside the `ticketArea`. */
  readonly kind: string;
  /** Its name on the site; `null` where it has none. */
  readonly id: string | null;
  /** Stations by their ids, one plate of several as `A.2`, interior poles and their ties by their ids, nearest first. Empty: ropes and cloth. */
  readonly of: readonly string[];
  /** How far the nearest of them is, rounded down, and how far is wanted, rounded up. `null` where no distance says it. */
  readonly distance: number | null;
  readonly wanted: number | null;
  readonly unit: "in" | "ft";
};

/**
 * A distance that was worked out from what was entered of the site, and is too short: no answer, no paper and no second look
 * opens it, only a change of the plan after which it is not too short any more. Then its call is not there.
 */
export type ComputedCheck = { readonly kind: "computed"; readonly short: readonly Shortfall[] };

export const computed: CheckKind<ComputedCheck> = {
  ...DEFAULTS,
  kind: "computed",
  answeredBy: "amendment",
  values: [],
  accepts: () => false,
  meetsLimit: () => false,
  tile: () => ({ input: "site" }),
  expects: () => ({ expects: "nothing" }),
};
