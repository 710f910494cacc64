import { readNumber } from "../../machines/speech/en/numbers.ts";
import type { Wants } from "../../machines/speech/quantity.ts";
import { inUnit } from "../../machines/speech/quantity.ts";

/**
 * A number as somebody typed it ("8", "3 1/2 in", "26' 6""), in the unit that is wanted, kept to a millionth; `null` where
 * the field is empty. Where it is no such number the text itself comes back, so that whoever checks it can name it.
 */
export function typed(text: string | undefined, wants: Wants): number | string | null {
  const trimmed = text?.trim() ?? "";
  if (trimmed === "") return null;
  const said = readNumber(trimmed);
  const n = said && inUnit(said, wants);
  return n === null ? trimmed : Math.round(n * 1e6) / 1e6 + 0;
}

/** Several numbers in one field: "20, 20", "20 + 20", "20 20". Empty where the field is. */
export function typedList(text: string | undefined, wants: Wants): (number | string)[] {
  const trimmed = text?.trim() ?? "";
  const parts = /[,+;]/.test(trimmed) ? trimmed.split(/[,+;]/) : /^[\d.\s]+$/.test(trimmed) ? trimmed.split(/\s+/) : [trimmed];
  return parts.flatMap((part) => typed(part, wants) ?? []);
}

/** Numbers of a group of fields, by name. */
export const typedAll = (f: Readonly<Record<string, string>>, group: string, names: readonly string[], wants: Wants) =>
  Object.fromEntries(names.map((name) => [name, typed(f[`${group}.${name}`], wants)]));
