import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Pronunciations } from "../../views/voice/own/decoder.ts";
import { enginePackage } from "./engine-files.ts";

/**
 * Words of the trade that the dictionary lacks, and of other tongues, in its own sounds. By ear, no source. A Spanish r between vowels is
 * near to the d of "ladder", a Spanish d to the th of "then".
 */
const OWN: Pronunciations = {
  lacing: ["L EY S IH NG"],
  unlacing: ["AH N L EY S IH NG"],
  tensioning: ["T EH N SH AH N IH NG"],
  cranking: ["K R AE NG K IH NG"],
  woah: ["W OW"],
  alto: ["AA L T OW"],
  cuidado: ["K W IY D AA D OW", "K W IY DH AA DH OW"],
  para: ["P AA R AH", "P AA D AA"],
  paren: ["P AA R EH N", "P AA D EH N"],
  párale: ["P AA R AH L EY", "P AA D AA L EY"],
};

let dictionary: ReadonlyMap<string, readonly string[]> | undefined;

/** The dictionary of the model, read once: every word with the ways in which it is said. */
function words(): ReadonlyMap<string, readonly string[]> {
  if (dictionary) return dictionary;
  const read = new Map<string, string[]>();
  for (const line of readFileSync(join(enginePackage, "pocketsphinx/model/en-us/cmudict-en-us.dict"), "utf8").split("\n")) {
    const [, word, sounds] = /^(\S+?)(?:\(\d+\))? (.+)$/.exec(line) ?? [];
    if (word && sounds) read.set(word, [...(read.get(word) ?? []), sounds]);
  }
  dictionary = read;
  return read;
}

/** Whether it is known how a word is said. */
export const isPronounceable = (word: string): boolean => OWN[word] !== undefined || words().has(word);

/** The word that a phone is tried with: the wake word, or one that is known where no dictionary has that. */
export const wordToTry = (wakeWord: string): string => (isPronounceable(wakeWord) ? wakeWord : "next");

/** How words are said. Throws on one that neither the dictionary nor our own list has. */
export function pronunciationsOf(all: readonly string[]): Pronunciations {
  const ways = (word: string) => OWN[word] ?? words().get(word);
  const unknown = all.filter((word) => !ways(word));
  if (unknown.length > 0) throw new Error(`no dictionary says how to say ${unknown.join(", ")}`);
  return Object.fromEntries(all.map((word) => [word, ways(word)!]));
}
