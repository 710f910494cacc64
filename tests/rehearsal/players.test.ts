import { describe, expect, it } from "vitest";
import { wrongIn } from "./whole.ts";

const SEEDS = Array.from({ length: 4 }, (_, i) => i + 1);

// Two thousand of them are played in players.long.test.ts and its other half.
describe("whole rehearsals", () => {
  it.each(SEEDS)("seed %i: who does what is right is never refused nor blamed, and every slip is found and explained", (seed) => {
    expect(wrongIn(seed)).toEqual([]);
  });
});
