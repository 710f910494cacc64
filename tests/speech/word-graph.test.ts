import { describe, expect, it } from "vitest";
import { allSteps } from "../../machines/install/job.ts";
import { numberGraph } from "../../machines/speech/en/number-graph.ts";
import { readQuantity } from "../../machines/speech/en/quantities.ts";
import { sayableAt } from "../../machines/speech/en/sayable.ts";
import { accepts, wordGraph, wordsIn } from "../../machines/speech/word-graph.ts";
import { pronunciationsOf } from "../../server/voice/pronunciations.ts";
import { frozenOf, middleBrief } from "../proof/fixtures.ts";

const said = (text: string) => text.split(" ");
const isNumber = (text: string) => accepts(numberGraph, said(text));

describe("numbers in the graph of an engine of our own", () => {
  it.each([
    "six",
    "thirty six",
    "a hundred and twelve",
    "two hundred",
    "one twenty eight",
    "one oh four",
    "nineteen",
    "four and a half",
    "five and three quarters",
    "six point five",
    "zero",
  ])("%s", (text) => {
    expect(isNumber(text)).toBe(true);
    expect(readQuantity(text).length).toBeGreaterThan(0);
  });
  it.each(["", "hundred", "twenty thirty", "six and", "thirty eleven", "point five five", "six six six six"])("not %s", (text) =>
    expect(isNumber(text)).toBe(false),
  );
});

describe("a graph of phrases", () => {
  const graph = wordGraph(["back one", "# inches", "# gusting #"], numberGraph);
  it.each(["back one", "six inches", "thirty six and a half inches", "fourteen gusting nineteen"])("takes %s", (text) =>
    expect(accepts(graph, said(text))).toBe(true),
  );
  it.each(["back", "one", "inches", "back inches", "six gusting", "six inches inches"])("does not take %s", (text) =>
    expect(accepts(graph, said(text))).toBe(false),
  );
  it("names each word once", () =>
    expect(wordsIn(wordGraph(["back one", "one back"], numberGraph)).filter((w) => w === "one" || w === "back")).toHaveLength(2));
});

it("every word that can be said at any call has a pronunciation", () => {
  const { script } = frozenOf(middleBrief());
  const places = [...allSteps(script).map((step) => ({ step, asks: null })), ...script.conditions.map((asks) => ({ step: null, asks }))];
  const phrases = new Set(places.flatMap((place) => Object.values(sayableAt(place)).flat() as string[]));
  const words = wordsIn(wordGraph([...phrases], numberGraph));
  expect(words.length).toBeGreaterThan(200);
  expect(Object.keys(pronunciationsOf(words))).toHaveLength(words.length);
});
