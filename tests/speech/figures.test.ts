import { describe, expect, it } from "vitest";
import { figures as asksFigures, each, exactlyEach, measures } from "../../machines/install/gates.ts";
import type { Step } from "../../machines/install/step.ts";
import { understand } from "../../machines/speech/en/understand.ts";
import { stepWith } from "../support/steps.ts";

const EDGES = ["AB", "BC", "CD", "DA"];
const counted = stepWith(exactlyEach({ stakes: 36, plates: 18 }), { wordsKey: "count.edge" });
const rings = stepWith(exactlyEach({ AB: 11, BC: 9, CD: 11, DA: 9 }), { wordsKey: "rings" });
const lean = stepWith(measures("deg", EDGES, 0, 15), { wordsKey: "lean.outward" });
const plumb = stepWith(measures("in", EDGES, 0, 1.7), { wordsKey: "plumb" });
const size = stepWith(asksFigures("in", { thinnest: { from: 0.9375, to: null }, shortest: { from: 41, to: null } }), {
  wordsKey: "stakes.size",
});

const pulled = stepWith(
  asksFigures("lbf", { softest: { from: 735, to: null }, second: { from: 735, to: null }, third: { from: 735, to: null } }),
  {
    wordsKey: "anchors.pulls",
  },
);

const wire = stepWith(asksFigures("ft", { sidePole: { from: 18, to: null }, insidePole: { from: 35, to: null } }), {
  wordsKey: "overhead.wire",
});

const at = (said: string, step: Step) => understand(said, { step, asks: null });
const answer = (value: object) => ({ intent: { type: "answer", gate: "here", value } });
const figures = (unit: string, n: Record<string, number>) => answer({ kind: "figures", unit, n });

describe("how far a wire is from poles", () => {
  it.each([
    ["side pole forty, inside pole fifty-five"],
    ["forty feet and fifty-five feet"],
    ["forty to the side pole, fifty-five to the inside pole"],
    ["inside pole fifty-five, nearest side pole forty"],
    ["center pole fifty-five feet, side forty feet"],
  ])("%s", (said) => expect(at(said, wire)).toMatchObject(figures("ft", { sidePole: 40, insidePole: 55 })));
  it("of one pole leaves the other to be asked", () =>
    expect(at("side pole forty feet", wire)).toMatchObject(figures("ft", { sidePole: 40 })));
});

describe("several numbers in the order asked", () => {
  it.each([
    ["thirty-six and eighteen", counted, "count", { stakes: 36, plates: 18 }],
    ["36 and 18", counted, "count", { stakes: 36, plates: 18 }],
    ["36 18", counted, "count", { stakes: 36, plates: 18 }],
    ["Thirty six, eighteen.", counted, "count", { stakes: 36, plates: 18 }],
    ["36 then 18", counted, "count", { stakes: 36, plates: 18 }],
    ["one hundred twelve, fifty-six", counted, "count", { stakes: 112, plates: 56 }],
    ["eleven nine", counted, "count", { stakes: 11, plates: 9 }],
    ["ten, eight, ten, eight", rings, "count", { AB: 10, BC: 8, CD: 10, DA: 8 }],
    ["10,8,10,8", rings, "count", { AB: 10, BC: 8, CD: 10, DA: 8 }],
    ["11 9 11 9", rings, "count", { AB: 11, BC: 9, CD: 11, DA: 9 }],
    ["3 4 3 4", rings, "count", { AB: 3, BC: 4, CD: 3, DA: 4 }],
    ["eleven, nine, eleven, and nine", rings, "count", { AB: 11, BC: 9, CD: 11, DA: 9 }],
    ["five degrees, three, four, six", lean, "deg", { AB: 5, BC: 3, CD: 4, DA: 6 }],
    ["5 degrees 3 4 6", lean, "deg", { AB: 5, BC: 3, CD: 4, DA: 6 }],
    ["half an inch, one, an inch and a half, none", plumb, "in", { AB: 0.5, BC: 1, CD: 1.5, DA: 0 }],
    ["1/2 1 1 1/2 0", plumb, "in", { AB: 0.5, BC: 1, CD: 1.5, DA: 0 }],
    ["seven eighths and forty-one and a half", size, "in", { thinnest: 0.875, shortest: 41.5 }],
    ["7/8, 41 1/2", size, "in", { thinnest: 0.875, shortest: 41.5 }],
    ["one inch, three and a half feet", size, "in", { thinnest: 1, shortest: 42 }],
  ])("%s", (said, step, unit, n) => expect(at(said, step)).toEqual(figures(unit, n)));
});

