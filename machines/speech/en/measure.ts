import { plain } from "../plain.ts";
import type { AnswerParser } from "./asked.ts";
import { vocabularyOf } from "./gate-words.ts";
import { withoutLeadIn } from "./lead-in.ts";
import { numberIn } from "./number-clauses.ts";
import { numberInUnit } from "./number-in-unit.ts";
import { clausesOf, NEUTRAL, setOf } from "./talk.ts";

/** What was measured may follow the number. */
const SHOWN = /^(.+?) (?:showing|shows|sticking up|away|clear|wide)$/i;
const NONE = /^(?:none|nothing)(?: here| there)?$/;
/** "How far, or none?" is answered with no as well; "clear" may mean far enough, and says nothing. */
const NONE_NEAR = /^(?:no|nope|nah|no wires?|no lines?)$/;
const OR_NONE: ReadonlySet<string> = new Set(["overhead.any", "nearest.private", "clear.around"]);
/** A wind that a plan names: "at thirty", "gusts of thirty". */
const AT_WIND = /^(?:at|gusts? of|gusting(?: to)?) (.+)$/i;

/** A measurement in the unit that is asked, or one that converts to it. */
export const parseMeasure: AnswerParser<"measure"> = (said, { unit }, { wordsKey }) => {
  const figure = withoutLeadIn(said);
  const words = plain(figure);
  const { all: things } = vocabularyOf(wordsKey);
  if (NONE.test(words) || (OR_NONE.has(wordsKey) && NONE_NEAR.test(words)) || isNone(said, things)) return { kind: "none" };
  const strict = numberInUnit((unit === "mph" ? AT_WIND : SHOWN).exec(figure)?.[1] ?? figure, unit);
  const read = "notUnderstood" in strict ? numberIn(said, { things, wants: unit }) : strict;
  return "n" in read ? { kind: "measure", n: read.n, unit } : read;
};

const ZERO = setOf("no none nothing");
const NO = setOf("no nope nah");
const ASIDE = setOf("at all near close buildings vehicles engines");
/** "No wires at all", "none, nothing up there": none first, and then only what is asked about. */
function isNone(said: string, things: ReadonlySet<string>): boolean {
  const clauses = clausesOf(said).map((clause) => clause.split(" "));
  const saysNone = clauses.map((words) => {
    const [first = ""] = words;
    const whole = words.join(" ");
    if (/^(?:there|they) (?:is|are) (?:no|not any|none|nothing)\b|^they do not have any$/.test(whole))
      return words.every((word) => word === "not" || ZERO.has(word) || ASIDE.has(word) || NEUTRAL.has(word) || things.has(word));
    // "No it's not tied" is none of nothing.
    const begins = ZERO.has(first) && (first !== "no" || words.length === 1 || things.has(words[1]!) || ASIDE.has(words[1]!));
    return begins && words.every((word) => ZERO.has(word) || ASIDE.has(word) || NEUTRAL.has(word) || things.has(word));
  });
  return (
    saysNone[0] === true &&
    !NO.has(clauses[0]!.join(" ")) &&
    clauses.every((words, i) => saysNone[i] || words.every((word) => NEUTRAL.has(word) || things.has(word) || ASIDE.has(word)))
  );
}
