import { describe, expect, it } from "vitest";
import type { Step } from "../../machines/install/step.ts";
import { english } from "../../machines/speech/en/english.ts";
import { understand as understandAt } from "../../machines/speech/en/understand.ts";
import { hear, type ListeningContext } from "../../machines/speech/hear.ts";
import { rectangle, TAPING } from "../support/marks.ts";
import { stepWith } from "../support/steps.ts";

const understand = (said: string, step: Step) => understandAt(said, { step, asks: null });
const squaring = stepWith({ kind: "lengths", want: rectangle(60, 120), inPer50Ft: 1, taping: TAPING }, { wordsKey: "squared" });
const ft = (lengths: Record<string, number>) => ({ intent: { type: "answer", gate: "here", value: { kind: "lengths", ft: lengths } } });
const loading = stepWith({
  kind: "counts",
  as: null,
  want: { perimeterStake: 96, stakePlate: 44, perimeterStrap: 44, sidePole: 30, polePlate: 9, interiorStake: 9, interiorStrap: 9 },
});
const ears: ListeningContext = {
  listening: { step: squaring, asks: null },
  attention: "working",
  waiting: false,
  wakeWord: "albatross",
  stopGustMph: 30,
  language: english,
};
const n = (counts: Record<string, number>) => ({ intent: { type: "answer", gate: "here", value: { kind: "counts", n: counts } } });

describe("a length called off the tape", () => {
  it.each([
    ["A to B one twenty", { AB: 120 }],
    ["AB 120", { AB: 120 }],
    ["A B, 120 feet", { AB: 120 }],
    ["a. b. 120 feet", { AB: 120 }],
    ["A to C is 133 foot 3 and a quarter", { AC: 133.270833 }],
    ["diagonal BD 133 feet 3 1/4", { BD: 133.270833 }],
    [`A to C, 133' 3 1/4"`, { AC: 133.270833 }],
    ["C to A 134 ft 2 in", { AC: 134.166667 }],
    ["D A 60", { DA: 60 }],
    ["AD 60 ft 1/8 in", { DA: 60.010417 }],
    ["B to C eighteen point three metres", { BC: 60.03937 }],
    ["A to B 120 feet, B to C 60 feet", { AB: 120, BC: 60 }],
    ["AB 120 BC 60 CD 118", { AB: 120, BC: 60, CD: 118 }],
    ["DC 118 ft then AC 133 ft 3 in", { CD: 118, AC: 133.25 }],
    ["Alpha to Charlie, one thirty-three foot three", { AC: 133.25 }],
    ["corner Alpha to corner Charlie 133 foot 3", { AC: 133.25 }],
    ["diagonal Bravo Delta 133 feet 3 1/4", { BD: 133.270833 }],
    ["Alpha Bravo 120, Bravo Charlie 60, Charlie-Delta 118", { AB: 120, BC: 60, CD: 118 }],
    ["alpha bravo one twenty bravo charlie sixty", { AB: 120, BC: 60 }],
  ])("%s", (said, lengths) => expect(understand(said, squaring)).toEqual(ft(lengths)));

  it("what is wanted chooses no reading: both are told, and asked again", () => {
    for (const [said, n] of [
      ["A to D sixty foot and an eighth", [60.125, 60.010417]],
      ["A to B 10 4", [104, 10.333333]],
      ["A to B 12 0", [120, 12]],
      ["A to C one thirty-three and a quarter of an inch", [11.104167, 133.020833]],
    ] as const)
      expect(understand(said, squaring), said).toEqual({ ambiguous: { n, unit: "ft" } });
  });
  it("hundredths of a foot are said with a point", () => {
    expect(understand("B to C one twenty", squaring)).toEqual(ft({ BC: 120 }));
    expect(understand("B to C sixty point two five", squaring)).toEqual(ft({ BC: 60.25 }));
  });
  it.each([
    ["A to B eighty eighty-one", 8081],
    ["B to C 600 feet", 600],
    ["A to D three fifty", 350],
  ])("%s is longer than twice the field: it is asked again", (said, n) =>
    expect(understand(said, squaring)).toEqual({ ambiguous: { n: [n], unit: "ft" } }),
  );
  it.each([
    ["A to B one oh four six", 1046],
    ["A to B one oh three one oh three", 103103],
  ])("%s is that too, or ends in inches", (said, n) =>
    expect(understand(said, squaring)).toMatchObject({ ambiguous: { n: expect.arrayContaining([n]), unit: "ft" } }),
  );
  it.each(["A to C one twenty eight and three quarter inches", "A to C one twenty-eight and three quarters", "AC 128 and 3/4"])(
    "%s: a part of a foot, or of an inch with the feet left out: it is asked again",
    (said) => expect(understand(said, squaring)).toMatchObject({ ambiguous: { unit: "ft" } }),
  );
  it.each(["sixty", "A to A 60", "A to E 60", "corner C is in the hedge", "B to C", "A to B minus 3 feet", "AB 120 AB 118"])(
    "%s is no length",
    (said) => expect(understand(said, squaring)).toEqual({ notUnderstood: true }),
  );
  it("degrees are a wrong unit", () => expect(understand("A to B 10 degrees", squaring)).toMatchObject({ wrongUnit: { wants: "ft" } }));
  it("is binding, so with the talk button it is read back", () =>
    expect(hear({ alternatives: ["A to B one twenty"], talk: true }, ears)).toMatchObject({
      meant: ft({ AB: 120 }),
      readBack: true,
    }));
  it("is chatter without the talk button", () =>
    expect(hear({ alternatives: ["A to B one twenty"], talk: false }, ears)).toMatchObject({
      leftAlone: "wakeWord",
    }));
});

describe("items counted off the list", () => {
  it.each([
    ["forty four stake plates", { stakePlate: 44 }],
    ["stake plates 44", { stakePlate: 44 }],
    ["pole plates: nine", { polePlate: 9 }],
    ["96 perimeter stakes", { perimeterStake: 96 }],
    ["forty four ratchets", { perimeterStrap: 44 }],
    ["no pole plates", { polePlate: 0 }],
    ["side poles thirty", { sidePole: 30 }],
  ])("%s", (said, counts) => expect(understand(said, loading)).toEqual(n(counts)));
  it.each(["ninety six stakes", "44 plates", "forty four", "44 gas cookers", "3 quarter poles", "four and a half side poles"])(
    "%s: two kinds, or none, on this list",
    (said) => expect(understand(said, loading)).not.toHaveProperty("ask"),
  );
});
