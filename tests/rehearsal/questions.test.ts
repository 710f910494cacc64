import { describe, expect, it } from "vitest";
import { freeze } from "../../machines/install/freeze.ts";
import { PHASES } from "../../machines/install/step.ts";
import { askable, ITEMS, isRight, questionFor } from "../../machines/rehearsal/questions/items.ts";
import { KINDS } from "../../machines/rehearsal/questions/question.ts";
import { becauseTexts, questionTexts } from "../../views/pages/learn/shown.ts";
import { en } from "../../views/text/en/en.ts";
import { briefFor, frozenFor, nothingKnown } from "../support/briefs.ts";
import { expectRight, rightOf } from "../support/questions.ts";
import { eighty, twenty } from "../tent/tents.ts";

const NONSENSE = /undefined|NaN|null|\[object/;
const SEEDS = [1, 2, 3];
const jobs = {
  "an 80 by 100": frozenFor(eighty),
  "a 20 by 20": frozenFor(twenty),
  "a 20 by 20 of which nothing is known": freeze(nothingKnown(briefFor(twenty))),
};

describe("the items", () => {
  it("are 40 to 90, in every phase and of every kind, each named once", () => {
    expect(ITEMS.length).toBeGreaterThanOrEqual(40);
    expect(ITEMS.length).toBeLessThanOrEqual(90);
    expect([...new Set(ITEMS.map(({ phase }) => phase))]).toEqual([...PHASES]);
    expect(new Set(ITEMS.map(({ kind }) => kind))).toEqual(new Set(KINDS));
    expect(new Set(ITEMS.map(({ id }) => id)).size).toBe(ITEMS.length);
  });
  it("are nearly all of them asked about a tent with seams, and most about the smallest", () => {
    expect(askable(jobs["an 80 by 100"]).length).toBeGreaterThan(80);
    expect(askable(jobs["a 20 by 20"]).length).toBeGreaterThan(60);
  });
});

describe.each(Object.entries(jobs))("every question about %s", (_name, frozen) => {
  const questions = askable(frozen).flatMap(({ id }) => SEEDS.map((seed) => questionFor(frozen, id, seed)!));

  it("has its right answer among others, each unlike the rest, and in words", () => {
    for (const question of questions) {
      const { ask, about, options } = questionTexts(question, en);
      expect(options.length, question.item).toBeGreaterThanOrEqual(3);
      expect(options.length, question.item).toBeLessThanOrEqual(4);
      expect(new Set(options.map(({ text }) => text)).size, question.item).toBe(options.length);
      expect(rightOf(question), question.item).not.toContain(undefined);
      expect(isRight(question, question.right)).toBe(true);
      expect(ask, question.item).not.toBe(question.ask);
      expect(ask.split(/\s+/).length, ask).toBeLessThanOrEqual(20);
      for (const text of [ask, about ?? "", ...options.map((option) => option.text)]) expect(text, question.item).not.toMatch(NONSENSE);
    }
  });
  it("says why", () => {
    expect(questions.filter((question) => becauseTexts(question, en) === null).map(({ item }) => item)).toEqual([]);
  });
  it("is right as the plan and the script have it, worked out in another way", () => {
    for (const question of questions) expectRight(frozen, question);
  });
});

it("a question is the same for the same seed", () => {
  const asked = () => askable(jobs["a 20 by 20"]).map(({ id }) => questionFor(jobs["a 20 by 20"], id, 9));
  expect(asked()).toEqual(asked());
});

it("an item that is none, and one that a tent has nothing for, make no question", () => {
  expect(questionFor(jobs["a 20 by 20"], "seam.edges", 1)).toBeNull();
  expect(questionFor(jobs["a 20 by 20"], "__proto__", 1)).toBeNull();
});

it("the place of the right answer gives nothing away", () => {
  const places = Array.from({ length: 200 }, (_, seed) => questionFor(jobs["a 20 by 20"], "stakes.corner", seed)!.right[0]!);
  for (const place of ["1", "2", "3", "4"]) expect(places.filter((one) => one === place).length).toBeGreaterThan(25);
});
