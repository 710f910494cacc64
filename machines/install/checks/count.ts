import * as v from "valibot";
import { strict } from "../../lookup/strict.ts";
import { COUNT_BOUNDS } from "../bounds.ts";
import { type CheckKind, DEFAULTS } from "./check-kind.ts";
import { counted, firstBeyond, type ValueForm } from "./value-form.ts";

/** How many, from so many up to so many; with `to` null, or more. */
export type CountCheck = { readonly kind: "count"; readonly from: number; readonly to: number | null };
export type CountValue = { readonly kind: "count"; readonly n: number };

export const countValue: ValueForm<CountValue> = {
  kind: "count",
  schema: (errors) => strict(errors.notKnown, { kind: v.literal("count"), n: counted(errors) }),
  fromFields: (_, number) => ({ kind: "count", n: number("value", "count") }),
  unbelievable: ({ n }) => firstBeyond([n], "count", COUNT_BOUNDS),
};

/** Whether so many things can have been counted. */
export const isWhole = (n: number): boolean => Number.isSafeInteger(n) && n >= 0;

export const count: CheckKind<CountCheck, CountValue> = {
  ...DEFAULTS,
  kind: "count",
  values: [countValue],
  accepts: (_, { n }) => isWhole(n),
  meetsLimit: ({ from, to }, { n }) => n >= from && n <= (to ?? n),
  tile: () => ({ input: "number", fields: { kind: "count" }, keypad: "count", choices: [] }),
  expects: () => ({ expects: "count" }),
};
