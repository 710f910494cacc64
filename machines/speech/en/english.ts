import type { Language } from "../language.ts";
import { holdsInside, isHold } from "./holds.ts";
import { readQuantity } from "./quantities.ts";
import { understand } from "./understand.ts";

const YES = /^(?:yes|yeah|yep|yup|aye|right|that's right|ok|okay|affirmative)$/;
const NO = /^(?:no|nope|not yet|negative)$/;
const BEGINS_WITH_NO = /^(?:no|nope|not|wrong|negative)\b/;

/** English as American crews speak it. */
export const english: Language = {
  understand,
  isHold,
  holdsInside,
  isYes: (words) => YES.test(words),
  isNo: (words) => NO.test(words),
  beginsWithNo: (words) => BEGINS_WITH_NO.test(words),
  readQuantity,
};
