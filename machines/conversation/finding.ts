import type { Check, Value } from "../install/gates.ts";
import type { JobState } from "../install/state.ts";
import { wantedCounts } from "../install/status.ts";
import { type Squared, squared } from "../site/squaring.ts";

/** So many of one kind of thing, where others are wanted. */
export type Discrepant = { readonly item: string; readonly by: number; readonly wanted: number };

/** What an answer comes to, where that is more than its value. More than was wanted is no fault of a load. */
export type Finding =
  | { readonly of: "lengths"; readonly squared: Squared }
  | {
      readonly of: "counts";
      readonly missing: readonly string[];
      /** In the order of the list: `by` is under zero where it is short. */
      readonly off: readonly Discrepant[];
    };

/** What an answer at a gate comes to; `null` where it is no more than its value. */
export function findingOf(check: Check, value: Value, state: Pick<JobState, "answers">): Finding | null {
  if (check.kind === "square" && value.kind === "lengths") return { of: "lengths", squared: squared(value.ft, check) };
  if (check.kind !== "counts" || value.kind !== "counts") return null;
  const items = Object.entries(wantedCounts(check, state));
  const moreIsGood = check.as === null;
  return {
    of: "counts",
    missing: items.flatMap(([item]) => (value.n[item] === undefined ? [item] : [])),
    off: items.flatMap(([item, wanted]) => {
      const by = (value.n[item] ?? wanted) - wanted;
      return by === 0 || (moreIsGood && by > 0) ? [] : [{ item, by, wanted }];
    }),
  };
}
