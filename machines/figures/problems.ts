import { type Bounds, isWithin } from "./bounds.ts";
import type { AmountUnit } from "./line.ts";

/** What is wrong with a figure that came in, with the limit that it had to keep. `is`: what came, as text, shortened. */
export type FigureProblem =
  | { readonly field: string; readonly code: "missing" }
  | { readonly field: string; readonly code: "notANumber"; readonly is: string }
  | { readonly field: string; readonly code: "outOfRange"; readonly is: number; readonly limit: Bounds; readonly unit: AmountUnit }
  | { readonly field: string; readonly code: "notOneOf"; readonly is: string; readonly choices: readonly string[] }
  | { readonly field: string; readonly code: "tooMany"; readonly is: number; readonly limit: number };

/** A number that must be within bounds, in the unit that they are meant in. */
export type Asked = { readonly field: string; readonly bounds: Bounds; readonly unit: AmountUnit; readonly whole?: true };

/** Collects every problem of what came in, so that all are told at once. */
export class FigureProblems {
  readonly found: FigureProblem[] = [];

  /** Complains unless it is a number within the bounds. */
  number(value: unknown, { field, bounds, unit, whole }: Asked): void {
    if (value === null || value === undefined) this.found.push({ field, code: "missing" });
    else if (typeof value !== "number" || !Number.isFinite(value) || (whole && !Number.isInteger(value)))
      this.found.push({ field, code: "notANumber", is: String(value).slice(0, 80) });
    else if (!isWithin(value, bounds)) this.found.push({ field, code: "outOfRange", is: value, limit: bounds, unit });
  }

  /** The same, where null says that it is not known. */
  numberOrUnknown(value: unknown, asked: Asked): void {
    if (value !== null) this.number(value, asked);
  }

  /** Complains unless it is one of these. */
  choice(value: unknown, field: string, choices: readonly (string | boolean)[]): void {
    if (value === null || value === undefined) this.found.push({ field, code: "missing" });
    else if (!choices.some((choice) => choice === value))
      this.found.push({ field, code: "notOneOf", is: String(value).slice(0, 80), choices: choices.map(String) });
  }

  /** The same, where null says that it is not known. */
  choiceOrUnknown(value: unknown, field: string, choices: readonly (string | boolean)[]): void {
    if (value !== null) this.choice(value, field, choices);
  }

  /** Complains about more of something than anybody has. */
  atMost(count: number, field: string, limit: number): void {
    if (count > limit) this.found.push({ field, code: "tooMany", is: count, limit });
  }
}
