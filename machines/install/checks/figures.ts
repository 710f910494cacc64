import * as v from "valibot";
import { recordOf, strict } from "../../lookup/strict.ts";
import { type Bounds, COUNT_BOUNDS, isWithin, MEASURE_BOUNDS } from "../bounds.ts";
import { type CheckKind, DEFAULTS } from "./check-kind.ts";
import { isWhole } from "./count.ts";
import { type PullsFor, type PullsHeld, pullBounds, pullsHeld } from "./pulls-for.ts";
import type { FigureRow } from "./tile-input.ts";
import { UNITS, type Unit } from "./units.ts";
import { firstBeyond, numbersIn, type ValueForm } from "./value-form.ts";

/** Limits of one figure, both included; `null` is no limit on that side. */
export type FigureLimit = { readonly from: number | null; readonly to: number | null };
/** Several counts or measurements of one unit by name, in the order asked, in any order of answering and over several answers. */
export type FiguresCheck = {
  readonly kind: "figures";
  readonly unit: Unit | "count";
  /** In the order asked. A record keeps `want` in the order of the alphabet. */
  readonly names: readonly string[];
  readonly want: Readonly<Record<string, FigureLimit>>;
  /** Where the figures are pulls on stakes: what they are held against. */
  readonly pulls?: PullsFor;
};
export type FiguresValue = { readonly kind: "figures"; readonly unit: Unit | "count"; readonly n: Readonly<Record<string, number>> };
/** What is left to give, and what was given outside of its limits, in the order asked. */
export type FiguresFinding = {
  readonly kind: "figures";
  readonly unit: Unit | "count";
  readonly missing: readonly string[];
  readonly off: readonly { readonly name: string; readonly n: number; readonly limit: FigureLimit }[];
  /** Of pulls that are all made and too low. */
  readonly held?: PullsHeld;
};

const FIGURE_UNITS = [...UNITS, "count"] as const satisfies readonly FiguresValue["unit"][];
const boundsOf = (unit: FiguresValue["unit"]): Bounds => (unit === "count" ? COUNT_BOUNDS : MEASURE_BOUNDS[unit]);

const figuresValue: ValueForm<FiguresValue> = {
  kind: "figures",
  schema: (errors) =>
    v.pipe(
      strict(errors.notKnown, {
        kind: v.literal("figures"),
        unit: v.picklist(FIGURE_UNITS, errors.oneOf(FIGURE_UNITS)),
        n: recordOf(errors.notKnown, null, v.number(errors.notANumber)),
      }),
      v.rawCheck(({ dataset, addIssue }) => {
        if (!dataset.typed) return;
        const { n, unit } = dataset.value;
        const { from, to } = boundsOf(unit);
        for (const [name, figure] of Object.entries(n)) {
          const whole = unit !== "count" || Number.isSafeInteger(figure);
          if (whole && isWithin(figure, { from, to })) continue;
          const path: [v.ObjectPathItem, v.ObjectPathItem] = [
            { type: "object", origin: "value", input: dataset.value, key: "n", value: n },
            { type: "object", origin: "value", input: n, key: name, value: figure },
          ];
          addIssue({ message: whole ? errors.unbelievable(figure, unit, from, to) : errors.whole, path });
        }
      }),
    ),
  fromFields: (fields, number) => ({
    kind: "figures",
    unit: fields.unit,
    // Picked from the list and put in, or all in one form.
    n:
      fields.name === undefined
        ? numbersIn(fields, "n.", (name) => number(name, fields.unit as Unit | "count"))
        : { [fields.name]: number("value", fields.unit as Unit | "count") },
  }),
  unbelievable: ({ n, unit }) => firstBeyond(Object.values(n), unit, boundsOf(unit)),
};

export const figures: CheckKind<FiguresCheck, FiguresValue, FiguresFinding> = {
  ...DEFAULTS,
  kind: "figures",
  values: [figuresValue],
  accepts: ({ unit, want }, value) => {
    const given = Object.entries(value.n);
    const real = (n: number) => (unit === "count" ? isWhole(n) : Number.isFinite(n));
    return value.unit === unit && given.length > 0 && given.every(([name, n]) => Object.hasOwn(want, name) && real(n));
  },
  beyond: ({ pulls }, { n, unit }) => (pulls && unit !== "count" ? firstBeyond(Object.values(n), unit, pullBounds(pulls)) : null),
  meetsLimit: ({ names, want }, { n }) => names.every((name) => isMet(want[name]!, n[name])),
  parts: {
    of: ({ n }) => n,
    merge: (before, value) => ({ ...value, n: { ...before.n, ...value.n } }),
    isComplete: ({ names }, { n }) => names.every((name) => name in n),
    wanted: ({ names, want }) => Object.fromEntries(names.map((name) => [name, want[name]!.from ?? want[name]!.to ?? 0])),
  },
  finding: ({ unit, names, want, pulls }, { n }) => {
    const missing = names.filter((name) => n[name] === undefined);
    const off = names.flatMap((name) => {
      const [figure, limit] = [n[name], want[name]!];
      return figure === undefined || isMet(limit, figure) ? [] : [{ name, n: figure, limit }];
    });
    const held = pulls && missing.length === 0 && off.length > 0 ? { held: pullsHeld(Object.values(n), pulls) } : {};
    return { kind: "figures", unit, missing, off, ...held };
  },
  tile: ({ unit, names, want }, given) => ({
    input: "figures",
    fields: { kind: "figures", unit },
    unit,
    rows: names.map((name) => rowOf(name, want[name]!, given?.n[name] ?? null)),
  }),
  expects: ({ unit, names }) => ({ expects: "figures", unit, names }),
};

const rowOf = (name: string, limit: FigureLimit, given: number | null): FigureRow => ({
  name,
  given,
  good: given !== null && isMet(limit, given),
});
const isMet = ({ from, to }: FigureLimit, n: number | undefined): boolean => n !== undefined && n >= (from ?? n) && n <= (to ?? n);
