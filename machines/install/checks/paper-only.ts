import { type CheckKind, DEFAULTS } from "./check-kind.ts";

/** No figure exists to judge by: only the paper that the gate names opens it. */
export type PaperOnlyCheck = { readonly kind: "paperOnly" };

export const paperOnly: CheckKind<PaperOnlyCheck> = {
  ...DEFAULTS,
  kind: "paperOnly",
  values: [],
  meetsLimit: () => false,
  tile: () => ({ input: "none" }),
  expects: () => ({ expects: "nothing" }),
};
