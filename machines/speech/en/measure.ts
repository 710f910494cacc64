import { plain } from "../plain.ts";
import type { AnswerParser } from "./asked.ts";
import { withoutLeadIn } from "./lead-in.ts";
import { numberInUnit } from "./number-in-unit.ts";

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
  if (NONE.test(words) || (OR_NONE.has(wordsKey) && NONE_NEAR.test(words))) return { kind: "none" };
  const read = numberInUnit((unit === "mph" ? AT_WIND : SHOWN).exec(figure)?.[1] ?? figure, unit);
  return "n" in read ? { kind: "measure", n: read.n, unit } : read;
};
