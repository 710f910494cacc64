import { own } from "../../lookup/own.ts";
import { plain } from "../plain.ts";
import type { AnswerParser } from "./asked.ts";
import { YES_AT } from "./yes-no-at.ts";

/** Words that say that it is so. */
const YES =
  /^(?:yes|yeah|yep|yup|yes sir|(?:yes )?(?:it is|they are|it does|they do|we do|everybody does)|sure is|sure are|you bet|affirmative|yeah (?:it is|they are))$/;
/** Words that say that it is as it should be: yes to most questions, and no to one that asks for a fault. */
const GOOD =
  /^(?:(?:all|we're(?: all)?|it's(?: all)?|they're(?: all)?|that's|looks?|everything's) good|good|good to go|(?:we're )?all set|we're set)$/;
/** Words that say that it was done: no answer where the question asks for a fault. */
const DONE = /^(?:done|all done|done yes|it's done|that's done|got it|got 'em|got them|got 'em all|got them all|roger|roger that)$/;
const NO = /^(?:no|nope|nah|negative|no sir|no it is not|no it's not|no it isn't|no they're not|no they aren't|no they are not)$/;
/** Words that say that it is not yet as it should be. Where the question asks for a fault, they may mean either. */
const NOT_GOOD =
  /^(?:(?:no )?not yet|(?:that's |it's )?(?:no|not) good|not all(?: of (?:them|it))?|it's not|they're not|it isn't|they aren't|not done)$/;
const NONE = /^(?:none|none of them|no none|not one|not any)$/;

/**
 * Whether words as `plain` returns them are a yes to anything. While a read-back is waiting they are never an answer.
 *
 * @example isYes("we're good") // true
 */
export const isYes = (words: string): boolean =>
  YES.test(words) || GOOD.test(words) || DONE.test(words) || /^(?:aye|right|that's right|ok|okay)$/.test(words);
/** Whether words are a no to anything. */
export const isNo = (words: string): boolean => NO.test(words) || words === "not yet";

/** Yes or no, as crews say it. What they say depends on whether the question asks for what is wanted or for a fault. */
export const parseYesNo: AnswerParser<"yesNo"> = (said, _, { wordsKey, gate: { check } }) => {
  const words = plain(said);
  const wanted = check.kind !== "yesNo" || check.good;
  const answer = (yes: boolean) => ({ kind: "yesNo", yes }) as const;
  if (YES.test(words)) return answer(true);
  if (NO.test(words)) return answer(false);
  if (GOOD.test(words)) return answer(wanted);
  if (!wanted) return NONE.test(words) ? answer(false) : { notUnderstood: true };
  if (DONE.test(words) || own(YES_AT, wordsKey)?.test(words)) return answer(true);
  return NOT_GOOD.test(words) ? answer(false) : { notUnderstood: true };
};
