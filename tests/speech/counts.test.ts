import { describe, expect, it } from "vitest";
import { atLeast, type Check, exactly, measure, noneOf } from "../../machines/install/gates.ts";
import { understand } from "../../machines/speech/en/understand.ts";
import { stepWith } from "../support/steps.ts";

/** What words are at a question, by the key of its words. */
const at = (said: string, wordsKey: string, asks: Check) => understand(said, { step: stepWith(asks, { wordsKey }), asks: null });
const answer = (value: object) => ({ intent: { type: "answer", gate: "here", value } });

describe("counts", () => {
  it.each([
    ["thirty-six", "pins.both", exactly(36), 36],
    ["36 pinned", "pins.both", exactly(36), 36],
    ["zero", "damage", noneOf, 0],
    ["none", "damage", noneOf, 0],
    ["nope", "damage", noneOf, 0],
    ["no", "lean.inward", noneOf, 0],
    ["none leaning", "lean.inward", noneOf, 0],
    ["two leaning", "lean.inward", noneOf, 2],
    ["nope", "stakes.bent", noneOf, 0],
    ["none bent", "stakes.bent", noneOf, 0],
    ["three bent", "stakes.bent", noneOf, 3],
    ["two bad ones", "damage", noneOf, 2],
    ["no gaps", "seams.gaps", noneOf, 0],
    ["nope", "seams.gaps", noneOf, 0],
    ["nope", "half.looked", noneOf, 0],
    ["two going under", "under.in", atLeast(1), 2],
    ["all good", "damage", noneOf, 0],
    ["they're all good", "stakes.bent", noneOf, 0],
    ["two turns", "straps.turns", atLeast(2), 2],
    ["three wraps", "straps.turns", atLeast(2), 3],
    ["12 pinned", "poles.pinned", exactly(12), 12],
    ["four hands", "under.hands", atLeast(2), 4],
    ["none moved", "afterBlow", noneOf, 0],
    ["one slack", "afterBlow", noneOf, 1],
    ["ten strapped", "cloth.strapped", exactly(10), 10],
    ["I count six", "talk.headcount", exactly(6), 6],
    ["there's six guys", "talk.headcount", exactly(6), 6],
    ["six of us", "talk.headcount", exactly(6), 6],
    ["six here", "safe.headcount", exactly(6), 6],
    ["four out, nobody under", "lower.center", { kind: "sameCount", as: "in" } as const, 4],
    ["four came out", "lower.quarters", { kind: "sameCount", as: "in" } as const, 4],
    ["none up", "strike.interiorDown", noneOf, 0],
    ["they're all down", "strike.interiorDown", noneOf, 0],
    ["one still up", "strike.interiorDown", noneOf, 1],
    ["36 flat", "strike.sides", exactly(36), 36],
    ["112 back", "back.stakes", exactly(112), 112],
    ["three exits", "exits", atLeast(3), 3],
  ])("%s at %s", (said, key, asks, n) => expect(at(said, key, asks)).toEqual(answer({ kind: "count", n })));
  it.each([
    ["all of them", "pins.both", exactly(36)],
    ["all", "pins.both", exactly(36)],
    ["no", "pins.both", exactly(36)],
    ["nope", "under.in", atLeast(1)],
    ["yes", "damage", noneOf],
    ["a couple", "damage", noneOf],
    ["two and a half", "damage", noneOf],
    ["minus two", "damage", noneOf],
    ["four or five", "pins.both", exactly(36)],
    ["three bent", "damage", noneOf],
    ["36 out", "pins.both", exactly(36)],
  ])("%s at %s is none", (said, key, asks) => expect(at(said, key, asks)).toEqual({ notUnderstood: true }));
});

describe("a distance, or none", () => {
  const far = measure("ft", 20, null, true);
  it.each([
    ["none", "clear.around"],
    ["nothing there", "clear.around"],
    ["no", "overhead.any"],
    ["nope", "overhead.any"],
    ["no wires", "overhead.any"],
    ["no", "clear.around"],
    ["nope", "nearest.private"],
  ])("%s at %s", (said, key) => expect(at(said, key, far)).toEqual(answer({ kind: "none" })));
  it.each([
    ["no", "overhead.line"],
    ["clear", "clear.around"],
    ["all clear", "overhead.any"],
  ])("%s at %s is none", (said, key) => expect(at(said, key, far)).toEqual({ notUnderstood: true }));
  it("what sticks up is said to", () => {
    expect(at("it's four and a half", "drive.edge", measure("in", 0, 6))).toEqual(answer({ kind: "measure", n: 4.5, unit: "in" }));
    expect(at("four and a half inches sticking up", "drive.edge", measure("in", 0, 6))).toEqual(
      answer({ kind: "measure", n: 4.5, unit: "in" }),
    );
  });
});

describe("a wind that a plan names, in miles an hour", () => {
  it.each([
    ["thirty", 30],
    ["thirty miles an hour", 30],
    ["25 mph", 25],
    ["at thirty", 30],
    ["gusts of thirty", 30],
    ["gusting thirty", 30],
  ])("%s", (said, n) => expect(at(said, "plan.evacuate", measure("mph", 1, 30))).toEqual(answer({ kind: "measure", n, unit: "mph" })));
  it("feet are a wrong unit", () =>
    expect(at("30 feet", "plan.walls", measure("mph", 1, 25))).toMatchObject({ wrongUnit: { gave: "ft" } }));
});
