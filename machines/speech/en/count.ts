import { plain } from "../plain.ts";
import type { AnswerParser } from "./asked.ts";
import { numberInUnit } from "./number-in-unit.ts";

/** What is counted may be named after the number; nothing else may be. */
const COUNTED = /^(.+?) (?:stakes?|plates?|straps?|poles?|rings?|marks?|people)$/i;
/** What else may stand after the number, at one call and at no other. */
const COUNTED_AT: Readonly<Record<string, RegExp>> = {
  "half.looked": /^(.+?) (?:missed(?: loops?)?|loops? missed|loops?)$/i,
  "cloth.strapped": /^(.+?) strapped$/i,
  "interior.tied": /^(.+?) tied$/i,
  "under.in": /^(.+?) (?:going (?:in )?under|going in)$/i,
  "under.out": /^(.+?) (?:are )?out(?:,? (?:and )?nobody (?:left )?under)?$/i,
};
const NONE_AT: Readonly<Record<string, RegExp>> = {
  "half.looked": /^(?:none missed|no missed loops|no loops missed)$/,
  "damage.cloth": /^none damaged$/,
  "damage.rope": /^none damaged$/,
};
const NOBODY = /^(?:none|nobody)$/;

/** How many: a number, alone or with what was counted after it; or that there is none. */
export const parseCount: AnswerParser<"count"> = (said, _, step) => {
  const words = plain(said);
  if (NOBODY.test(words) || NONE_AT[step.wordsKey]?.test(words)) return { kind: "count", n: 0 };
  const read = numberInUnit((COUNTED_AT[step.wordsKey]?.exec(said) ?? COUNTED.exec(said))?.[1] ?? said, "count");
  return "n" in read ? { kind: "count", n: read.n } : read;
};
