import type { Language } from "../language.ts";
import { isBareCommand } from "./commands.ts";
import { holdsInside, isHold } from "./holds.ts";
import { readQuantity } from "./quantities.ts";
import { isBareQuestion } from "./questions.ts";
import { sayableAt } from "./sayable.ts";
import { isBareLook } from "./sky.ts";
import { understand } from "./understand.ts";
import { isNo, isYes } from "./yes-no.ts";

const BEGINS_WITH_NO = /^(?:no|nope|nah|not|wrong|negative)\b/;

const BEGINS_WITH_YES =
  /^(?:(?:yes|yeah|yep|yup|right|correct|affirmative|that(?:'s| is)(?: all)? (?:right|correct|it))(?:[\s,.]+(?:sir|ma'am|right|correct))?)[\s,.]+(?=\S)/i;

/** English as American crews speak it. */
export const english: Language = {
  understand,
  isHold,
  holdsInside,
  isBare: (words) => isBareCommand(words) || isBareQuestion(words),
  isBareLook,
  isYes,
  isNo,
  afterYes: (words) => (BEGINS_WITH_YES.test(words) ? words.replace(BEGINS_WITH_YES, "") : null),
  beginsWithNo: (words) => BEGINS_WITH_NO.test(words),
  readQuantity,
  sayableAt,
};
