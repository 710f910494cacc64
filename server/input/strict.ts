import type * as v from "valibot";
import { recordOf as recordWith, strict as strictWith } from "../../machines/lookup/strict.ts";
import { errors } from "../../views/text/en/errors.ts";

/** An object with these fields and no others; `elsewhere` are fields of the same object that somebody else reads. */
export const strict = <E extends v.ObjectEntries>(entries: E, elsewhere: readonly string[] = []) =>
  strictWith(errors.notKnown, entries, elsewhere);

/** An object whose names are some of a list, or any where that is `null`, with a value of one kind each. */
export const recordOf = <S extends v.GenericSchema>(known: readonly string[] | null, value: S) => recordWith(errors.notKnown, known, value);

/** What is wrong, by field. Names come from outside: there is nothing inherited among them. */
export const noFields = (): Record<string, string> => Object.create(null) as Record<string, string>;
