import { dictionary } from "cmu-pronouncing-dictionary";
import { describe, expect, it } from "vitest";
import { readConfig } from "../../server/config.ts";
import { calls } from "../../views/text/en/calls.ts";
import { voice } from "../../views/text/en/voice.ts";

/** Pronunciations: the Carnegie Mellon pronouncing dictionary, General American, as published in cmu-pronouncing-dictionary 3.0.0. */
const sounds = (word: string): string[] =>
  (dictionary[word] ?? "")
    .replaceAll(/\d/g, "")
    .split(" ")
    .filter((s) => s !== "");

/** Edit distance between two pronunciations, in sounds (Levenshtein 1966). */
function apart(a: readonly string[], b: readonly string[]): number {
  let last = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (const [i, sound] of a.entries()) {
    const row = [i + 1];
    for (let j = 1; j <= b.length; j++) row[j] = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + Number(sound !== b[j - 1]));
    last = row;
  }
  return last[b.length]!;
}

const { wakeWord } = readConfig({});
const wanted = sounds(wakeWord);
const texts = Object.values(calls).flatMap((c) => [c.why, c.wrong, c.well, c.ifNot ?? "", c.say({}), c.ask?.({}) ?? ""]);

describe("the default wake word", () => {
  it("has three syllables", () => expect(dictionary[wakeWord]!.match(/\d/g)).toHaveLength(3));
  it("differs by at least three sounds from every other English word in the dictionary", () => {
    const near = Object.keys(dictionary).filter((word) => !word.startsWith(wakeWord) && Math.abs(sounds(word).length - wanted.length) < 3);
    expect(near.filter((word) => apart(wanted, sounds(word)) < 3)).toEqual([]);
  });
  it("differs in at least half of its sounds from any one to four words that the guide says", () => {
    const near = texts.flatMap((text) => {
      const words = text.toLowerCase().match(/[a-z']+/g) ?? [];
      return words.flatMap((_, at) =>
        [1, 2, 3, 4].flatMap((n) => {
          const run = words.slice(at, at + n);
          return run.length === n && run.every((w) => dictionary[w]) && apart(wanted, run.flatMap(sounds)) < wanted.length / 2
            ? [run.join(" ")]
            : [];
        }),
      );
    });
    expect(near).toEqual([]);
  });
  it("occurs in no sentence that the guide speaks, except the one that introduces it", () => {
    expect(texts.some((text) => text.toLowerCase().includes(wakeWord))).toBe(false);
    expect(voice.sayFirst(wakeWord)).toContain(wakeWord);
  });
});
