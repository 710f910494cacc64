import type { FactName } from "../facts.ts";
import { type CheckKind, DEFAULTS } from "./check-kind.ts";

/** Something that this call needs and nobody knows yet: no answer and no paper opens it, only a change of the plan that says it. */
export type NotKnownCheck = { readonly kind: "notKnown"; readonly facts: readonly FactName[] };

export const notKnown: CheckKind<NotKnownCheck> = {
  ...DEFAULTS,
  kind: "notKnown",
  answeredBy: "amendment",
  values: [],
  accepts: () => false,
  meetsLimit: () => false,
  tile: ({ facts }) => ({ input: "facts", facts }),
  expects: () => ({ expects: "nothing" }),
};
