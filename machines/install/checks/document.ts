import * as v from "valibot";
import { strict } from "../../lookup/strict.ts";
import type { WallTime } from "../ids.ts";
import { type CheckKind, DEFAULTS } from "./check-kind.ts";
import { shortText, type ValueForm } from "./value-form.ts";

/** A paper named by its number. `expected` is the one this job is for; with dates, it has to be in force as well. */
export type DocumentCheck = {
  readonly kind: "document";
  readonly expected: string | null;
  readonly validFrom: WallTime | null;
  readonly validTo: WallTime | null;
};
export type DocumentValue = { readonly kind: "document"; readonly named: string };

const documentValue: ValueForm<DocumentValue> = {
  kind: "document",
  schema: (errors) => strict(errors.notKnown, { kind: v.literal("document"), named: shortText(80, errors) }),
  fromFields: ({ value }) => ({ kind: "document", named: value }),
  unbelievable: () => null,
};

/** Numbers of papers are the same however they are spaced and capitalized. */
const plain = (named: string) => named.trim().replaceAll(/\s+/g, " ").toLowerCase();

export const namedDocument: CheckKind<DocumentCheck, DocumentValue> = {
  ...DEFAULTS,
  kind: "document",
  values: [documentValue],
  meetsLimit: ({ expected }, { named }) => named.trim() !== "" && (expected === null || plain(named) === plain(expected)),
  inForce: ({ validFrom, validTo }, at) => {
    if (validFrom !== null && at < validFrom) return "early";
    return validTo !== null && at > validTo ? "stale" : "yes";
  },
  tile: ({ expected }) => ({ input: "document", fields: { kind: "document" }, expected }),
  expects: ({ expected }) => ({ expects: "document", expected }),
};