describe("several numbers by name, and some of them", () => {
  it.each([
    ["36 stakes, 18 plates", counted, "count", { stakes: 36, plates: 18 }],
    ["36 stakes and 18 stake plates", counted, "count", { stakes: 36, plates: 18 }],
    ["stakes thirty-six, plates eighteen", counted, "count", { stakes: 36, plates: 18 }],
    ["18 plates 36 stakes", counted, "count", { stakes: 36, plates: 18 }],
    ["18 plates", counted, "count", { plates: 18 }],
    ["AB ten, BC eight", rings, "count", { AB: 10, BC: 8 }],
    ["A B eleven", rings, "count", { AB: 11 }],
    ["Alpha Bravo eleven", rings, "count", { AB: 11 }],
    ["alpha bravo ten bravo charlie eight", rings, "count", { AB: 10, BC: 8 }],
    ["Charlie-Delta has 11 and Delta-Alpha has 9", rings, "count", { CD: 11, DA: 9 }],
    ["the Alpha Bravo side eleven", rings, "count", { AB: 11 }],
    ["eleven on AB, nine on BC", rings, "count", { AB: 11, BC: 9 }],
    ["eleven rings on Alpha Bravo", rings, "count", { AB: 11 }],
    ["AB eleven good, BC nine good", rings, "count", { AB: 11, BC: 9 }],
    ["Alpha Bravo five degrees out", lean, "deg", { AB: 5 }],
    ["thinnest seven eighths, shortest forty-one and a half", size, "in", { thinnest: 0.875, shortest: 41.5 }],
    ["the shortest one is 41 inches", size, "in", { shortest: 41 }],
    ["thinnest 25 mm, shortest 1050 mm", size, "in", { thinnest: 0.984252, shortest: 41.338583 }],
  ])("%s", (said, step, unit, n) => expect(at(said, step)).toEqual(figures(unit, n)));
});

describe("pulls on three stakes", () => {
  const all = { softest: 640, second: 980, third: 1120 };
  it.each([
    ["softest six forty, second nine eighty, third eleven twenty", all],
    ["third eleven twenty, second nine eighty, softest six forty", all],
    ["six forty, nine eighty, eleven twenty", all],
    ["640 980 1120", all],
    ["softest 640 pounds second 980 pounds third 1120 pounds", all],
    ["six forty at the softest, nine eighty at the second, eleven twenty at the third", all],
    ["the softest spot held six hundred and forty pounds", { softest: 640 }],
    ["the soft spot let go at six forty", { softest: 640 }],
    ["second stake moved at nine eighty", { second: 980 }],
    ["the third pull held eleven twenty", { third: 1120 }],
    ["third one's eleven twenty", { third: 1120 }],
    ["softest 2.9 kN, second 4.4 kN, third 5 kN", { softest: 651.945935, second: 989.15935, third: 1124.044715 }],
  ])("%s", (said, n) => expect(at(said, pulled)).toEqual(figures("lbf", n)));
  it.each([
    "one second",
    "just a second",
    "wait a second",
    "softest one second 980",
    "second six forty, second nine eighty",
    "softest didn't hold 640",
    "softest never held 640",
    "six forty nine eighty eleven twenty",
    "they held",
  ])("%s is none of them", (said) => expect(at(said, pulled)).toEqual({ notUnderstood: true }));
});

