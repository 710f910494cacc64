import type { AnswerParser } from "./asked.ts";
import { spelledOut } from "./spelled-out.ts";

/** What stands before the number: words that say nothing, and what it is. */
const BEFORE =
  /^(?:(?:okay|ok|uh|um|yeah|yep|yes|got it|all right|this one here|right here|here it is|here|number is|so|this|one|all i(?:'ve)? got is|it's|it is|that's|that is|it says|says|reads|(?:i|we)(?:'ve)? (?:got|have)|the|(?:locate )?ticket|sheet|permit|certificate|paper|number)(?:'s| is)?[\s,:]+)+/i;
const AFTER = /[\s,]+(?:here|on it|right here|please|good today|got it(?: right here)?|that's it)$/i;
/** Fewer letters and digits than a paper's number has, where it was spelled out. */
const MIN_SPELLED = 3;
/** More words than a paper's number has. */
const MAX_WORDS = 5;
/** Words of talk: papers have numbers. */
const TALK = /\b(?:no|not|wrong|give|me|is|us|minutes?|of)\b|n't\b|'s\b/i;
/**
 * What plainly is a reading, or a line that was found: no paper's number. "Gas permit 1042" is one, and so is what is written as a single
 * word.
 */
const TOLD: readonly RegExp[] = [
  /^(?:heat|cold|air|humidity|temperature|winds?|gusts?|gusting|thunder|lightning|flash|rain)(?:'s)?[\s,:]+(?:(?:is|are|at|of|to|up|now|about|around)\s+)*-?\d/i,
  /\bhumidity\b/i,
  /\bfrom\b.+\b(?:to|along)\b/i,
  /^(?:gas|water|electric|power|sewer|overhead)(?: line)?(?:[\s,:]+\d\S*){3}/i,
  /^overhead\b.*\d\s?kv\b/i,
];

/**
 * A document by its number. Spaces and dashes are ignored, because the recognizer adds its own; the expected spelling is kept. A number
 * that was spelled out is written as it is spelled.
 */
export const parseDocument: AnswerParser<"document"> = (said, { expected }) => {
  const bare = (text: string) =>
    text
      .toLowerCase()
      .replaceAll(/\brevision\b/g, "rev")
      .replaceAll(/\b(?:alpha|alfa|bravo|charlie|delta)\b/g, (letter) => letter[0]!)
      .replaceAll(/[^\p{L}\p{N}]/gu, "");
  const named = said.replace(BEFORE, "").replace(AFTER, "").trim();
  const written = spelledOut(named);
  if (expected !== null && [named, written].some((text) => bare(text) === bare(expected))) return { kind: "document", named: expected };
  // Words without a number are talk.
  const isNumber =
    written.length <= 80 &&
    (written === named || bare(written).length >= MIN_SPELLED) &&
    /\d/.test(written) &&
    written.split(" ").length <= MAX_WORDS &&
    !TALK.test(written) &&
    !TOLD.some((told) => told.test(said));
  return isNumber ? { kind: "document", named: written } : { notUnderstood: true };
};
