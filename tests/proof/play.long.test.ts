import { expect, it } from "vitest";
import { briefOf, frozenOf, middleBrief, SMALL } from "./fixtures.ts";
import { play } from "./play.ts";

it.each([
  ["a small tent", frozenOf(briefOf(SMALL)), 1],
  ["a middle tent", frozenOf(middleBrief()), 2],
] as const)("five thousand commands in any order, by anybody, in any weather, leave every invariant of %s standing", (_, frozen, seed) => {
  const { found, calls } = play(frozen, seed);
  expect(found).toEqual([]);
  expect(calls).toBeGreaterThan(60);
});
