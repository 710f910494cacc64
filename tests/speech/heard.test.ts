import { describe, expect, it } from "vitest";
import { atLeast, exactly, measure, noneOf, yes } from "../../machines/install/gates.ts";
import { type Ears, hear } from "../../machines/speech/hear.ts";
import { stepWith } from "../support/steps.ts";

const lacing = stepWith(null, { call: "lace.ring", of: { seam: "S2", toward: "CD", atFt: 20 } });
const tied = stepWith(yes, { call: "half.tied", of: { seam: "S2", toward: "CD" } });
const showing = stepWith(measure("in", 0, 6));
const goingUnder = stepWith(atLeast(1), { call: "under.in" });
const comingOut = stepWith({ kind: "sameCount", as: "in" }, { call: "under.out" });
const plumb = stepWith(measure("deg", -1, 1), { call: "plumb.edge", of: { edge: "BC", sidePoleFt: 8 } });
const wind = stepWith({ kind: "wind" });
const calm = stepWith(null, { call: "lay.piece" });

const ears = (step: Ears["step"], more: Partial<Ears> = {}): Ears => ({
  step,
  attention: "working",
  waiting: false,
  wakeWord: "albatross",
  ...more,
});
/** Spoken into an open microphone, or with the talk button held. */
const open = (said: string | string[], e: Ears) => hear({ alternatives: [said].flat(), talk: false }, e);
const talk = (said: string | string[], e: Ears) => hear({ alternatives: [said].flat(), talk: true }, e);
const answer = (value: object) => ({ meant: { ask: { type: "answer", gate: "here", value } }, readBack: true });

describe("said for real, while lacing, with nothing before it", () => {
  it.each([
    ["next", { ask: { type: "next" } }],
    ["Next.", { ask: { type: "next" } }],
    ["done, next", { ask: { type: "next" } }],
    ["back one, I missed a loop", { ask: { type: "back" } }],
    ["again", { question: "again" }],
    ["where am I", { question: "again" }],
    ["how many to the ring", { question: "howMany" }],
    ["which piece is this", { question: "which" }],
    ["what's left", { question: "whatsLeft" }],
    ["note: torn loop, seam two, eight foot out", { ask: { type: "note", text: "torn loop, seam two, eight foot out" } }],
    ["note torn loop seam 2 8 ft out", { ask: { type: "note", text: "torn loop seam 2 8 ft out" } }],
    ["everybody stop", { ask: { type: "hold" } }],
    ["HOLD! HOLD!", { ask: { type: "hold" } }],
    ["thunder", { thunder: true }],
  ])("%s", (said, meant) => expect(open(said, ears(lacing))).toMatchObject({ source: "open", meant, readBack: false }));
});

describe("said for real, with the talk button held, and read back", () => {
  it.each([
    ["seam two, south half, tied off", tied, { kind: "yesNo", yes: true }],
    ["seam 2 CD half tied off", tied, { kind: "yesNo", yes: true }],
    ["eight showing", showing, { kind: "measure", n: 8, unit: "in" }],
    ["5 1/2 in showing", showing, { kind: "measure", n: 5.5, unit: "in" }],
    ["fourteen centimetres", showing, { kind: "measure", n: 5.511811, unit: "in" }],
    ["four going under", goingUnder, { kind: "count", n: 4 }],
    ["four out, nobody under", comingOut, { kind: "count", n: 4 }],
    ["36 stakes", stepWith(exactly(36)), { kind: "count", n: 36 }],
    ["none missed", stepWith(noneOf), { kind: "count", n: 0 }],
    ["C's leaning in an inch and a half", plumb, { kind: "measure", n: -0.9, unit: "deg" }],
    ["half a degree out", plumb, { kind: "measure", n: 0.5, unit: "deg" }],
    ["don't know", showing, { kind: "unknown" }],
  ])("%s", (said, step, value) => expect(talk(said, ears(step))).toMatchObject({ source: "talk", ...answer(value) }));

  it("a leave, with its reason", () =>
    expect(talk("leave it because nobody kneels here", ears(tied))).toMatchObject({
      meant: { ask: { type: "waive", because: "nobody kneels here" } },
      readBack: true,
    }));
  it.each([
    ["fourteen gusting nineteen", { mph: 14, gustMph: 19, taken: null }],
    ["wind twelve, gusting to 16 mph", { mph: 12, gustMph: 16, taken: null }],
    ["fourteen", { mph: 14, gustMph: null, taken: null }],
    ["14 gusting 19 five minutes ago", { mph: 14, gustMph: 19, taken: { minutesAgo: 5 } }],
    ["14 gusting 19 at quarter past two", { mph: 14, gustMph: 19, taken: { hour: 2, minute: 15, half: null } }],
  ])("wind: %s", (said, reading) => expect(talk(said, ears(wind))).toMatchObject({ meant: { wind: reading }, readBack: true }));
  it("knots said once, at the end, are meant for both figures", () => {
    const heard = talk("ten gusting twenty knots", ears(wind)) as { meant: { wind: { mph: number; gustMph: number } } };
    expect(heard.meant.wind.mph).toBeCloseTo(11.508, 3);
    expect(heard.meant.wind.gustMph).toBeCloseTo(23.016, 3);
  });
  it("a gust in feet is said to be wrong, and not dropped", () =>
    expect(talk("14 gusting 19 feet", ears(wind))).toMatchObject({ meant: { wrongUnit: { gave: "ft" } } }));
});

