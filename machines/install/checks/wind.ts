import type { GateId } from "../ids.ts";
import { type CheckKind, DEFAULTS } from "./check-kind.ts";

/** The latest wind reading is fresh and its gust below `belowMph`, and below what was agreed at another gate; never answered by hand. */
export type WindCheck = { readonly kind: "wind"; readonly belowMph: number; readonly agreed?: GateId };

export const wind: CheckKind<WindCheck> = {
  ...DEFAULTS,
  kind: "wind",
  answeredBy: "windReading",
  values: [],
  meetsLimit: () => false,
  tile: () => ({ input: "wind" }),
  expects: () => ({ expects: "wind" }),
};
