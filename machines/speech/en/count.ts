import { isWhole } from "../../install/checks/count.ts";
import { plain } from "../plain.ts";
import type { AnswerParser } from "./asked.ts";
import { type Vocabulary, vocabularyOf, withoutPhrases } from "./gate-words.ts";
import { hasNumber, MISSING, numberIn } from "./number-clauses.ts";
import { clausesOf, DOUBTS, LEAD_WORDS, NEUTRAL, setOf, wordsOf } from "./talk.ts";

const NOTHING_WRONG = /^(?:no|nope|nah|negative|(?:it's |they're |looks )?all good|(?:all )?clean|all straight)$/;
const NOBODY = /^(?:none|nobody)$/;
/** Words for none of what is wrong. */
const ZERO = setOf("no none nothing zero");
const ZERO_PHRASES = [
  ["not", "a", "one"],
  ["not", "a"],
  ["not", "one"],
  ["not", "any"],
  ["do", "not", "see", "any"],
  ["did", "not"],
];

/** A count: a number, with the question's own things around it, or a word for none. */
export const parseCount: AnswerParser<"count"> = (said, _, { wordsKey, gate: { check } }) => {
  const words = plain(said);
  const vocabulary = vocabularyOf(wordsKey);
  // Questions that count what is wrong: "no" and "all good" mean none. To other counts they say nothing.
  const isFault = check.kind === "count" && check.from === 0 && check.to === 0;
  if (NOBODY.test(words) || (isFault && (NOTHING_WRONG.test(words) || isNone(said, vocabulary)))) return { kind: "count", n: 0 };
  const read = numberIn(said, { things: vocabulary.all, wants: "count" });
  if (!("n" in read)) return read;
  // "Ten, one to go" where ten are wanted says two things.
  const isGood = check.kind !== "count" || (read.n >= (check.from ?? 0) && read.n <= (check.to ?? read.n));
  if (
    isGood &&
    clausesOf(said)
      .slice(1)
      .some((clause) => MISSING.test(clause))
  )
    return { notUnderstood: true };
  return isWhole(read.n) ? { kind: "count", n: read.n } : { notUnderstood: true };
};

/** Each clause says none of what is wrong, or that all is as it should be; at least one says none. */
function isNone(said: string, vocabulary: Vocabulary): boolean {
  const says = clausesOf(said).map((clause) => saysNone(wordsOf(clause), vocabulary));
  return says.includes("none") && !says.includes("else");
}

function saysNone(said: readonly string[], { so, things, all }: Vocabulary): "none" | "aside" | "else" {
  const left = withoutPhrases(said, ZERO_PHRASES) ?? said;
  const isZero = left.length < said.length || said.some((word) => ZERO.has(word));
  const isKnown = (word: string) => (word !== "yet" && NEUTRAL.has(word)) || things.has(word) || LEAD_WORDS.has(word) || ZERO.has(word);
  // None of what is as it should be is no answer: "none of them straight".
  const ofGood = left.some(
    (word) => ["all", "every", "good"].includes(word) || so.some((phrase) => phrase.length === 1 && phrase[0] === word),
  );
  if (isZero) return !ofGood && left.every((word) => isKnown(word) || all.has(word)) ? "none" : "else";
  const good = withoutPhrases(said, so);
  if (good?.every(isKnown)) return "none";
  return said.some((word) => DOUBTS.has(word) || all.has(word)) || hasNumber(said.join(" ")) ? "else" : "aside";
}
