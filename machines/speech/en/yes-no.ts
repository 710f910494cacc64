import { plain } from "../plain.ts";
import type { AnswerParser } from "./asked.ts";

const YES = /^(?:yes|yeah|yep|yes it is|yes they are|done yes|affirmative)$/;
const NO = /^(?:no|nope|not yet|no it is not|negative)$/;
/** Words that mean yes at one call only. */
const YES_AT: Readonly<Record<string, RegExp>> = {
  "half.tied": /^(?:tied off|knotted|tied off and hooked|knotted hook closed|knotted and the hook closed)$/,
};

/** Yes or no, as crews say it. */
export const parseYesNo: AnswerParser<"yesNo"> = (said, _, step) => {
  const words = plain(said);
  if (YES.test(words) || YES_AT[step.wordsKey]?.test(words)) return { kind: "yesNo", yes: true };
  return NO.test(words) ? { kind: "yesNo", yes: false } : { notUnderstood: true };
};
