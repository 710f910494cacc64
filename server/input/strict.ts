import type * as v from "valibot";
import { type NotKnown, recordOf as recordWith, strict as strictWith } from "../../machines/lookup/strict.ts";
import { saysOf } from "./issue.ts";

export const notKnown: NotKnown = (field, nearest, known) => saysOf(({ errors }) => errors.notKnown(field, nearest, known));

/** An object with these fields and no others; `elsewhere` are fields of the same object that somebody else reads. */
export const strict = <E extends v.ObjectEntries>(entries: E, elsewhere: readonly string[] = []) =>
  strictWith(notKnown, entries, elsewhere);

/** An object whose names are some of a list, or any where that is `null`, with a value of one kind each. */
export const recordOf = <S extends v.GenericSchema>(known: readonly string[] | null, value: S) => recordWith(notKnown, known, value);

/** What is wrong, by field. Names come from outside: there is nothing inherited among them. */
export const noFields = <T>(): Record<string, T> => Object.create(null) as Record<string, T>;
