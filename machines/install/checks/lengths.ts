import * as v from "valibot";
import { recordOf, strict } from "../../lookup/strict.ts";
import { LENGTHS, type LengthName, lengthFt, type Taping } from "../../site/lengths.ts";
import { type Squared, squared, toleranceIn } from "../../site/squaring.ts";
import type { Corner, Point } from "../../tent/types.ts";
import { LENGTH_BOUNDS } from "../bounds.ts";
import { type CheckKind, DEFAULTS } from "./check-kind.ts";
import type { ReadingRow } from "./tile-input.ts";
import { believable, firstBeyond, numbersIn, type ValueForm } from "./value-form.ts";

/**
 * Lengths in feet between the four corner marks, at least five of AB BC CD DA AC BD, said in any order and over several
 * answers. Judged together: the figure that fits them against the one that is wanted.
 */
export type LengthsCheck = {
  readonly kind: "lengths";
  readonly want: Readonly<Record<Corner, Point>>;
  readonly inPer50Ft: number;
  readonly taping: Taping;
};
export type LengthsValue = { readonly kind: "lengths"; readonly ft: Readonly<Record<string, number>> };
/** What the lengths come to: whether the corners stand square, or which mark to move. */
export type LengthsFinding = { readonly kind: "lengths"; readonly squared: Squared };

const lengthsValue: ValueForm<LengthsValue> = {
  kind: "lengths",
  schema: (errors) =>
    strict(errors.notKnown, {
      kind: v.literal("lengths"),
      ft: recordOf(errors.notKnown, null, believable("ft", LENGTH_BOUNDS, errors)),
    }),
  fromFields: (fields, number) => ({
    kind: "lengths",
    // Picked from the list and typed, or all in one form.
    ft: fields.length === undefined ? numbersIn(fields, "ft.", (name) => number(name, "ft")) : { [fields.length]: number("value", "ft") },
  }),
  unbelievable: ({ ft }) => firstBeyond(Object.values(ft), "ft", LENGTH_BOUNDS),
};

export const lengths: CheckKind<LengthsCheck, LengthsValue, LengthsFinding> = {
  ...DEFAULTS,
  kind: "lengths",
  values: [lengthsValue],
  accepts: (_, { ft }) => {
    const read = Object.entries(ft);
    return read.length > 0 && read.every(([name, n]) => (LENGTHS as readonly string[]).includes(name) && Number.isFinite(n) && n > 0);
  },
  meetsLimit: (check, { ft }) => fitted(check, ft).is === "square",
  parts: {
    of: ({ ft }) => ft,
    merge: (before, value) => ({ ...value, ft: { ...before.ft, ...value.ft } }),
    isComplete: ({ taping }, { ft }) => Object.keys(ft).length >= taping.minLengths,
    wanted: wantedFt,
  },
  // Five fix the corners and cannot show a misread: the sixth is waited for, and "next" goes on without it.
  isSettled: (_, { ft }) => Object.keys(ft).length === LENGTHS.length,
  finding: (check, { ft }) => ({ kind: "lengths", squared: fitted(check, ft) }),
  tile: (check, given) => ({
    input: "readings",
    fields: { kind: "lengths" },
    rows: LENGTHS.map((name) => rowOf(name, check, given?.ft[name] ?? null)),
    next: nextOf(check, given?.ft ?? {}),
  }),
  expects: (check) => ({ expects: "lengths", wantFt: wantedFt(check) }),
};

const fits = new WeakMap<LengthsCheck, WeakMap<LengthsValue["ft"], Squared>>();
/** The figure that fits the lengths. The same ones are looked at whenever it is asked what is missing, and a fit takes a while. */
function fitted(check: LengthsCheck, ft: LengthsValue["ft"]): Squared {
  const ofCheck = fits.get(check) ?? new WeakMap<LengthsValue["ft"], Squared>();
  fits.set(check, ofCheck);
  const fit = ofCheck.get(ft) ?? squared(ft, check);
  ofCheck.set(ft, fit);
  return fit;
}

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
  const found = fitted(check, ft);
  const suspect = "suspects" in found ? found.suspects[0]?.name : undefined;
  return LENGTHS.find((name) => ft[name] === undefined) ?? suspect ?? "AB";
}
