import * as v from "valibot";
import type { Message, NotKnown } from "../../lookup/strict.ts";
import { type Bounds, COUNT_BOUNDS, isWithin } from "../bounds.ts";
import type { AnyUnit, Unit } from "./units.ts";

/** Fields of a posted form. */
export type Fields = Readonly<Record<string, string>>;

/** Reads the number in a field as a crew writes it ("5 1/2", "89' 5""), in the unit that is wanted. Throws where it is none. */
export type FieldNumber = (field: string, wants: Unit | "count") => number;

/** What is said of a value that is wrong, in the reader's language. */
export type ValueErrors = {
  readonly notANumber: Message;
  readonly whole: Message;
  readonly yesOrNo: Message;
  readonly empty: Message;
  readonly tooLong: (max: number) => Message;
  readonly oneOf: (names: readonly string[]) => Message;
  readonly notAName: Message;
  readonly notAPaperNumber: Message;
  readonly notADay: Message;
  readonly notKnown: NotKnown;
  readonly unbelievable: (n: number, unit: AnyUnit, min: number, max: number) => Message;
};

/** A number that nobody can mean, with its unit and what is believed. */
export type Unbelievable = { readonly n: number; readonly unit: Unit | "count"; readonly bounds: Bounds };

/** How one kind of value comes in from outside: as JSON, and as the fields of a form. */
export type ValueForm<V extends { readonly kind: string }> = {
  readonly kind: V["kind"];
  readonly schema: (errors: ValueErrors) => v.GenericSchema;
  /** The JSON that says the same as a form; what is wrong with it is for the schema to say. */
  readonly fromFields: (fields: Fields, number: FieldNumber) => unknown;
  /** The first number in it that nobody can mean; `null` if every number is plausible, or it has none. */
  unbelievable(value: V): Unbelievable | null;
};

/** A number that can be believed, in its unit. */
export const believable = (unit: AnyUnit, { from, to }: Bounds, errors: ValueErrors) =>
  v.pipe(
    v.number(errors.notANumber),
    v.check(
      (n) => isWithin(n, { from, to }),
      (issue) => textOf(errors.unbelievable(issue.input, unit, from, to), issue),
    ),
  );
const textOf = (message: Message, issue: v.BaseIssue<unknown>): string => (typeof message === "string" ? message : message(issue));
/** A count of things: whole, and not negative. */
export const counted = (errors: ValueErrors) => v.pipe(believable("count", COUNT_BOUNDS, errors), v.safeInteger(errors.whole));

/** The first of some numbers that is out of bounds. */
export function firstBeyond(numbers: readonly number[], unit: Unit | "count", bounds: Bounds): Unbelievable | null {
  const n = numbers.find((number) => !isWithin(number, bounds));
  return n === undefined ? null : { n, unit, bounds };
}

/** Half letters have no bytes on disk: a hash is made of what is stored. */
const withoutHalves = v.transform((text: string) => text.replaceAll(/[\ud800-\udfff]/gu, "\ufffd"));
/** Text of one to `max` letters. */
export const shortText = (max: number, { empty, tooLong }: Pick<ValueErrors, "empty" | "tooLong">) =>
  v.pipe(v.string(), withoutHalves, v.trim(), v.minLength(1, empty), v.maxLength(max, tooLong(max)));

/** Fields named with a prefix, as numbers by the rest of their names. One that was left empty was not measured or counted. */
export function numbersIn(fields: Fields, prefix: string, number: (field: string) => number): Record<string, number> {
  const names = Object.keys(fields).filter((name) => name.startsWith(prefix) && fields[name]?.trim() !== "");
  return Object.fromEntries(names.map((name) => [name.slice(prefix.length), number(name)]));
}
