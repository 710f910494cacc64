import { plain } from "../plain.ts";
import type { AnswerParser } from "./asked.ts";
import { numberInUnit } from "./number-in-unit.ts";

/** The counted item may follow the number; nothing else may. */
const COUNTED = /^(.+?) (?:stakes?|plates?|straps?|poles?|rings?|marks?|people)$/i;
/** Words that may follow the number at one call only. */
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

/** A count: a number, optionally followed by the counted item, or a word for none. */
export const parseCount: AnswerParser<"count"> = (said, _, step) => {
  const words = plain(said);
  if (NOBODY.test(words) || NONE_AT[step.wordsKey]?.test(words)) return { kind: "count", n: 0 };
  const read = numberInUnit((COUNTED_AT[step.wordsKey]?.exec(said) ?? COUNTED.exec(said))?.[1] ?? said, "count");
  return "n" in read ? { kind: "count", n: read.n } : read;
};
