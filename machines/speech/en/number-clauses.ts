import type { Meaning } from "../meanings.ts";
import type { Wants } from "../quantity.ts";
import { numberInUnit } from "./number-in-unit.ts";
import { clausesOf, DOUBTS, LEAD_WORDS, NEGATIONS, SMALL_NUMBERS, setOf } from "./talk.ts";

/** What may stand before a number, beside the question's own things. */
const BEFORE = setOf(
  "it is that there are they we i you he she got have has had count counted read reads says say just only still looks right yeah yes yep yup okay ok uh um so well " +
    "here make all both each is was the am reading comes come to at of us me in total nearest worst highest shortest thinnest narrowest farthest fewest",
);
/** What may follow a count. */
const AFTER_COUNT = setOf(
  "of them us it total now today so far right here there are is all in the on that people guys heads poles stakes plates straps rings marks stake plate strap pole ring mark person altogether",
);
/** What may follow a measure, and words to go on with after it. */
const AFTER_MEASURE = setOf(
  "to off from away along on at even exactly flat showing sticking clear wide the of in here there that is all four each it them",
);

/** What may stand around a number at a gate. */
export type Around = { readonly things: ReadonlySet<string>; readonly wants: Wants };

/** A clause with a number in it and nothing else of weight, or one without a number. */
type Clause = { readonly read: { readonly n: number } | Meaning } | "aside" | "doubt";

/** "One to go", "two short": what is missing, said after what is there. */
export const MISSING =
  /^(?:\S+ (?:is |are |more )?(?:to go|short|missing|to come|(?:running )?late)|(?:we are |we )?(?:short|missing)(?: \S+)?|still looking for \S+)$/;
/** Words that take back what was said before. */
const TAKES_BACK = /^(?:no|wait|sorry|scratch that|make that|i mean|correction|or|not)\b/;

/**
 * The one number in what was said, in the wanted unit: with the question's own things around it, and what comes before and after it
 * in clauses of its own. Two numbers, words of doubt, or a number among words that are not known there are asked again.
 *
 * @example numberIn("yeah, thirty-six of them", { things: new Set(), wants: "count" }) // { n: 36 }
 */
export function numberIn(said: string, around: Around): { readonly n: number } | Meaning {
  const clauses = clausesOf(said).map((clause, i) => inClause(clause, around, i > 0));
  const read = clauses.flatMap((clause) => (typeof clause === "object" ? [clause.read] : []));
  if (clauses.includes("doubt") || read.length !== 1) return { notUnderstood: true };
  return read[0]!;
}

function inClause(clause: string, around: Around, isLater: boolean): Clause {
  if (isLater && MISSING.test(clause)) return "aside";
  if (isLater && TAKES_BACK.test(clause) && hasNumber(clause)) return "doubt";
  const words = clause.replaceAll(/\blooks? like\b/g, "looks").split(" ");
  const first = words.findIndex((_, i) => startsNumber(words, i));
  if (first < 0) return words.some((word) => DOUBTS.has(word)) ? "doubt" : "aside";
  const isKnown = (word: string) => around.things.has(word);
  if (!words.slice(0, first).every((word) => BEFORE.has(word) || LEAD_WORDS.has(word) || isKnown(word))) return "doubt";
  let otherUnit: Clause = "doubt";
  for (let end = words.length; end > first; end--) {
    const read = numberInUnit(words.slice(first, end).join(" "), around.wants);
    if ("notUnderstood" in read) continue;
    // "Nine of ten", "9 out of 10".
    const rest = words
      .slice(end)
      .join(" ")
      .replace(around.wants === "count" ? /^(?:out )?of (?!us\b|them\b|the\b|it\b)(?:the )?\S+/ : /(?!)/, "")
      .trim();
    if (follows(rest === "" ? [] : rest.split(" "), around)) {
      if (!("wrongUnit" in read)) return { read };
      // "Two turns" where turns are counted.
      otherUnit = { read };
    } else if (!("wrongUnit" in read)) break;
  }
  return otherUnit;
}

function follows(words: readonly string[], { things, wants }: Around): boolean {
  if (wants === "count") return words.every((word) => AFTER_COUNT.has(word) || things.has(word));
  const [next] = words;
  // To what, and off what, is theirs to say; no number, no denial and no doubt.
  if (next !== undefined && !AFTER_MEASURE.has(next) && !things.has(next)) return false;
  return words.length <= MAX_AFTER && !words.some((word, i) => NEGATIONS.has(word) || DOUBTS.has(word) || startsNumber(words, i));
}
/** A measure is followed by no more words than say where it was taken. */
const MAX_AFTER = 6;

const NUMBER_WORD =
  /^(?:\d|\.\d|(?:zero|oh|nought|ten|eleven|twelve|hundred|half|quarter|dozen|(?:thir|four|fif|six|seven|eigh|nine)teen|(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)))/;
const ARTICLE_NUMBER = /^(?:an? (?:hundred|thousand|half|quarter|dozen|inch|foot|third|eighth))\b/;
const startsNumber = (words: readonly string[], i: number): boolean =>
  NUMBER_WORD.test(words[i]!) || ARTICLE_NUMBER.test(words.slice(i, i + 2).join(" ")) || SMALL_NUMBERS.has(words[i]!.split("-")[0]!);
/** Whether a number stands anywhere in a clause. */
export const hasNumber = (clause: string): boolean => clause.split(" ").some((_, i, words) => startsNumber(words, i));
