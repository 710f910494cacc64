import * as v from "valibot";
import { strict } from "../../lookup/strict.ts";
import { nameProblem } from "../person-name.ts";
import { isDay, isPaperNumber } from "./paper-form.ts";
import { shortText, type ValueForm } from "./value-form.ts";

/** What answers a gate of any kind: that it is not known; or somebody's paper, where the gate names whose. */
export type UnknownValue = { readonly kind: "unknown" };
export type PaperValue = {
  readonly kind: "paper";
  /** Whose it is: somebody who is not of this crew. */
  readonly by: string;
  readonly document: string;
  /** The day it bears, as 2026-06-01. */
  readonly dated: string;
};

export const unknownValue: ValueForm<UnknownValue> = {
  kind: "unknown",
  schema: ({ notKnown }) => strict(notKnown, { kind: v.literal("unknown") }),
  fromFields: () => ({ kind: "unknown" }),
  unbelievable: () => null,
};

/** Whether a paper has all that one is found again by. */
export const isWholePaper = ({ by, document, dated }: PaperValue): boolean =>
  nameProblem(by) === null && isPaperNumber(document) && isDay(dated);

export const paperValue: ValueForm<PaperValue> = {
  kind: "paper",
  schema: (errors) =>
    strict(errors.notKnown, {
      kind: v.literal("paper"),
      by: v.pipe(
        shortText(80, errors),
        v.check((name) => nameProblem(name) === null, errors.notAName),
      ),
      document: v.pipe(shortText(80, errors), v.check(isPaperNumber, errors.notAPaperNumber)),
      dated: v.pipe(v.string(), v.trim(), v.check(isDay, errors.notADay)),
    }),
  fromFields: (fields) => ({ kind: "paper", by: fields.by, document: fields.document, dated: fields.dated }),
  unbelievable: () => null,
};
