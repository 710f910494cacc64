import { describe, expect, it } from "vitest";
import { onlyStops } from "../../machines/speech/meanings.ts";
import { EVERYWHERE, ears, said } from "../support/ears.ts";
import { stepWith } from "../support/steps.ts";

describe("a wind that stops the job", () => {
  const windy = ears(stepWith({ kind: "wind", belowMph: 20 }));
  it.each(["twenty gusting thirty", "wind 20 gusting 38", "wind twenty"])("%s is taken at once, from anybody and at any call", (words) => {
    for (const e of EVERYWHERE)
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
