import type { Moment } from "../../../machines/rehearsal/look-back.ts";

/** One thing said, in words: when, at which call, what was said, what was right, and why it was not safe. */
export type SaidState = {
  readonly no: number;
  readonly clock: string;
  readonly call: string;
  readonly said: string;
  readonly is: "safe" | "cautious" | "caught" | "unsafe" | "untrue";
  readonly seen: string | null;
  readonly right: string | null;
  readonly why: readonly string[];
};
export type MomentState = {
  readonly title: string;
  readonly went: Moment["went"];
  readonly clock: string;
  readonly call: string;
  readonly seen: string | null;
  readonly said: readonly SaidState[];
  readonly cost: string;
};
/** A rehearsal gone over, in words. */
export type LookBackState = {
  readonly job: string;
  readonly title: string;
  readonly seed: number;
  readonly way: string;
  readonly trouble: string;
  /** The job that it was made from; `null` where that is gone, or nobody knows it. */
  readonly from: string | null;
  readonly isGone: boolean;
  readonly score: readonly string[];
  readonly moments: readonly MomentState[];
};