describe("numbers that could be others are never guessed", () => {
  it.each([
    ["36", counted],
    ["thirty-six", counted],
    ["36 18 4", counted],
    ["a hundred and twenty", counted],
    ["one twenty eight", counted],
    ["thirty six eighteen", counted],
    ["twenty eight ten", stepWith(exactlyEach({ a: 1, b: 1, c: 1 }))],
    ["ten eight ten eight", rings],
    ["11 9 11", rings],
    ["AB eleven BC", rings],
    ["eleven AB nine", rings],
    ["AB eleven, AB nine", rings],
    ["AB eleven, nine", rings],
    ["AC eleven", rings],
    ["AB3 eleven", rings],
    ["AB eleven and a half", rings],
    ["AB minus two", rings],
    ["eleven all round", rings],
    ["yes", rings],
    ["all good", counted],
    ["36 stakes and no more", counted],
    ["1, 2, 3, 40 mm", plumb],
    ["three feet, six inches", size],
    ["3 ft 6 in", size],
    ["five and a half", size],
    ["Alpha Bravo five degrees toward the tent", lean],
    ["one two three up", rings],
  ])("%s", (said, step) => expect(at(said, step)).toEqual({ notUnderstood: true }));
  it("a number with two readings is asked again, with both", () =>
    expect(at("AB six two, BC nine", plumb)).toMatchObject({ ambiguous: { unit: "in" } }));
  it("a long run of numbers that ends in talk takes no time", () =>
    expect(at(`${"one ".repeat(38)}banana`, rings)).toEqual({ notUnderstood: true }));
  it("another unit is named", () => expect(at("AB 5 in", lean)).toMatchObject({ wrongUnit: { gave: "in", wants: "deg" } }));
});

const answers = stepWith(each(["electric", "gas", "water", "communication"]), { wordsKey: "locate.answers" });
const lines = stepWith(each(["irrigation", "lighting", "septic"]), { wordsKey: "private.lines" });

describe("a yes or no for names on a list", () => {
  it.each([
    ["gas yes", answers, { gas: true }],
    ["electric clear, water marked, gas marked", answers, { electric: true, water: true, gas: true }],
    ["electric clear water marked gas marked", answers, { electric: true, water: true, gas: true }],
    ["power is clear and gas is marked", answers, { electric: true, gas: true }],
    ["gas and water marked", answers, { gas: true, water: true }],
    ["the gas company got it", answers, { gas: true }],
    ["phone, cable, fiber marked", answers, { communication: true }],
    ["gas clear, phone cable and fiber marked, water clear", answers, { gas: true, communication: true, water: true }],
    ["communications marked", answers, { communication: true }],
    ["phone clear", answers, { communication: true }],
    ["cable all clear", answers, { communication: true }],
    ["fiber nothing yet", answers, { communication: false }],
    ["water no, gas yes", answers, { water: false, gas: true }],
    ["gas not yet", answers, { gas: false }],
    ["gas line marked", answers, { gas: true }],
    ["irrigation none, lighting none, septic yes", lines, { irrigation: true, lighting: true, septic: true }],
    ["sprinklers no lines", lines, { irrigation: true }],
    ["septic no", lines, { septic: false }],
    ["septic ruled out", lines, { septic: true }],
    ["lighting located", lines, { lighting: true }],
    ["septic not located", lines, { septic: false }],
    ["irrigation and lighting none, septic not yet", lines, { irrigation: true, lighting: true, septic: false }],
  ])("%s", (said, step, yes) => expect(at(said, step)).toEqual(answer({ kind: "each", yes })));

  it.each([
    ["all clear", answers],
    ["all answered", answers],
    ["yes", answers],
    ["gas", answers],
    ["no gas", answers],
    ["gas none", answers],
    ["gas, water marked", answers],
    ["gas yes, gas no", answers],
    ["gas maybe", answers],
    ["sewer marked", answers],
    ["gas clear and the rest too", answers],
    ["none", lines],
    ["no lines", lines],
    ["septic asked", lines],
  ])("%s is no answer to a list", (said, step) => expect(at(said, step)).toEqual({ notUnderstood: true }));
});
