import { describe, expect, it } from "vitest";
import { allSteps } from "../../machines/install/job.ts";
import { english } from "../../machines/speech/en/english.ts";
import { sayableAt } from "../../machines/speech/en/sayable.ts";
import { understand } from "../../machines/speech/en/understand.ts";
import type { Listening } from "../../machines/speech/listening.ts";
import { NUMBER } from "../../machines/speech/sayable.ts";
import { frozenOf, middleBrief } from "../proof/fixtures.ts";

const { script } = frozenOf(middleBrief());
/** Each question once, at a call that asks it or whose work needs it. */
const places = new Map<string, Listening>(
  [
    ...allSteps(script).map((step) => ({ key: step.wordsKey, step, asks: null })),
    ...script.conditions.map((asks) => ({ key: asks.wordsKey, step: null, asks })),
  ].map(({ key, step, asks }) => [key, { step, asks }]),
);
const said = (phrase: string): string => phrase.replace(NUMBER, "three").replace(NUMBER, "four");

const isUnderstood = (phrase: string, listening: Listening): boolean => {
  const meant = understand(said(phrase), listening);
  return "intent" in meant || "question" in meant || "wind" in meant || "confirm" in meant;
};

describe("what the guide says can be said is understood", () => {
  it.each([...places.keys()])("at %s", (key) => {
    const listening = places.get(key)!;
    expect(sayableAt(listening).answers.filter((phrase) => !isUnderstood(phrase, listening))).toEqual([]);
  });
  it.each(["talk.hazards", "sheet.atHand", "straps.choked", "sides.laid", "drive.edge", "wind", "marked"])(
    "orders and questions at %s too",
    (key) => {
      const listening = places.get(key)!;
      const { orders, questions } = sayableAt(listening);
      expect([...orders, ...questions].filter((phrase) => !isUnderstood(phrase, listening))).toEqual([]);
    },
  );
  it("every hold holds", () => expect(sayableAt({ step: null, asks: null }).holds.filter((hold) => !english.isHold(hold))).toEqual([]));
  it("where nothing is asked there is nothing to answer", () => expect(sayableAt({ step: null, asks: null }).answers).toEqual([]));
});
