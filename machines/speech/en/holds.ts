import { phrases } from "../phrases.ts";
import { isAlarm, isEverybodyOut } from "./alarms.ts";

/** Words that stop work. Crews say them at every pole, so context decides between a hold and a pause. */
const HOLD = /\b(?:hold|stop|freeze|halt|get out|look out|watch out|nobody move)\b/g;
/** Words allowed next to a single hold word: "everybody stop", "hold it", "please stop now". */
const FILLER_WORDS = new Set(
  "everybody everyone all guys hey please now it up no right there everything emergency oh whoa woah the a second sec minute on out".split(
    " ",
  ),
);
const PAUSE = /\b(?:hold|stop|freeze|halt|get out|look out|watch out|nobody move|whoa|woah)\b/;

/** What is said at a pole and on the rope, as it is stopped: each an expansion (see `phrases`). In the tongues of most crews. */
export const HOLDS = {
  work: "stop ([the] (work | working) | pulling | lifting | raising | driving | cranking | tensioning | tightening | lacing | lowering | pushing | hammering | easing | moving | unlacing | folding | walking)",
  /** A thing to be held in the hand is none of these: "hold that rope". */
  thing: "(hold | stop) the (lift | raise | pull | work | drop | lower | driver | machine | line | pole | crank | job)",
  still: "don't [anybody | anyone | nobody] move | do not move | stand still | wait wait [wait] | down tools | tools down",
  away: "get out from under [there | it | that | the (tent | top | cloth)] | shut it down | stop what you're doing",
  whoa: "(whoa | woah) (whoa | woah) [whoa | woah]",
  spanish: "cuidado [cuidado] | alto [alto] | para [para] | párale [párale] | paren [paren]",
} as const;

/** Makes "stop,stop", "Stop - stop", and "stop stop" the same words. */
const lettersOnly = (heard: string): string =>
  heard
    .toLowerCase()
    .replaceAll("’", "'")
    .replaceAll(/[^\p{L}']+/gu, " ")
    .trim();
const SAID = new Set(Object.values(HOLDS).flatMap((hold) => phrases(hold)));
/** Words before and after a hold that change nothing about it. */
const AROUND =
  /^(?:(?:everybody|everyone|hey|guys|okay|ok|oh|no|please) )+|(?: (?:now|guys|everybody|everyone|please|right now|right there))+$/g;

/** A hold cried first, and then why: "stop, somebody's foot's in the rope", "whoa stop it's going over". */
const FIRST =
  /^(?:(?:whoa|woah|hey|no|everybody|everyone|guys|oh|okay)[\s,.!-]+)*(?:(?:stop|hold|freeze|halt)(?: it| up)?\s*[,.!;:-]+\s+\S|stop (?:somebody|someone|she's|he's|it's|they're|there's|we|i|that's|the)\b)/;

/**
 * Whether words are a hold: one hold word with nothing but filler words, a hold as crews say it, or two hold words anywhere.
 *
 * @example isHold("everybody stop!") // true
 */
export function isHold(heard: string): boolean {
  if (isEverybodyOut(heard)) return false;
  const words = lettersOnly(heard);
  if (SAID.has(words.replaceAll(AROUND, ""))) return true;
  if (!isAlarm(heard) && FIRST.test(heard.toLowerCase().replaceAll("’", "'"))) return true;
  const holds = words.match(HOLD)?.length ?? 0;
  if (holds !== 1) return holds > 1;
  return words
    .replaceAll(HOLD, " ")
    .split(" ")
    .every((word) => word === "" || FILLER_WORDS.has(word));
}

/**
 * Whether a hold word, or "whoa", occurs in a sentence; it may be meant as a hold.
 *
 * @example holdsInside("hold that rope") // true
 */
export const holdsInside = (heard: string): boolean => PAUSE.test(lettersOnly(heard).replaceAll("get hold of", " "));

/**
 * Whether words heard while the guide spoke a text are part of that text, so that it heard its own voice.
 *
 * @example isPartOf("stakes showing", "Six stakes showing at A.") // true
 */
export const isPartOf = (heard: string, spoken: string): boolean => ` ${lettersOnly(spoken)} `.includes(` ${lettersOnly(heard)} `);
