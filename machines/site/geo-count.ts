import { MAX_PROBLEMS, SITE_LIMITS, type SiteProblem } from "./site-limits.ts";

/** Lists of numbers that a file may have: two points for each stretch at most, and as many again for what is not read, such as a `bbox`. */
const MAX_POINTS = SITE_LIMITS.maxSegments * 4;
/** Values that a file may have: the points of the largest site with heights, and a hundred properties for each line. Common practice, no source. */
const MAX_VALUES = 100_000;

/**
 * What a file has too much of, counted in its text before anything is built of it: to read six megabytes takes a second, to count them
 * twenty milliseconds. `null` where it may be read. What stands in texts is not counted, and what is no JSON is counted as it stands.
 *
 * @example tooMuchInText('{"type":"Point","coordinates":[-105,40]}') // null
 */
export function tooMuchInText(text: string): SiteProblem | null {
  const { points, values } = countIn(text);
  if (points > MAX_POINTS) return { path: "", code: "tooManySegments", value: points, limit: SITE_LIMITS.maxSegments };
  return values > MAX_VALUES ? { path: "", code: "tooMuchInFile", value: values, limit: MAX_VALUES } : null;
}

const [QUOTE, BACKSLASH, COMMA, LIST, OBJECT, MINUS, ZERO, NINE, SPACE] = [...'"\\,[{-09 '].map((one) => one.charCodeAt(0)) as [number, number, number, number, number, number, number, number, number]; // biome-ignore format: one line reads best

function countIn(text: string): { readonly points: number; readonly values: number } {
  let [points, values, isListOpen] = [0, 0, false];
  for (let at = 0; at < text.length; at++) {
    const letter = text.charCodeAt(at);
    if (letter <= SPACE) continue;
    if (isListOpen && (letter === MINUS || (letter >= ZERO && letter <= NINE))) points++;
    isListOpen = letter === LIST;
    if (letter === COMMA || letter === LIST || letter === OBJECT) values++;
    else if (letter === QUOTE) at = endOfText(text, at);
  }
  return { points, values };
}

/** Where the quote is that ends a text; the end of all where none does. */
function endOfText(text: string, from: number): number {
  let at = from + 1;
  while (at < text.length && text.charCodeAt(at) !== QUOTE) at += text.charCodeAt(at) === BACKSLASH ? 2 : 1;
  return at;
}

/** More lines and things than a site has, ground and ticket's area beside them, before any of them is looked at. */
export const tooManyOf = (list: readonly unknown[]): SiteProblem | null =>
  list.length > SITE_LIMITS.maxNeighbors + AREAS
    ? { path: "", code: "tooManyNeighbors", value: list.length, limit: SITE_LIMITS.maxNeighbors }
    : null;
const AREAS = 2;

/** Properties that one feature may have where they are read; a site knows six. Common practice, no source. */
const MAX_PROPERTIES = 200;
export const hasTooMany = (properties: Readonly<Record<string, unknown>>): SiteProblem | null => {
  const { length } = Object.keys(properties);
  return length > MAX_PROPERTIES ? { path: "", code: "tooMuchInFile", value: length, limit: MAX_PROPERTIES } : null;
};

/** Problems up to as many as are told: of a file that is wrong everywhere not all of them are kept. */
export const keptProblem = (problems: SiteProblem[], problem: SiteProblem): void => {
  if (problems.length < MAX_PROBLEMS) problems.push(problem);
};
