import { phrases } from "../phrases.ts";
import type { AnswerParser } from "./asked.ts";
import { type Vocabulary, vocabularyOf, withoutPhrases } from "./gate-words.ts";
import {
  clausesOf,
  DOUBTS,
  FAULTS,
  inFull,
  LEAD_PHRASES,
  LEAD_WORDS,
  NEGATIONS,
  NEUTRAL,
  PARTS,
  SMALL_NUMBERS,
  setOf,
  wordsOf,
} from "./talk.ts";

const saying = (expansion: string): ReadonlySet<string> => new Set(phrases(expansion).map(inFull));

/** Words that say that it is so. */
const YES = saying(
  "yes | yeah | yep | yup | yes sir | [yes] (it is | they are | it does | they do | we do | we are | he does | she does | everybody does) | " +
    "sure is | sure are | sure does | sure | you bet | affirmative | absolutely | (yeah | yep) (it is | they are) | aye | you got it",
);
/** Words that say that it is as it should be: yes to most questions, and no to one that asks for a fault. */
const GOOD = saying(
  "[(all | we're [all] | it's [all] | they're [all] | that's | looks | everything's)] good | good to go | [we're] all set | we're set | that'll do it",
);
/** Words that say that it was done: no answer where the question asks for a fault. */
const DONE = saying("[all] done | done yes | (it's | that's) done | got it | got 'em [all] | got them [all] | roger [that]");
const NO = saying(
  "no | nope | nah | negative | no sir | [no] (it's not | it is not | they're not | it doesn't | they don't | it does not | we don't | we're not)",
);
/** Words that say that it is not yet as it should be. Where the question asks for a fault, they may mean either. */
const NOT_GOOD = saying(
  "[no] not yet | [that's | it's] (no | not) good | not all [of (them | it)] | not done [yet] | not (everybody | everyone) [yet]",
);
const NONE = saying("none [of them] | no none | not one | not any | nobody");
/** After these only what is so follows: "every one of them", "all three". */
const WHOLE = saying(
  "every one [of them] | every last one [of them] | every [of them] | every last [of them] | all [of (it | them)] | each [of them]",
);

/** What a clause says: an answer, that it is as wanted or is not, nothing, or something else, which may be a doubt. */
type Says = "yes" | "no" | "good" | "bad" | "nothing" | "aside" | "doubt";

/** Whether words as `plain` returns them are a yes to anything. While a read-back is waiting they are never an answer. */
export const isYes = (words: string): boolean => {
  const full = inFull(words);
  return YES.has(full) || GOOD.has(full) || DONE.has(full) || /^(?:aye|right|ok|okay)$/.test(full);
};
/** Whether words are a no to anything. */
export const isNo = (words: string): boolean => NO.has(inFull(words)) || words === "not yet";

/**
 * Yes or no, as crews say it. What opens the gate is held to what is known to be said there; what keeps it shut may have a reason
 * after it: "no, one's high".
 */
export const parseYesNo: AnswerParser<"yesNo"> = (said, _, { wordsKey, gate: { check } }) => {
  const wanted = check.kind !== "yesNo" || check.good;
  const words = vocabularyOf(wordsKey);
  // "Threaded, with slack" is one saying.
  const whole = isSo(wordsOf(inFull(said)), words) ? (["good"] as const) : null;
  const all = new Set<Says>(whole ?? clausesOf(said).flatMap((clause) => inClause(clause, words, wanted)));
  const answer = (yes: boolean) => ({ kind: "yesNo", yes }) as const;
  const opens = all.has("good") || all.has(wanted ? "yes" : "no");
  const shuts = all.has("bad") || all.has(wanted ? "no" : "yes");
  // "No, we're good" is neither; "no, not at C" is.
  if (opens === shuts) return { notUnderstood: true };
  if (shuts) return answer(!wanted);
  return all.has("doubt") ? { notUnderstood: true } : answer(wanted);
};

/** When and where it was looked at changes nothing. */
const WHEN = / (?:this morning|today|tonight|right now|now|here|out here|over here|up here)$/;

