import * as v from "valibot";
import { paperValue, unknownValue } from "./common-values.ts";
import type { GivenMeasure } from "./measure.ts";
import { CHECKS, type Value } from "./registry.ts";
import type { FieldNumber, Fields, Unbelievable, ValueErrors, ValueForm } from "./value-form.ts";

/** A value as it comes from outside: a measurement may be in metric still. */
export type GivenValue = Exclude<Value, { kind: "measure" }> | GivenMeasure;

type AnyForm = Pick<ValueForm<Value>, "kind" | "schema" | "fromFields" | "unbelievable">;
/** Every kind of value, under its name. Several kinds of check may take the same. */
const FORMS: ReadonlyMap<string, AnyForm> = new Map(
  [...Object.values(CHECKS).flatMap(({ values }): readonly AnyForm[] => values), unknownValue, paperValue].map((form) => [form.kind, form]),
);

/** The JSON of an answer's value. `errors` are the sentences for what is wrong with it. */
export function valueSchema(errors: ValueErrors): v.GenericSchema<unknown, GivenValue> {
  const schemas = new Map([...FORMS].map(([kind, form]) => [kind, form.schema(errors)]));
  const names = [...schemas.keys()];
  const noKind = v.object({ kind: v.picklist(names, errors.oneOf(names)) });
  return v.lazy((input) => schemas.get(String((input as { kind?: unknown } | null)?.kind)) ?? noKind) as v.GenericSchema<
    unknown,
    GivenValue
  >;
}

/** The value that a form's fields stand for, as JSON that is still to be checked. Throws what `number` throws. */
export function valueFromFields(fields: Fields, number: FieldNumber): unknown {
  return FORMS.get(fields.kind ?? "")?.fromFields(fields, number) ?? { kind: fields.kind };
}

/** The first number of an answer that nobody can mean; `null` where all can be believed. */
export const unbelievable = (value: Value): Unbelievable | null => FORMS.get(value.kind)?.unbelievable(value) ?? null;
