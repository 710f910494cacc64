import * as v from "valibot";
import { strict } from "../../lookup/strict.ts";
import { isWithin, MEASURE_BOUNDS } from "../bounds.ts";
import { type CheckKind, DEFAULTS } from "./check-kind.ts";
import { METERS_PER_FOOT, METERS_PER_INCH, UNITS, type Unit } from "./units.ts";
import { firstBeyond, type ValueForm } from "./value-form.ts";

/** A measurement within limits, both included; `null` is no limit on that side. Where it is good that there is none, "none" passes. */
export type MeasureCheck = {
  readonly kind: "measure";
  readonly unit: Unit;
  readonly from: number | null;
  readonly to: number | null;
  readonly noneIsGood: boolean;
};
export type MeasureValue = { readonly kind: "measure"; readonly n: number; readonly unit: Unit };
export type NoneValue = { readonly kind: "none" };
/** A measurement as it comes from outside, in metric too. */
export type GivenMeasure = { readonly kind: "measure"; readonly n: number; readonly unit: Unit | "mm" | "m" };

const GIVEN_UNITS = [...UNITS, "mm", "m"] as const satisfies readonly GivenMeasure["unit"][];

const measureValue: ValueForm<MeasureValue> = {
  kind: "measure",
  schema: (errors) =>
    v.pipe(
      strict(errors.notKnown, {
        kind: v.literal("measure"),
        n: v.number(errors.notANumber),
        unit: v.picklist(GIVEN_UNITS, errors.oneOf(GIVEN_UNITS)),
      }),
      v.rawCheck(({ dataset, addIssue }) => {
        if (!dataset.typed) return;
        const { n, unit } = dataset.value;
        const { from, to } = MEASURE_BOUNDS[unit];
        const path: [v.ObjectPathItem] = [{ type: "object", origin: "value", input: dataset.value, key: "n", value: n }];
        if (!isWithin(n, { from, to })) addIssue({ message: errors.unbelievable(n, unit, from, to), path });
      }),
    ),
  fromFields: ({ unit }, number) => ({ kind: "measure", n: number("value", unit as Unit), unit }),
  unbelievable: ({ n, unit }) => firstBeyond([n], unit, MEASURE_BOUNDS[unit]),
};

const noneValue: ValueForm<NoneValue> = {
  kind: "none",
  schema: ({ notKnown }) => strict(notKnown, { kind: v.literal("none") }),
  fromFields: () => ({ kind: "none" }),
  unbelievable: () => null,
};

export const measure: CheckKind<MeasureCheck, MeasureValue | NoneValue> = {
  ...DEFAULTS,
  kind: "measure",
  values: [measureValue, noneValue],
  accepts: ({ unit, noneIsGood }, value) => (value.kind === "none" ? noneIsGood : value.unit === unit && Number.isFinite(value.n)),
  meetsLimit: ({ from, to, noneIsGood }, value) =>
    value.kind === "none" ? noneIsGood : value.n >= (from ?? value.n) && value.n <= (to ?? value.n),
  tile: ({ unit, noneIsGood }) => ({
    input: "number",
    fields: { kind: "measure", unit },
    keypad: unit,
    choices: noneIsGood ? [{ fields: { kind: "none" }, value: { kind: "none" } }] : [],
  }),
  expects: ({ unit }) => ({ expects: "measure", unit }),
};

/**
 * A measurement in the unit that a gate is asked in, kept to a millionth; with `wants` null, which is no gate's, in inches
 * or feet where it came in metric. `null` where its unit is of another kind than the one that is wanted.
 *
 * @example inUnitOf({ kind: "measure", n: 140, unit: "mm" }, "in") // { kind: "measure", n: 5.511811, unit: "in" }
 */
export function inUnitOf(given: GivenMeasure, wants: Unit | null): MeasureValue | null {
  const { n, unit } = asImperial(given);
  if (wants === null || wants === unit) return measured(n, unit);
  if (unit === "ft" && wants === "in") return measured(n * 12, wants);
  return unit === "in" && wants === "ft" ? measured(n / 12, wants) : null;
}

const measured = (n: number, unit: Unit): MeasureValue => ({ kind: "measure", n: Math.round(n * 1e6) / 1e6 + 0, unit });

function asImperial({ n, unit }: GivenMeasure): { readonly n: number; readonly unit: Unit } {
  if (unit === "mm") return { n: n / (METERS_PER_INCH * 1000), unit: "in" };
  return unit === "m" ? { n: n / METERS_PER_FOOT, unit: "ft" } : { n, unit };
}
