import * as v from "valibot";
import { recordOf, strict } from "../../lookup/strict.ts";
import { COUNT_BOUNDS } from "../bounds.ts";
import type { GateId } from "../ids.ts";
import { type CheckKind, DEFAULTS } from "./check-kind.ts";
import { isWhole } from "./count.ts";
import { counted, firstBeyond, numbersIn, type ValueForm } from "./value-form.ts";

/**
 * Counts of several things by name, in any order and over several answers. At least so many of each; or, where `as`
 * names a gate, exactly as many as were counted there.
 */
export type CountsCheck = {
  readonly kind: "counts";
  readonly want: Readonly<Record<string, number>>;
  readonly as: GateId | null;
};
export type CountsValue = { readonly kind: "counts"; readonly n: Readonly<Record<string, number>> };
/** What is left to count, and what was counted that is too few, or more than came along. In the order of the list. */
export type CountsFinding = {
  readonly kind: "counts";
  readonly missing: readonly string[];
  readonly off: readonly { readonly item: string; readonly n: number; readonly wanted: number }[];
};

const countsValue: ValueForm<CountsValue> = {
  kind: "counts",
  schema: (errors) => strict(errors.notKnown, { kind: v.literal("counts"), n: recordOf(errors.notKnown, null, counted(errors)) }),
  fromFields: (fields, number) => ({ kind: "counts", n: numbersIn(fields, "n.", (name) => number(name, "count")) }),
  unbelievable: ({ n }) => firstBeyond(Object.values(n), "count", COUNT_BOUNDS),
};

export const counts: CheckKind<CountsCheck, CountsValue, CountsFinding> = {
  ...DEFAULTS,
  kind: "counts",
  values: [countsValue],
  accepts: (check, { n }, before) => {
    const known = wantedOf(check, before);
    const read = Object.entries(n);
    return read.length > 0 && read.every(([item, many]) => Object.hasOwn(known, item) && isWhole(many));
  },
  meetsLimit: (check, { n }, before) =>
    Object.entries(wantedOf(check, before)).every(([item, want]) => {
      const many = n[item];
      return many !== undefined && (check.as === null ? many >= want : many === want);
    }),
  parts: {
    of: ({ n }) => n,
    merge: (before, value) => ({ ...value, n: { ...before.n, ...value.n } }),
    isComplete: (check, { n }, before) => Object.keys(wantedOf(check, before)).every((item) => item in n),
    wanted: wantedOf,
  },
  comparesWith: ({ as }) => as,
  // What was counted stays counted: it is judged against the new list.
  question: (check) => ({ ...check, want: null }),
  finding,
  tile: () => ({ input: "link", to: "truck" }),
  expects: ({ want }) => ({ expects: "counts", items: Object.keys(want) }),
};

/** What is wanted of each thing: as many as were counted before, where a gate looks back at another. */
function wantedOf({ want }: CountsCheck, before: CountsValue | undefined): Readonly<Record<string, number>> {
  return before === undefined ? want : { ...want, ...before.n };
}

/** More than was wanted is no fault of a load. */
function finding(check: CountsCheck, { n }: CountsValue, before: CountsValue | undefined): CountsFinding {
  const wanted = Object.entries(wantedOf(check, before)).map(([item, want]) => ({ item, wanted: want, n: n[item] }));
  return {
    kind: "counts",
    missing: wanted.flatMap((line) => (line.n === undefined ? [line.item] : [])),
    off: wanted.flatMap(({ item, wanted: want, n: many }) =>
      many === undefined || many === want || (check.as === null && many > want) ? [] : [{ item, n: many, wanted: want }],
    ),
  };
}