describe("what binds, said into an open microphone", () => {
  it.each([
    ["eight showing", showing],
    ["yes", tied],
    ["tied off", tied],
    ["next", calm],
    ["next", tied],
    ["fourteen gusting nineteen", wind],
    ["correct", showing],
    ["make safe", lacing],
  ])("%s is left alone, and the screen says what to say first", (said, step) =>
    expect(open(said, ears(step))).toMatchObject({ leftAlone: "wakeWord" }),
  );
  it.each(["albatross eight showing", "Albatross, eight showing.", "Albatross: 8 showing"])("%s is taken, and read back", (said) =>
    expect(open(said, ears(showing))).toMatchObject({ source: "wake", ...answer({ kind: "measure", n: 8, unit: "in" }) }),
  );
  it("the wake word alone, or in the middle, is nothing", () => {
    expect(open("albatross", ears(showing))).toMatchObject({ leftAlone: "chatter" });
    expect(open("that albatross eight showing", ears(showing))).toMatchObject({ leftAlone: "chatter" });
  });
  it("wrong drops what waits, with nothing before it; correct needs the wake word", () => {
    const waiting = ears(showing, { waiting: true });
    expect(open("wrong", waiting)).toMatchObject({ meant: { confirm: "wrong" } });
    expect(open("correct", waiting)).toMatchObject({ leftAlone: "wakeWord" });
    expect(open("albatross correct", waiting)).toMatchObject({ meant: { confirm: "correct" }, readBack: false });
  });
  it("carry on lets go of a pause, with nothing before it, and of a hold only when it is meant for the guide", () => {
    expect(open("carry on", ears(lacing, { attention: "paused" }))).toMatchObject({ meant: { ask: { type: "carryOn" } } });
    expect(open("carry on", ears(lacing, { attention: "held" }))).toMatchObject({ leftAlone: "wakeWord" });
    expect(open("albatross carry on", ears(lacing, { attention: "held" }))).toMatchObject({ meant: { ask: { type: "carryOn" } } });
  });
  it("while work is held or waits, a bare next is not taken", () => {
    expect(open("next", ears(lacing, { attention: "held" }))).toMatchObject({ leftAlone: "wakeWord" });
    expect(open("next", ears(lacing, { attention: "paused" }))).toMatchObject({ leftAlone: "wakeWord" });
  });
});

describe("never a command", () => {
  const everywhere = [lacing, tied, showing, goingUnder, comingOut, plumb, wind, calm].map((step) => ears(step, { waiting: true }));
  it.each([
    "okay, next one!",
    "don't say next till I tell you",
    "yeah, correct, mate",
    "gimme six more",
    "back it up",
    "we're good, all clear",
    "one, two, three, up",
    "one two three up",
    "none of them moved",
  ])("%s, into an open microphone or with the button held", (said) => {
    for (const e of everywhere) {
      expect(open(said, e)).toMatchObject({ leftAlone: "chatter" });
      expect(talk(said, e)).toMatchObject({ meant: { notUnderstood: true } });
    }
  });
  it.each(["hold that rope", "whoa, that'll do", "don't stop there", "whoa"])("%s: work waits, and no more", (said) => {
    for (const e of everywhere)
      for (const heard of [open(said, e), talk(said, e), open(`albatross ${said}`, e)])
        expect(heard).toMatchObject({ meant: { ask: { type: "pause" } }, readBack: false });
  });
});

describe("an answer for another place than the one that is asked", () => {
  it.each(["seam three, tied off", "seam two, AB half, tied off"])("%s", (said) =>
    expect(talk(said, ears(tied))).toMatchObject({ meant: { elsewhere: said } }),
  );
  it("a pole that the gate does not ask about is kept as a note", () =>
    expect(talk("A's leaning in an inch and a half", ears(plumb))).toMatchObject({ meant: { ask: { type: "note" } } }));
  it("a lean said where none is asked is kept as a note", () =>
    expect(talk("C's leaning in an inch and a half", ears(lacing))).toMatchObject({ meant: { ask: { type: "note" } } }));
});

describe("a recogniser's other guesses", () => {
  it("a hold in any of them holds", () =>
    expect(open(["cold", "told", "hold"], ears(lacing))).toMatchObject({ meant: { ask: { type: "hold" } } }));
  it("one that can be read is read back, though it was not the best", () =>
    expect(talk(["ate showing", "8 showing"], ears(showing))).toMatchObject(answer({ kind: "measure", n: 8, unit: "in" })));
  it("two numbers are asked again, both named", () =>
    expect(talk(["fifteen showing", "fifty showing"], ears(showing))).toMatchObject({ meant: { ambiguous: { n: [15, 50], unit: "in" } } }));
  it("the same number in two spellings is one", () =>
    expect(talk(["eight showing", "8 showing"], ears(showing))).toMatchObject(answer({ kind: "measure", n: 8, unit: "in" })));
  it("next is not guessed where it moves past a question", () =>
    expect(talk(["neck", "next"], ears(tied))).toMatchObject({ meant: { notUnderstood: true } }));
  it("a number with two readings is asked again", () =>
    expect(talk("six two", ears(stepWith(measure("ft", 0, 100))))).toMatchObject({ meant: { ambiguous: { unit: "ft" } } }));
  it("degrees at a gate in inches are said to be the wrong unit", () =>
    expect(talk("ten degrees", ears(showing))).toMatchObject({ meant: { wrongUnit: { gave: "deg", wants: "in" } } }));
  it("five in, at a lean, is five inches and not five degrees towards the tent", () =>
    expect(talk("5 in", ears(plumb))).toMatchObject({ meant: { wrongUnit: { gave: "in" } } }));
  it("nothing at all is chatter", () => expect(open(["", " "], ears(lacing))).toMatchObject({ leftAlone: "chatter" }));
});
