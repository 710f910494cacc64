/** Words that stop the work. Crews say them at every pole, so how they are said tells a hold from a pause. */
const HOLD = /\b(?:hold|stop|freeze|halt|get out|look out|watch out|nobody move)\b/g;
/** What may stand beside one hold word without making a sentence of it: "everybody stop", "hold it", "please stop now". */
const FILLER_WORDS = new Set(
  "everybody everyone all guys hey please now it up no right there everything emergency oh whoa woah the".split(" "),
);
const PAUSE = /\b(?:hold|stop|freeze|halt|get out|look out|watch out|nobody move|whoa|woah)\b/;

/** Letters only: "stop,stop", "Stop - stop" and "STOP!" are the same words. */
const bare = (heard: string): string =>
  heard
    .toLowerCase()
    .replaceAll(/[^\p{L}']+/gu, " ")
    .trim();

/** Whether words are a hold: a hold word as the whole of what was said, with nothing but the like beside it, or two of them anywhere. */
export function isHold(heard: string): boolean {
  const words = bare(heard);
  const holds = words.match(HOLD)?.length ?? 0;
  if (holds !== 1) return holds > 1;
  return words
    .replaceAll(HOLD, " ")
    .split(" ")
    .every((word) => word === "" || FILLER_WORDS.has(word));
}

/** Whether a hold word stands in a longer sentence, or somebody says whoa: it may be meant. */
export const holdsInside = (heard: string): boolean => PAUSE.test(bare(heard));

/** Whether words heard while a text was spoken are a part of that text: then it was the guide's own voice. */
export const isPartOf = (heard: string, spoken: string): boolean => ` ${bare(spoken)} `.includes(` ${bare(heard)} `);
