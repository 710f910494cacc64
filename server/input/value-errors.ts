import type { ValueErrors } from "../../machines/install/checks/value-form.ts";
import { nameProblem } from "../../machines/install/person-name.ts";
import { says, saysOf } from "./issue.ts";
import { NAME_PROBLEM } from "./person-name.ts";
import { notKnown } from "./strict.ts";

/** What is said of an answer's value that cannot be read. */
export const VALUE_ERRORS: ValueErrors = {
  notANumber: says("notANumber"),
  whole: says("whole"),
  yesOrNo: says("yesOrNo"),
  empty: says("empty"),
  tooLong: (max) => says("tooLong", max),
  oneOf: (names) => says("oneOf", names),
  notAName: saysOf(({ errors }, given) => errors[NAME_PROBLEM[nameProblem(String(given)) ?? "noLetter"]](String(given))),
  notAPaperNumber: says("paperNumber"),
  notADay: saysOf(({ errors }, given) => errors.notADay(String(given))),
  notKnown,
  unbelievable: (n, unit, min, max) => says("unbelievable", n, unit, min, max),
};
