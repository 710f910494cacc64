import { describe, expect, it } from "vitest";
import { exactly, measure, yes } from "../../machines/install/gates.ts";
import type { Step } from "../../machines/install/step.ts";
import { readNumber } from "../../machines/speech/en/numbers.ts";
import { understand as understandAt } from "../../machines/speech/en/understand.ts";
import { inUnit } from "../../machines/speech/quantity.ts";
import { stepWith } from "../support/steps.ts";

const understand = (said: string, step: Step | null) => understandAt(said, { step, asks: null });

describe("numbers as crews write and say them", () => {
  it.each([
    ["8", 8, null],
    ["eight", 8, null],
    ["eight inches", 8, "in"],
    ["5 1/2 in", 5.5, "in"],
    ['5 1/2"', 5.5, "in"],
    ["five and a half inches", 5.5, "in"],
    ["-3 degrees", -3, "deg"],
    ["a hundred and twenty", 120, null],
    ["six foot two", 6 + 2 / 12, "ft"],
    ["128'", 128, "ft"],
    ["one hundred twenty eight feet and 3/4 in", 128 + 0.75 / 12, "ft"],
  ])("%s", (text, n, unit) => {
    const said = readNumber(text);
    expect(said?.unit).toBe(unit);
    expect(said?.n).toBeCloseTo(n, 9);
  });
  it.each(["", "next", "eight or nine", "3 4", "1/0"])("%j is not a number", (text) => expect(readNumber(text)).toBeNull());
  it("metric lengths are converted: the inch is 25.4 mm, the foot 0.3048 m, by definition (NIST SP 811, B.8)", () => {
    expect(readNumber("254 mm")?.n).toBeCloseTo(10, 12);
    expect(readNumber("3.048 m")?.n).toBeCloseTo(10, 12);
  });
  it("degrees are never inches", () => expect(inUnit({ n: 3, unit: "deg" }, "in")).toBeNull());
});

describe("the meaning of words depends on the gate", () => {
  it("eight is a measurement, a count, or nothing", () => {
    expect(understand("eight", stepWith(measure("in", 0, 6)))).toEqual({
      intent: { type: "answer", gate: "here", value: { kind: "measure", n: 8, unit: "in" } },
    });
    expect(understand("eight", stepWith(exactly(8)))).toEqual({ intent: { type: "answer", gate: "here", value: { kind: "count", n: 8 } } });
    expect(understand("eight", stepWith(yes))).toEqual({ notUnderstood: true });
  });
  it("a wrong unit is reported", () =>
    expect(understand("8 degrees", stepWith(measure("in", 0, 6)))).toEqual({ wrongUnit: { gave: "deg", wants: "in" } }));
  it.each([
    "don't say next till I tell you",
    "hold that rope",
    "yeah, correct, mate",
    "gimme six more",
    "back it up",
    "we're good, all clear",
    "one, two, three, up",
  ])("%s: chatter", (heard) => {
    expect(understand(heard, stepWith(yes))).toEqual({ notUnderstood: true });
    expect(understand(heard, stepWith(exactly(6)))).toEqual({ notUnderstood: true });
  });
  it("a hold needs no gate", () => expect(understand("Hold!", null)).toEqual({ intent: { type: "hold" } }));
  it("a wind reading with its gust", () =>
    expect(understand("fourteen gusting nineteen", null)).toEqual({
      wind: { mph: 14, gustMph: 19, fromDeg: null, taken: null },
    }));
  it("a note keeps its words as typed", () =>
    expect(understand("note: torn loop, Seam 2", null)).toEqual({ intent: { type: "note", text: "torn loop, Seam 2" } }));
});
