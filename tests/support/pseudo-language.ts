import { en } from "../../views/text/en/en.ts";
import type { Words } from "../../views/text/words.ts";

const LETTER = /\p{L}/u;

/**
 * A language that nobody speaks: English in marks, functions' texts too, so that what came through words can be told from
 * what did not. `carried` gathers what a text took in from outside of any words: phrases, as single words may be codes.
 */
export function pseudoLanguage(): { readonly words: Words; readonly carried: Set<string> } {
  const carried = new Set<string>();
  function marked<T>(said: T): T {
    if (typeof said === "string") return (said === "" ? "" : `⟦${said}⟧`) as T;
    if (typeof said === "function") return ((...given: unknown[]) => marked(told(said(...given), given))) as T;
    if (Array.isArray(said)) return said.map(marked) as T;
    if (typeof said !== "object" || said === null) return said;
    return Object.fromEntries(Object.entries(said).map(([name, one]) => [name, marked(one)])) as T;
  }
  function told<T>(text: T, given: readonly unknown[]): T {
    for (const part of given)
      if (typeof part === "string" && /\s/.test(part) && LETTER.test(outsideMarks(part)) && String(text).includes(part)) carried.add(part);
    return text;
  }
  return { words: { ...marked<Words>(en), lang: "qps" }, carried };
}

/** What stands outside of marks. A text that was cut short inside of one ends in it. */
export function outsideMarks(text: string): string {
  let deep = 0;
  let outside = "";
  for (const letter of text) {
    if (letter === "⟦") deep++;
    else if (letter === "⟧") deep = Math.max(0, deep - 1);
    else if (deep === 0) outside += letter;
  }
  return outside;
}
