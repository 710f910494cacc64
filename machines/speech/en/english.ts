import type { Language } from "../language.ts";
import { isBareCommand } from "./commands.ts";
import { holdsInside, isHold } from "./holds.ts";
import { readQuantity } from "./quantities.ts";
import { isBareQuestion } from "./questions.ts";
import { understand } from "./understand.ts";
import { isNo, isYes } from "./yes-no.ts";

const BEGINS_WITH_NO = /^(?:no|nope|nah|not|wrong|negative)\b/;

/** English as American crews speak it. */
export const english: Language = {
  understand,
  isHold,
  holdsInside,
  isBare: (words) => isBareCommand(words) || isBareQuestion(words),
  isYes,
  isNo,
  beginsWithNo: (words) => BEGINS_WITH_NO.test(words),
  readQuantity,
};
