import type { GateId } from "../ids.ts";
import { type CheckKind, DEFAULTS } from "./check-kind.ts";
import { type CountValue, countValue, isWhole } from "./count.ts";

/** A count that must equal another gate's: those who went under, coming out again. */
export type SameCountCheck = { readonly kind: "sameCount"; readonly as: GateId };

export const sameCount: CheckKind<SameCountCheck, CountValue> = {
  ...DEFAULTS,
  kind: "sameCount",
  values: [countValue],
  accepts: (_, { n }) => isWhole(n),
  meetsLimit: (_, { n }, compared) => n === compared?.n,
  comparesWith: ({ as }) => as,
  tile: () => ({ input: "number", fields: { kind: "count" }, keypad: "count", choices: [] }),
  expects: () => ({ expects: "count" }),
};
