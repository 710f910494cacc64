import type { Bounds } from "./bounds.ts";
import type { StepId } from "./ids.ts";

/** How a rehearsal is done: with all that helps, the time standing still; or without help, the time running. */
export const WAYS = ["walk", "lead"] as const;
export type Way = (typeof WAYS)[number];

/** How much goes wrong in it: nothing; one thing after another; several at once. */
export const TROUBLES = ["none", "some", "several"] as const;
export type Trouble = (typeof TROUBLES)[number];

/** Numbers that a rehearsal is made from: what a person reads off one phone and types on another. */
export const SEED_BOUNDS: Bounds = { from: 1, to: 999_999 };

/** A rehearsal that answers back: how it is done, what goes wrong, the number it is made from, and the call that it begins at. */
export type Practice = { readonly way: Way; readonly trouble: Trouble; readonly seed: number; readonly from: StepId };
