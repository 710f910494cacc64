import { describe, expect, it } from "vitest";
import { wrongIn } from "./whole.ts";

/** Half of two thousand rehearsals, fifty to a test; the other half is in a file of its own, for the second processor. */
const FIRST = 1001;
const IN_ALL = 1000;
const A_TEST = 50;
const STARTS = Array.from({ length: IN_ALL / A_TEST }, (_, i) => FIRST + i * A_TEST);

describe("two thousand rehearsals, the second half", () => {
  it.each(STARTS)("from seed %i on: who does what is right is never refused nor blamed, and every slip is found and explained", (start) => {
    expect(Array.from({ length: A_TEST }, (_, i) => start + i).flatMap(wrongIn)).toEqual([]);
  });
});
