import type { Hash } from "../../../machines/digest/digest.ts";

/** What is checked of a record, in the order in which it is told. */
export const CHECK_NAMES = ["hash", "chain", "replay", "names", "photos", "house", "houseJob"] as const;
export type CheckName = (typeof CHECK_NAMES)[number];
/** How it came out: `none`, there is nothing to check; `unchecked`, what comes before it does not hold. */
export type CheckIs = "holds" | "broken" | "none" | "unchecked";
export type Check = { readonly name: CheckName; readonly is: CheckIs; readonly told: readonly string[] };

/** The last entry of a record that holds, for its digest; what of the house stream stands beside it. */
export type Digests = {
  readonly record: { readonly no: number; readonly hash: Hash };
  /** `null` where it has no entry yet. */
  readonly house: { readonly day: string; readonly hash: Hash } | null;
};

/** What proves a record and what does not, in words. */
export type ProofState = {
  readonly job: string;
  readonly title: string;
  readonly rehearsal: boolean;
  readonly holds: boolean;
  readonly entries: number;
  /** Why what lies in the file vouches for nothing now; `null` where it does. */
  readonly problem: string | null;
  readonly checks: readonly Check[];
  readonly cannot: readonly string[];
  readonly digests: Digests;
};
