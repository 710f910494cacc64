import type { Unit } from "./units.ts";

/** What a gate waits to be told. A language has one parser for each of these, and none for a kind of check. */
export type Expected =
  | { readonly expects: "yesNo" }
  | { readonly expects: "count" }
  | { readonly expects: "measure"; readonly unit: Unit }
  /** Lengths in feet by name. What is wanted of each tells which of two readings of a number is meant. */
  | { readonly expects: "lengths"; readonly wantFt: Readonly<Record<string, number>> }
  /** Counts of several things by name. */
  | { readonly expects: "counts"; readonly items: readonly string[] }
  /** Several numbers of one unit, by name or in this order. */
  | { readonly expects: "figures"; readonly unit: Unit | "count"; readonly names: readonly string[] }
  /** A yes or no to each of these. */
  | { readonly expects: "each"; readonly names: readonly string[] }
  | { readonly expects: "document"; readonly expected: string | null }
  | { readonly expects: "wind" }
  /** Nothing that is said answers it. */
  | { readonly expects: "nothing" };
