import { toGrid } from "../tent/grid.ts";
import type { FigureSource } from "./source.ts";

export type AmountUnit =
  | "ft" | "in" | "sqFt" | "deg" | "mph" | "mphPerMin" | "psf" | "lbf" | "lb" | "number" | "percent" | "degF" | "s" | "min" | "mi" | "qtPerHour"; // biome-ignore format: one line reads best

/** A number with its unit, rounded to a millionth. */
export type Amount = { readonly n: number; readonly unit: AmountUnit };

/** What goes into a line: an amount, or one of a few named kinds such as an exposure. */
export type LineInput<N extends string> = { readonly name: N; readonly is: Amount | string; readonly source: FigureSource };

/**
 * One line of a calculation, as data: which formula, what went into it, what came out, whose formula it is, and what it leaves out. Words
 * and layout are the page's.
 */
export type Line<F extends string, N extends string, O extends string> = {
  readonly formula: F;
  readonly inputs: readonly LineInput<N>[];
  readonly result: Amount;
  readonly source: FigureSource;
  readonly leftOut: readonly O[];
};

/** @example amount(0.1 + 0.2, "ft") // { n: 0.3, unit: "ft" } */
export const amount = (n: number, unit: AmountUnit): Amount => ({ n: toGrid(n), unit });
