import * as v from "valibot";
import { strict } from "../../lookup/strict.ts";
import { type CheckKind, DEFAULTS } from "./check-kind.ts";
import type { ValueForm } from "./value-form.ts";

/** Yes or no, and which of them is good. */
export type YesNoCheck = { readonly kind: "yesNo"; readonly good: boolean };
export type YesNoValue = { readonly kind: "yesNo"; readonly yes: boolean };

const yesNoValue: ValueForm<YesNoValue> = {
  kind: "yesNo",
  schema: ({ yesOrNo, notKnown }) => strict(notKnown, { kind: v.literal("yesNo"), yes: v.boolean(yesOrNo) }),
  fromFields: ({ value }) => ({ kind: "yesNo", yes: value === "yes" }),
  unbelievable: () => null,
};

export const yesNo: CheckKind<YesNoCheck, YesNoValue> = {
  ...DEFAULTS,
  kind: "yesNo",
  values: [yesNoValue],
  meetsLimit: ({ good }, { yes }) => yes === good,
  tile: () => ({
    input: "choices",
    choices: [
      { fields: { kind: "yesNo", value: "yes" }, value: { kind: "yesNo", yes: true } },
      { fields: { kind: "yesNo", value: "no" }, value: { kind: "yesNo", yes: false } },
    ],
  }),
  expects: () => ({ expects: "yesNo" }),
};
