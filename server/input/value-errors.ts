import type { ValueErrors } from "../../machines/install/checks/value-form.ts";
import { says } from "./issue.ts";
import { notKnown } from "./strict.ts";

/** What is said of an answer's value that cannot be read. */
export const VALUE_ERRORS: ValueErrors = {
  notANumber: says("notANumber"),
  whole: says("whole"),
  yesOrNo: says("yesOrNo"),
  empty: says("empty"),
  tooLong: (max) => says("tooLong", max),
  oneOf: (names) => says("oneOf", names),
  notKnown,
  unbelievable: (n, unit, min, max) => says("unbelievable", n, unit, min, max),
};
