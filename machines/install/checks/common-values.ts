import * as v from "valibot";
import { strict } from "../../lookup/strict.ts";
import { shortText, type ValueForm } from "./value-form.ts";

/** What answers a gate of any kind: that it is not known; or somebody's paper, where the gate names whose. */
export type UnknownValue = { readonly kind: "unknown" };
export type PaperValue = { readonly kind: "paper"; readonly by: string; readonly document: string };

export const unknownValue: ValueForm<UnknownValue> = {
  kind: "unknown",
  schema: ({ notKnown }) => strict(notKnown, { kind: v.literal("unknown") }),
  fromFields: () => ({ kind: "unknown" }),
  unbelievable: () => null,
};

export const paperValue: ValueForm<PaperValue> = {
  kind: "paper",
  schema: (errors) => strict(errors.notKnown, { kind: v.literal("paper"), by: shortText(80, errors), document: shortText(80, errors) }),
  fromFields: (fields) => ({ kind: "paper", by: fields.by, document: fields.document }),
  unbelievable: () => null,
};
