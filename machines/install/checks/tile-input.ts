import type { LengthName } from "../../site/lengths.ts";
import type { FactName } from "../facts.ts";
import type { Unit } from "./units.ts";
import type { Fields } from "./value-form.ts";

/** A button that answers by itself: the fields that it sends, and the value whose words stand on it. */
export type Choice<V> = { readonly fields: Fields; readonly value: V };

/** A length between two marks: what is wanted of it and allowed, what was read, and by how much that is off. */
export type ReadingRow = {
  readonly name: LengthName;
  readonly wantFt: number;
  readonly withinIn: number;
  readonly readFt: number | null;
  readonly offIn: number;
  readonly good: boolean;
};

/** One of several figures by its name, what was given, and whether that is within its limits. */
export type FigureRow = { readonly name: string; readonly given: number | null; readonly good: boolean };

/** What a gate's tile has to answer with. A kind of check picks one; a screen draws each of them once. */
export type TileInput<V> =
  | { readonly input: "choices"; readonly choices: readonly Choice<V>[] }
  /** A number with our own keypad; `choices` stand beside it. */
  | {
      readonly input: "number";
      readonly fields: Fields;
      readonly keypad: Unit | "count";
      readonly choices: readonly Choice<V>[];
    }
  /** Lengths by name, one put in at a time. `next` is the one to put in now. */
  | { readonly input: "readings"; readonly fields: Fields; readonly rows: readonly ReadingRow[]; readonly next: LengthName }
  /** Several numbers, each under its name, one put in at a time. */
  | {
      readonly input: "figures";
      readonly fields: Fields;
      readonly unit: Unit | "count";
      readonly rows: readonly FigureRow[];
    }
  /** A yes or no to each name on a list. */
  | { readonly input: "each"; readonly fields: Fields; readonly rows: readonly { readonly name: string; readonly yes: boolean | null }[] }
  | { readonly input: "document"; readonly fields: Fields; readonly expected: string | null }
  /** Answered on a page of its own. */
  | { readonly input: "link"; readonly to: "truck" }
  /** Said on a page of its own, as a change of the plan. */
  | { readonly input: "facts"; readonly facts: readonly FactName[] }
  /** Worked out from what was entered of the site: put right on the pages of the site. */
  | { readonly input: "site" }
  | { readonly input: "wind" }
  | { readonly input: "none" };
