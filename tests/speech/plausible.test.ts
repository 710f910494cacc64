import { describe, expect, it } from "vitest";
import { type Check, exactly, measure, measures } from "../../machines/install/gates.ts";
import { understand } from "../../machines/speech/en/understand.ts";
import { stepWith } from "../support/steps.ts";

const at = (said: string, wordsKey: string, asks: Check) => understand(said, { step: stepWith(asks, { wordsKey }), asks: null });

describe("a bare number beyond ten times what a gate allows is asked again", () => {
  it.each([
    ["sixty-five", "drive.edge", measure("in", 0, 6), 65],
    ["65", "drive.edge", measure("in", 0, 6), 65],
    ["nine hundred", "nearest.mark", measure("in", 24, null), 900],
    ["three sixty-six", "sides.laid", exactly(36), 366],
    ["two hundred", "overhead.line", measure("ft", 10, null), 200],
  ] as const)("%s at %s", (said, key, asks, n) => expect(at(said, key, asks)).toMatchObject({ ambiguous: { n: [n] } }));
  it("of several, those are named", () =>
    expect(at("AB 180, BC 4", "lean.outward", measures("deg", ["AB", "BC", "CD", "DA"], 0, 15))).toMatchObject({
      ambiguous: { n: [180], unit: "deg" },
    }));
});

describe("with its unit it is meant as it was said", () => {
  it.each([
    ["fifty feet", "nearest.mark", measure("in", 24, null), 600],
    ["65 inches", "drive.edge", measure("in", 0, 6), 65],
    ['65"', "drive.edge", measure("in", 0, 6), 65],
  ] as const)("%s at %s", (said, key, asks, n) =>
    expect(at(said, key, asks)).toMatchObject({ intent: { type: "answer", value: { kind: "measure", n } } }),
  );
});

it("a number within ten times is none of that, good or not", () => {
  expect(at("fifty-nine", "drive.edge", measure("in", 0, 6))).toMatchObject({ intent: { value: { n: 59 } } });
  expect(at("two hundred", "nearest.mark", measure("in", 24, null))).toMatchObject({ intent: { value: { n: 200 } } });
});

it.each(["one oh four six", "one two eight three"])("%s off a tape in feet may end in inches, and is asked again", (said) =>
  expect(at(said, "overhead.line", measure("ft", 10, null))).toMatchObject({ ambiguous: { n: [expect.any(Number), expect.any(Number)] } }),
);
