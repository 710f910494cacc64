import * as v from "valibot";
import { nearestName } from "./nearest.ts";

/** What is said of a value: a sentence, or what makes one of the issue. */
export type Message = string | ((issue: v.BaseIssue<unknown>) => string);
/** What is said of a field that is not known, with the nearest one that is. */
export type NotKnown = (field: string, nearest: string | null, known: readonly string[]) => Message;

/**
 * An object with these fields and no others: an unknown one is refused by its name, with the nearest that is known. The
 * library's own strict object takes `constructor` for known, and its objects drop `__proto__` without a word.
 * `elsewhere` are fields of the same object that somebody else reads.
 */
export function strict<E extends v.ObjectEntries>(
  notKnown: NotKnown,
  entries: E,
  elsewhere: readonly string[] = [],
): v.ObjectSchema<E, undefined> {
  const base = v.object(entries);
  const known = [...Object.keys(entries), ...elsewhere];
  return {
    ...base,
    "~run"(dataset, config) {
      const input = dataset.value;
      const read = base["~run"](dataset, config);
      if (typeof input === "object" && input !== null) refuseUnknown(this, { input, known, notKnown }, read, config);
      return read;
    },
  };
}

/** The same for an object whose names are some of a list, with a value of one kind each. */
export function recordOf<S extends v.GenericSchema>(notKnown: NotKnown, known: readonly string[] | null, value: S) {
  const base = v.record(v.string(), value);
  const schema: typeof base = {
    ...base,
    "~run"(dataset, config) {
      const input = dataset.value;
      const read = base["~run"](dataset, config);
      if (typeof input === "object" && input !== null) refuseUnknown(this, { input, known: known ?? named(input), notKnown }, read, config);
      return read;
    },
  };
  return schema;
}

/** Any name, but those that every object has from its beginning. */
const named = (input: object): string[] => Object.keys(input).filter((name) => !(name in Object.prototype));

type Run = v.GenericSchema["~run"];
function refuseUnknown(
  schema: v.GenericSchema,
  { input, known, notKnown }: { readonly input: object; readonly known: readonly string[]; readonly notKnown: NotKnown },
  read: ReturnType<Run>,
  config: Parameters<Run>[1],
) {
  for (const key of Object.keys(input)) {
    if (known.includes(key)) continue;
    const value: unknown = (input as Record<string, unknown>)[key];
    const path: [v.ObjectPathItem] = [{ type: "object", origin: "key", input: input as Record<string, unknown>, key, value }];
    v._addIssue(schema as never, "key", read as never, config, {
      input: value,
      path,
      message: notKnown(key, nearestName(key, known), known),
    } as never);
  }
}
