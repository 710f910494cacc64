import * as v from "valibot";
import { LENGTHS, type LengthName, lengthFt } from "../../site/lengths.ts";
import { MIN_LENGTHS, type Squared, squared, toleranceIn } from "../../site/squaring.ts";
import type { Corner, Point } from "../../tent/types.ts";
import { type CheckKind, DEFAULTS } from "./check-kind.ts";
import type { ReadingRow } from "./tile-input.ts";
import { finite, numbersIn, type ValueForm } from "./value-form.ts";

/**
 * Lengths in feet between the four corner marks, at least five of AB BC CD DA AC BD, said in any order and over several
 * answers. Judged together: the figure that fits them against the one that is wanted.
 */
export type LengthsCheck = {
  readonly kind: "lengths";
  readonly want: Readonly<Record<Corner, Point>>;
  readonly inPer50Ft: number;
};
export type LengthsValue = { readonly kind: "lengths"; readonly ft: Readonly<Record<string, number>> };
/** What the lengths come to: whether the corners stand square, or which mark to move. */
export type LengthsFinding = { readonly kind: "lengths"; readonly squared: Squared };

const lengthsValue: ValueForm<LengthsValue> = {
  kind: "lengths",
  schema: (errors) =>
    v.strictObject({
      kind: v.literal("lengths"),
      ft: v.record(v.string(), v.pipe(finite(errors), v.minValue(0.1, errors.notANumber))),
    }),
  fromFields: (fields, number) => ({
    kind: "lengths",
    // Picked from the list and typed, or all in one form.
    ft: fields.length === undefined ? numbersIn(fields, "ft.", (name) => number(name, "ft")) : { [fields.length]: number("value", "ft") },
  }),
};

export const lengths: CheckKind<LengthsCheck, LengthsValue, LengthsFinding> = {
  ...DEFAULTS,
  kind: "lengths",
  values: [lengthsValue],
  accepts: (_, { ft }) => {
    const read = Object.entries(ft);
    return read.length > 0 && read.every(([name, n]) => (LENGTHS as readonly string[]).includes(name) && Number.isFinite(n) && n > 0);
  },
  meetsLimit: (check, { ft }) => squared(ft, check).is === "square",
  parts: {
    of: ({ ft }) => ft,
    merge: (before, value) => ({ ...value, ft: { ...before.ft, ...value.ft } }),
    isComplete: (_, { ft }) => Object.keys(ft).length >= MIN_LENGTHS,
    wanted: wantedFt,
  },
  finding: (check, { ft }) => ({ kind: "lengths", squared: squared(ft, check) }),
  tile: (check, given) => ({
    input: "readings",
    fields: { kind: "lengths" },
    rows: LENGTHS.map((name) => rowOf(name, check, given?.ft[name] ?? null)),
    next: nextOf(check, given?.ft ?? {}),
  }),
  expects: (check) => ({ expects: "lengths", wantFt: wantedFt(check) }),
};

function wantedFt({ want }: LengthsCheck): Readonly<Record<string, number>> {
  return Object.fromEntries(LENGTHS.map((name) => [name, lengthFt(want, name)]));
}

function rowOf(name: LengthName, { want, inPer50Ft }: LengthsCheck, readFt: number | null): ReadingRow {
  const wantFt = lengthFt(want, name);
  const withinIn = toleranceIn(wantFt, inPer50Ft);
  const offIn = readFt === null ? 0 : (readFt - wantFt) * 12;
  return { name, wantFt, withinIn, readFt, offIn, good: readFt !== null && Math.abs(offIn) <= withinIn + 1e-9 };
}

/** The first that was not read; once all were, the one that may have been misread. */
function nextOf(check: LengthsCheck, ft: LengthsValue["ft"]): LengthName {
  const found = squared(ft, check);
  const suspect = "suspect" in found ? found.suspect?.name : undefined;
  return LENGTHS.find((name) => ft[name] === undefined) ?? suspect ?? "AB";
}
