import type { StakeName } from "./stand.ts";

/**
 * What can be done about a stake in a zone. To dig there by hand and drive it is none: a stake in dug ground holds nothing.
 * Each is a question to the sheet or the engineer, and opens no gate.
 */
export type StakeFix =
  /** All plates of a station slide along its edge, clockwise, under 0 the other way; no gap gets wider than the sheet's spacing. */
  | { readonly is: "slide"; readonly station: string; readonly byFt: number; readonly stakes: readonly StakeName[] }
  /** An anchor that an engineer names in place of this stake, after the lines were exposed by hand. */
  | { readonly is: "engineeredAnchor"; readonly stake: StakeName; readonly expose: readonly string[] };
