import { toGrid } from "./grid.ts";
import type { SpecProblem } from "./types.ts";

/** Collects what is wrong with a spec while it is read, so that a crew hears all of it at once. */
export type FieldReader = {
  readonly problems: SpecProblem[];
  /** Notes a problem and stands for a value that cannot be used. */
  readonly refuse: (field: string, code: SpecProblem["code"], value: unknown, nearest?: SpecProblem["nearest"]) => undefined;
  /** A finite number, kept to a millionth. `nearest` is offered where it is missing. */
  readonly number: (field: string, value: unknown, nearest?: number | null) => number | undefined;
  /** A finite number from `from` to `to`, both included. */
  readonly within: (field: string, code: SpecProblem["code"], value: unknown, range: Range) => number | undefined;
  readonly yesOrNo: (field: string, value: unknown, otherwise: boolean) => boolean | undefined;
};
export type Range = { readonly from: number; readonly to: number; readonly whole?: boolean; readonly fallback?: number | null };

export function startReading(): FieldReader {
  const problems: SpecProblem[] = [];
  const refuse: FieldReader["refuse"] = (field, code, value, nearest = null) => {
    problems.push({ field, code, value: shown(value), nearest });
    return undefined;
  };
  const number: FieldReader["number"] = (field, value, nearest = null) =>
    typeof value === "number" && Number.isFinite(value) ? toGrid(value) : refuse(field, "notANumber", value, nearest);
  const within: FieldReader["within"] = (field, code, value, { from, to, whole = false, fallback = null }) => {
    const n = number(field, value, fallback);
    if (n === undefined) return undefined;
    if (n >= from && n <= to && (!whole || Number.isInteger(n))) return n;
    const near = clamp(n, from, to);
    return refuse(field, code, n, whole ? Math.round(near) : near);
  };
  const yesOrNo: FieldReader["yesOrNo"] = (field, value, otherwise) => {
    if (value === undefined || value === null) return otherwise;
    return typeof value === "boolean" ? value : refuse(field, "notYesOrNo", value, String(otherwise));
  };
  return { problems, refuse, number, within, yesOrNo };
}

export const clamp = (n: number, from: number, to: number): number => Math.min(to, Math.max(from, n));

/** A list, or an empty one where there is none. */
export const listOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);

/** The fields of an object, or none. */
export const fieldsOf = (value: unknown): Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null ? (value as Record<string, unknown>) : {};

/** An offending value as it can be shown and stored: infinity and objects are no JSON. Empty where nothing was given. */
function shown(value: unknown): number | string {
  if (typeof value === "number") return Number.isFinite(value) ? value + 0 : String(value);
  if (typeof value === "string") return value.slice(0, 80);
  if (typeof value === "boolean") return String(value);
  return value === undefined || value === null ? "" : Array.isArray(value) ? "list" : typeof value;
}
