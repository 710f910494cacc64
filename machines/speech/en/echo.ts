import { plain } from "../plain.ts";

const wordsOf = (text: string): string[] =>
  plain(text)
    .split(/[^\p{L}\p{N}']+/u)
    .filter((word) => word !== "");
/** Fewer words than this are an echo only if all of them are. */
const MIN_WORDS = 3;

/**
 * Whether words heard while the guide spoke a text are that text come back: a stretch of it, with at most one word misheard. Of
 * one or two words all have to be there.
 *
 * @example isEchoOf("thunder the top", "Two hands under the top.") // true
 */
export function isEchoOf(heard: string, spoken: string): boolean {
  const [words, text] = [wordsOf(heard), wordsOf(spoken)];
  const misheard = words.length < MIN_WORDS ? 0 : 1;
  return text.some((_, at) => at + words.length <= text.length && words.filter((word, i) => word !== text[at + i]).length <= misheard);
}
