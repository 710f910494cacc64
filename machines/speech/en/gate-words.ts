import { own } from "../../lookup/own.ts";
import { phrases } from "../phrases.ts";
import { anchorsSet } from "./gates/anchors-set.ts";
import { conditions } from "./gates/conditions.ts";
import { inspected } from "./gates/inspected.ts";
import { interiorRaised } from "./gates/interior-raised.ts";
import { perimeterRaised } from "./gates/perimeter-raised.ts";
import { sectionsJoined } from "./gates/sections-joined.ts";
import { standing } from "./gates/standing.ts";
import { struck } from "./gates/struck.ts";
import { tensioned } from "./gates/tensioned.ts";
import { utilitiesMarked } from "./gates/utilities-marked.ts";
import type { GateWords, GateWordsByKey } from "./gates/words.ts";
import { inFull, wordsOf } from "./talk.ts";

/** By the key of the question's words. */
export const GATE_WORDS: GateWordsByKey = {
  ...utilitiesMarked,
  ...anchorsSet,
  ...sectionsJoined,
  ...perimeterRaised,
  ...interiorRaised,
  ...tensioned,
  ...inspected,
  ...standing,
  ...struck,
  ...conditions,
};

/** The same, ready to be looked up: phrases as lists of words, the longest first, and every word there is. */
export type Vocabulary = {
  readonly things: ReadonlySet<string>;
  readonly so: readonly (readonly string[])[];
  readonly not: readonly (readonly string[])[];
  readonly all: ReadonlySet<string>;
};

const listed = (expansion = ""): string[][] =>
  phrases(expansion)
    .map((phrase) => wordsOf(inFull(phrase)))
    .sort((a, b) => b.length - a.length);
const EMPTY: GateWords = {};
const known = new Map<string, Vocabulary>();

/** The words of a gate; none where a question has none of its own. */
export function vocabularyOf(wordsKey: string): Vocabulary {
  const before = known.get(wordsKey);
  if (before) return before;
  const { things, so, not } = own(GATE_WORDS, wordsKey) ?? EMPTY;
  const [soPhrases, notPhrases] = [listed(so), listed(not)];
  const thingWords = new Set(listed(things).flat());
  const made = {
    things: thingWords,
    so: soPhrases,
    not: notPhrases,
    all: new Set([...thingWords, ...soPhrases.flat(), ...notPhrases.flat()]),
  };
  known.set(wordsKey, made);
  return made;
}

/** What is left of words once the phrases have been taken out of them, or null where none was there. */
export function withoutPhrases(words: readonly string[], all: readonly (readonly string[])[]): readonly string[] | null {
  let left = [...words];
  let found = false;
  for (const phrase of all) {
    for (let at = left.findIndex((_, i) => phrase.every((word, k) => left[i + k] === word)); at >= 0; ) {
      left = [...left.slice(0, at), ...left.slice(at + phrase.length)];
      found = true;
      at = left.findIndex((_, i) => phrase.every((word, k) => left[i + k] === word));
    }
  }
  return found ? left : null;
}
