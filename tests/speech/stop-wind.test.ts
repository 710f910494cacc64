import { describe, expect, it } from "vitest";
import { exactly, exactlyEach, yes } from "../../machines/install/gates.ts";
import type { Step } from "../../machines/install/step.ts";
import { english } from "../../machines/speech/en/english.ts";
import { hear, type ListeningContext } from "../../machines/speech/hear.ts";
import { onlyStops } from "../../machines/speech/meanings.ts";
import { stepWith } from "../support/steps.ts";

const ears = (step: Step | null, more: Partial<ListeningContext> = {}): ListeningContext => ({
  listening: { step, asks: null },
  attention: "working",
  waiting: false,
  wakeWord: "albatross",
  stopGustMph: 30,
  language: english,
  ...more,
});
const warned = stepWith(yes, { wordsKey: "warning" });
const everywhere = [
  ears(null),
  ears(stepWith(null, { wordsKey: "lace.ring" })),
  ears(warned, { attention: "held" }),
  ears(stepWith(exactly(6), { wordsKey: "under.out" }), { waiting: true }),
  ears(stepWith({ kind: "wind", belowMph: 20 })),
  ears(stepWith(exactlyEach({ AB: 11, BC: 9 }))),
];
const said = (words: string | string[], talk: boolean, e: ListeningContext) => hear({ alternatives: [words].flat(), talk }, e);

describe("a wind that stops the job", () => {
  const windy = ears(stepWith({ kind: "wind", belowMph: 20 }));
  it.each(["twenty gusting thirty", "wind 20 gusting 38", "wind twenty"])("%s is taken at once, from anybody and at any call", (words) => {
    for (const e of everywhere)
      for (const talk of [false, true]) expect(said(words, talk, e)).toMatchObject({ meant: { wind: {} }, readBack: false });
  });
  it("one below the limit is binding, as ever", () => {
    expect(said("fourteen gusting twenty-nine", false, windy)).toMatchObject({ leftAlone: "wakeWord" });
    expect(said("fourteen gusting twenty-nine", true, windy)).toMatchObject({ readBack: true });
    expect(said("nineteen", true, windy)).toMatchObject({ meant: { wind: { mph: 19, gustMph: null } }, readBack: true });
    expect(said("thirty, no gusts", true, { ...windy, stopGustMph: 31 })).toMatchObject({ readBack: true });
  });
  it("a bare number is one only with the button or the wake word", () => {
    expect(said("forty", false, windy)).toMatchObject({ leftAlone: "wakeWord" });
    expect(said("forty", true, windy)).toMatchObject({ meant: { wind: { mph: 40 } }, readBack: false });
    expect(said(["fifty", "fifteen"], true, windy)).toMatchObject({ meant: { notUnderstood: true } });
    expect(said(["fight", "forty"], true, windy)).toMatchObject({ meant: { notUnderstood: true } });
  });
  it("a mean without its gust counts as what it may gust to", () => {
    expect(onlyStops({ wind: { mph: 20, gustMph: null, fromDeg: null, taken: null } }, 30)).toBe(true);
    expect(onlyStops({ wind: { mph: 20, gustMph: 20, fromDeg: null, taken: null } }, 30)).toBe(false);
  });
});
