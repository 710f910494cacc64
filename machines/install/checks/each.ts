import * as v from "valibot";
import { recordOf, strict } from "../../lookup/strict.ts";
import { type CheckKind, DEFAULTS } from "./check-kind.ts";
import type { ValueForm } from "./value-form.ts";

/** A yes for every name on a list, in any order and over several answers. */
export type EachCheck = { readonly kind: "each"; readonly names: readonly string[] };
export type EachValue = { readonly kind: "each"; readonly yes: Readonly<Record<string, boolean>> };
/** Who was not asked yet, and who said no. */
export type EachFinding = { readonly kind: "each"; readonly missing: readonly string[]; readonly no: readonly string[] };

const eachValue: ValueForm<EachValue> = {
  kind: "each",
  schema: ({ yesOrNo, notKnown }) => strict(notKnown, { kind: v.literal("each"), yes: recordOf(notKnown, null, v.boolean(yesOrNo)) }),
  fromFields: ({ name, value }) => ({ kind: "each", yes: { [name ?? ""]: value === "yes" } }),
  unbelievable: () => null,
};

export const each: CheckKind<EachCheck, EachValue, EachFinding> = {
  ...DEFAULTS,
  kind: "each",
  values: [eachValue],
  accepts: ({ names }, { yes }) => {
    const given = Object.keys(yes);
    return given.length > 0 && given.every((name) => names.includes(name));
  },
  meetsLimit: ({ names }, { yes }) => names.every((name) => yes[name] === true),
  parts: {
    of: ({ yes }) => Object.fromEntries(Object.entries(yes).map(([name, is]) => [name, Number(is)])),
    merge: (before, value) => ({ ...value, yes: { ...before.yes, ...value.yes } }),
    isComplete: ({ names }, { yes }) => names.every((name) => name in yes),
    wanted: ({ names }) => Object.fromEntries(names.map((name) => [name, 1])),
  },
  finding: ({ names }, { yes }) => ({
    kind: "each",
    missing: names.filter((name) => yes[name] === undefined),
    no: names.filter((name) => yes[name] === false),
  }),
  tile: ({ names }, given) => ({
    input: "each",
    fields: { kind: "each" },
    rows: names.map((name) => ({ name, yes: given?.yes[name] ?? null })),
  }),
  expects: ({ names }) => ({ expects: "each", names }),
};
