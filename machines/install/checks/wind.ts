import { type CheckKind, DEFAULTS } from "./check-kind.ts";

/** The latest wind reading is fresh and its gust below `belowMph`; never answered by hand. */
export type WindCheck = { readonly kind: "wind"; readonly belowMph: number };

export const wind: CheckKind<WindCheck> = {
  ...DEFAULTS,
  kind: "wind",
  answeredBy: "windReading",
  values: [],
  meetsLimit: () => false,
  tile: () => ({ input: "wind" }),
  expects: () => ({ expects: "wind" }),
};
