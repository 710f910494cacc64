import { type CheckKind, DEFAULTS } from "./check-kind.ts";

/** No thunder or lightning for long enough; time alone answers it. */
export type QuietCheck = { readonly kind: "quiet" };

export const quiet: CheckKind<QuietCheck> = {
  ...DEFAULTS,
  kind: "quiet",
  answeredBy: "time",
  values: [],
  meetsLimit: () => false,
  tile: () => ({ input: "none" }),
  expects: () => ({ expects: "nothing" }),
};