function inClause(said: string, words: Vocabulary, wanted: boolean): Says[] {
  const full = saysOf(said, words, wanted);
  const clause = full === "aside" || full === "doubt" ? said.replace(WHEN, "") : said;
  const whole = saysOf(clause, words, wanted);
  if (whole !== "aside" && whole !== "doubt") return [whole];
  // Recognizers drop commas: "yep they're all low".
  const [first = "", ...rest] = clause.split(" ");
  for (const lead of LEAD_PHRASES)
    if (clause.startsWith(`${lead} `)) return ["nothing", ...inClause(clause.slice(lead.length + 1), words, wanted)];
  const lead = rest.length === 0 ? null : LEAD_WORDS.has(first) ? "nothing" : YES.has(first) ? "yes" : NO.has(first) ? "no" : null;
  // What no stands before may be what there is none of: "no warnings".
  if (lead !== null && (first !== "no" || BEGINS_A_SENTENCE.has(rest[0] ?? ""))) return [lead, ...inClause(rest.join(" "), words, wanted)];
  const last = rest.at(-1) ?? "";
  return YES.has(last) ? [...inClause(clause.slice(0, -last.length - 1), words, wanted), "yes"] : [whole];
}

const BEGINS_A_SENTENCE = setOf(
  "the it we they there he she that this not i you one two some somebody someone everybody everyone nobody just",
);

function saysOf(clause: string, words: Vocabulary, wanted: boolean): Says {
  const said = wordsOf(clause);
  if (said.every((word) => LEAD_WORDS.has(word)) || (LEAD_PHRASES as readonly string[]).includes(clause)) {
    if (!DONE.has(clause)) return "nothing";
  }
  if (YES.has(clause)) return "yes";
  if (NO.has(clause)) return "no";
  if (GOOD.has(clause)) return "good";
  if (DONE.has(clause)) return wanted ? "good" : "doubt";
  if (NOT_GOOD.has(clause)) return wanted ? "bad" : "doubt";
  if (!wanted && NONE.has(clause)) return "good";
  if (isSo(said, words)) return "good";
  if (isNotSo(said, words, wanted)) return "bad";
  const doubtful = said.some((word, i) => NEGATIONS.has(word) || DOUBTS.has(word) || FAULTS.has(word) || isPart(said, i));
  if (doubtful) return "doubt";
  const counted = said.some((word, i) => SMALL_NUMBERS.has(word) && said[i - 1] === "all");
  return counted || WHOLE.has(clause) || said.some((word) => words.all.has(word) || PRONOUNS.has(word)) ? "aside" : "doubt";
}

const PRONOUNS = new Set("it they them everybody everyone".split(" "));

/** A part of what was asked about; "all three" and "every one" are no parts. */
const isPart = (said: readonly string[], i: number): boolean =>
  PARTS.has(said[i]!) && !(["all", "every", "each"].includes(said[i - 1] ?? "") && SMALL_NUMBERS.has(said[i]!));

/** Only what is known to mean so, and words that change nothing about it. */
function isSo(said: readonly string[], { so, things }: Vocabulary): boolean {
  const left = withoutPhrases(said, so);
  return left?.every((word, i) => (NEUTRAL.has(word) || things.has(word) || SMALL_NUMBERS.has(word)) && !isPart(left, i)) ?? false;
}

const PLACE = /^(?:[a-d]{1,2}|[a-d]{1,2}\d+|q\d+)$/;
/** What is wrong, of what was asked about: a fault of the gate's own, or a denial of what is wanted; nothing else in it. */
function isNotSo(said: readonly string[], { so, not, things, all }: Vocabulary, wanted: boolean): boolean {
  const known = (word: string) =>
    NEUTRAL.has(word) ||
    things.has(word) ||
    all.has(word) ||
    NEGATIONS.has(word) ||
    PARTS.has(word) ||
    FAULTS.has(word) ||
    PLACE.test(word);
  const faulty = withoutPhrases(said, not);
  if (faulty !== null && !faulty.some((word) => NEGATIONS.has(word))) return faulty.every(known) || !wanted || faulty.length <= MAX_SUBJECT;
  if (!wanted || !said.every(known)) return false;
  const isSoWord = (word: string) => so.some((phrase) => phrase.includes(word));
  const about = said.some((word) => things.has(word) || PLACE.test(word) || PARTS.has(word)) || withoutPhrases(said, so) !== null;
  const denies = said[0] === "not" || said.some((word, i) => (word === "not" || (FAULTS.has(word) && !isSoWord(word))) && i > 0);
  return about && denies;
}
/** More words than name whose fault it is. */
const MAX_SUBJECT = 4;
