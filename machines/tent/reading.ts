import { toGrid } from "./grid.ts";
import type { SpecProblem } from "./types.ts";

/** Collects every problem while a spec is read, so that the crew sees them all at once. */
export type FieldReader = {
  readonly problems: SpecProblem[];
  /** Records a problem and returns undefined in place of the unusable value. */
  readonly refuse: (field: string, code: SpecProblem["code"], value: unknown, nearest?: SpecProblem["nearest"]) => undefined;
  /** A finite number, rounded to a millionth. If it is missing, `nearest` is suggested. */
  readonly finiteNumber: (field: string, value: unknown, nearest?: number | null) => number | undefined;
  /** A finite number from `from` to `to`, inclusive. */
  readonly withinRange: (field: string, code: SpecProblem["code"], value: unknown, range: Range) => number | undefined;
  /** A boolean, or `fallback` if it is missing. */
  readonly yesOrNo: (field: string, value: unknown, fallback: boolean) => boolean | undefined;
};
export type Range = { readonly from: number; readonly to: number; readonly whole?: boolean; readonly fallback?: number | null };

/** A reader with an empty list of problems. */
export function createFieldReader(): FieldReader {
  const problems: SpecProblem[] = [];
  const refuse: FieldReader["refuse"] = (field, code, value, nearest = null) => {
    problems.push({ field, code, value: printable(value), nearest });
    return undefined;
  };
  const finiteNumber: FieldReader["finiteNumber"] = (field, value, nearest = null) =>
    typeof value === "number" && Number.isFinite(value) ? toGrid(value) : refuse(field, "notANumber", value, nearest);
  const withinRange: FieldReader["withinRange"] = (field, code, value, { from, to, whole = false, fallback = null }) => {
    const n = finiteNumber(field, value, fallback);
    if (n === undefined) return undefined;
    if (n >= from && n <= to && (!whole || Number.isInteger(n))) return n;
    const near = clamp(n, from, to);
    return refuse(field, code, n, whole ? Math.round(near) : near);
  };
  const yesOrNo: FieldReader["yesOrNo"] = (field, value, fallback) => {
    if (value === undefined || value === null) return fallback;
    return typeof value === "boolean" ? value : refuse(field, "notYesOrNo", value, String(fallback));
  };
  return { problems, refuse, finiteNumber, withinRange, yesOrNo };
}

/** @example clamp(25, 1, 20) // 20 */
export const clamp = (n: number, from: number, to: number): number => Math.min(to, Math.max(from, n));

/**
 * The value if it is an array, otherwise an empty array.
 *
 * @example listOf("C1") // []
 */
export const listOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);

/**
 * The value if it is an object, otherwise an object without fields.
 *
 * @example fieldsOf(null) // {}
 */
export const fieldsOf = (value: unknown): Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null ? (value as Record<string, unknown>) : {};

/** A rejected value in a form that can be shown and stored; JSON has no infinity. Empty if there was no value. */
function printable(value: unknown): number | string {
  if (typeof value === "number") return Number.isFinite(value) ? value + 0 : String(value);
  if (typeof value === "string") return value.slice(0, 80);
  if (typeof value === "boolean") return String(value);
  return value === undefined || value === null ? "" : Array.isArray(value) ? "list" : typeof value;
}
