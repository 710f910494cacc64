/** Words that stop work. Crews say them at every pole, so context decides between a hold and a pause. */
const HOLD = /\b(?:hold|stop|freeze|halt|get out|look out|watch out|nobody move)\b/g;
/** Words allowed next to a single hold word: "everybody stop", "hold it", "please stop now". */
const FILLER_WORDS = new Set(
  "everybody everyone all guys hey please now it up no right there everything emergency oh whoa woah the".split(" "),
);
const PAUSE = /\b(?:hold|stop|freeze|halt|get out|look out|watch out|nobody move|whoa|woah)\b/;

/** Makes "stop,stop", "Stop - stop", and "stop stop" the same words. */
const lettersOnly = (heard: string): string =>
  heard
    .toLowerCase()
    .replaceAll(/[^\p{L}']+/gu, " ")
    .trim();

/**
 * Whether words are a hold: one hold word with nothing but filler words, or two hold words anywhere.
 *
 * @example isHold("everybody stop!") // true
 */
export function isHold(heard: string): boolean {
  const words = lettersOnly(heard);
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
export const holdsInside = (heard: string): boolean => PAUSE.test(lettersOnly(heard));

/**
 * Whether words heard while the guide spoke a text are part of that text, so that it heard its own voice.
 *
 * @example isPartOf("stakes showing", "Six stakes showing at A.") // true
 */
export const isPartOf = (heard: string, spoken: string): boolean => ` ${lettersOnly(spoken)} `.includes(` ${lettersOnly(heard)} `);
