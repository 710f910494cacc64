import { describe, expect, it } from "vitest";
import { atLeast, exactly, measure, measures, noneOf, yes } from "../../machines/install/gates.ts";
import { hear, type ListeningContext } from "../../machines/speech/hear.ts";
import { ears } from "../support/ears.ts";
import { stepWith } from "../support/steps.ts";

const lacing = stepWith(null, { wordsKey: "lace.ring", params: { seam: "S2", toward: "CD", atFt: 20 } });
const tied = stepWith(yes, { wordsKey: "half.tied", params: { seam: "S2", toward: "CD" } });
const showing = stepWith(measure("in", 0, 6));
const goingUnder = stepWith(atLeast(1), { wordsKey: "under.in" });
const comingOut = stepWith({ kind: "sameCount", as: "in" }, { wordsKey: "under.out" });
const leaning = stepWith(measures("deg", ["AB", "BC", "CD", "DA"], 0, 15), { wordsKey: "lean.outward" });
const wind = stepWith({ kind: "wind", belowMph: 20 });
const calm = stepWith(null, { wordsKey: "lay.piece" });

/** Spoken into an open microphone, or with the talk button held. */
const open = (said: string | string[], e: ListeningContext) => hear({ alternatives: [said].flat(), talk: false }, e);
const talk = (said: string | string[], e: ListeningContext) => hear({ alternatives: [said].flat(), talk: true }, e);
const answer = (value: object) => ({ meant: { intent: { type: "answer", gate: "here", value } }, readBack: true });

describe("plain commands while lacing", () => {
  it.each([
    ["next", { intent: { type: "next" } }],
    ["Next.", { intent: { type: "next" } }],
    ["done, next", { intent: { type: "next" } }],
    ["back one, I missed a loop", { intent: { type: "back" } }],
    ["again", { question: { asks: "again" } }],
    ["where am I", { question: { asks: "again" } }],
    ["how many to the ring", { question: { asks: "howFarToTheRing" } }],
    ["which piece is this", { question: { asks: "whichPiece" } }],
    ["what's left", { question: { asks: "whatsLeft" } }],
    ["note: torn loop, seam two, eight foot out", { intent: { type: "note", text: "torn loop, seam two, eight foot out" } }],
    ["note torn loop seam 2 8 ft out", { intent: { type: "note", text: "torn loop seam 2 8 ft out" } }],
    ["everybody stop", { intent: { type: "hold" } }],
    ["HOLD! HOLD!", { intent: { type: "hold" } }],
    ["thunder", { thunder: true }],
  ])("%s", (said, meant) => expect(open(said, ears(lacing))).toMatchObject({ source: "open", meant, readBack: false }));
});

describe("answers with the talk button, which are read back", () => {
  it.each([
    ["seam two, south half, tied off", tied, { kind: "yesNo", yes: true }],
    ["seam 2 CD half tied off", tied, { kind: "yesNo", yes: true }],
    ["eight showing", showing, { kind: "measure", n: 8, unit: "in" }],
    ["5 1/2 in showing", showing, { kind: "measure", n: 5.5, unit: "in" }],
    ["fourteen centimetres", showing, { kind: "measure", n: 5.511811, unit: "in" }],
    ["four going under", goingUnder, { kind: "count", n: 4 }],
    ["four out, nobody under", comingOut, { kind: "count", n: 4 }],
    ["36 stakes", stepWith(exactly(36)), { kind: "count", n: 36 }],
    ["none missed", stepWith(noneOf, { wordsKey: "half.looked" }), { kind: "count", n: 0 }],
    ["five, three, four, six", leaning, { kind: "figures", unit: "deg", n: { AB: 5, BC: 3, CD: 4, DA: 6 } }],
    ["seam two, D C half, tied off", tied, { kind: "yesNo", yes: true }],
    ["don't know", showing, { kind: "unknown" }],
  ])("%s", (said, step, value) => expect(talk(said, ears(step))).toMatchObject({ source: "talk", ...answer(value) }));

  it("a waiver with its reason", () =>
    expect(talk("leave it because nobody kneels here", ears(tied))).toMatchObject({
      meant: { intent: { type: "waive", because: "nobody kneels here" } },
      readBack: true,
    }));
  it.each([
    ["fourteen gusting nineteen", { mph: 14, gustMph: 19, fromDeg: null, taken: null }],
    ["wind twelve, gusting to 16 mph", { mph: 12, gustMph: 16, fromDeg: null, taken: null }],
    ["fourteen", { mph: 14, gustMph: null, fromDeg: null, taken: null }],
    ["14 gusting 19 five minutes ago", { mph: 14, gustMph: 19, fromDeg: null, taken: { minutesAgo: 5 } }],
    ["14 gusting 19 at quarter past two", { mph: 14, gustMph: 19, fromDeg: null, taken: { hour: 2, minute: 15, half: null } }],
  ])("wind: %s", (said, reading) => expect(talk(said, ears(wind))).toMatchObject({ meant: { wind: reading }, readBack: true }));
  it("a unit at the end applies to both figures, and a reading is rounded up", () => {
    const heard = talk("ten gusting twenty knots", ears(wind)) as { meant: { wind: { mph: number; gustMph: number } } };
    expect(heard.meant.wind.mph).toBe(11.6);
    expect(heard.meant.wind.gustMph).toBe(23.1);
  });
  it("a gust in feet is reported as a wrong unit", () =>
    expect(talk("14 gusting 19 feet", ears(wind))).toMatchObject({ meant: { wrongUnit: { gave: "ft" } } }));
});

describe("binding words into an open microphone", () => {
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
  it.each(["albatross eight showing", "Albatross, eight showing.", "Albatross: 8 showing"])("%s is accepted and read back", (said) =>
    expect(open(said, ears(showing))).toMatchObject({ source: "wake", ...answer({ kind: "measure", n: 8, unit: "in" }) }),
  );
  it("the wake word alone or in the middle does nothing", () => {
    expect(open("albatross", ears(showing))).toMatchObject({ leftAlone: "chatter" });
    expect(open("that albatross eight showing", ears(showing))).toMatchObject({ leftAlone: "chatter" });
  });
  it("wrong needs no wake word, correct does", () => {
    const waiting = ears(showing, { waiting: true });
    expect(open("wrong", waiting)).toMatchObject({ meant: { confirm: "wrong" } });
    expect(open("correct", waiting)).toMatchObject({ leftAlone: "wakeWord" });
    expect(open("albatross correct", waiting)).toMatchObject({ meant: { confirm: "correct" }, readBack: false });
  });
  it("carry on clears a pause, but a hold only with the wake word or the button", () => {
    expect(open("carry on", ears(lacing, { attention: "paused" }))).toMatchObject({ meant: { intent: { type: "carryOn" } } });
    expect(open("carry on", ears(lacing, { attention: "held" }))).toMatchObject({ leftAlone: "wakeWord" });
    expect(open("albatross carry on", ears(lacing, { attention: "held" }))).toMatchObject({ meant: { intent: { type: "carryOn" } } });
  });
  it("a bare next is ignored during a hold or a pause", () => {
    expect(open("next", ears(lacing, { attention: "held" }))).toMatchObject({ leftAlone: "wakeWord" });
    expect(open("next", ears(lacing, { attention: "paused" }))).toMatchObject({ leftAlone: "wakeWord" });
  });
});

describe("chatter", () => {
  const everywhere = [lacing, tied, showing, goingUnder, comingOut, leaning, wind, calm].map((step) => ears(step, { waiting: true }));
  it.each([
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
  it.each(["hold that rope", "whoa, that'll do", "don't stop there", "whoa", "leave it because stop", "C is leaning, stop"])(
    "%s: work waits, and no more",
    (said) => {
      for (const e of everywhere)
        for (const heard of [open(said, e), talk(said, e), open(`albatross ${said}`, e)])
          expect(heard).toMatchObject({ meant: { intent: { type: "pause" } }, readBack: false });
    },
  );
});

describe("a command among other words", () => {
  it.each(["okay, next one!", "got it, next", "pinned both ends, next", "next please", "go on"])(
    "%s: after the talk button only",
    (said) => {
      expect(open(said, ears(lacing))).toMatchObject({ leftAlone: "wakeWord" });
      expect(talk(said, ears(lacing))).toMatchObject({ meant: { intent: { type: "next" } }, readBack: false });
    },
  );
  it.each(["it's not tied, next", "if it's tied, next", "what's next, next"])("%s: not after a denial, a doubt or a question", (said) =>
    expect(talk(said, ears(calm))).not.toMatchObject({ meant: { intent: { type: "next" } } }),
  );
  it("an answer before it is taken, and goes on by itself", () =>
    expect(talk("tied off, hook's shut, next", ears(tied))).toMatchObject(answer({ kind: "yesNo", yes: true })));
  it.each(["correct, correct", "yes, correct", "yep, that's it", "that's right"])("%s confirms what was read back", (said) =>
    expect(talk(said, ears(showing, { waiting: true }))).toMatchObject({ meant: { confirm: "correct" }, readBack: false }),
  );
});

describe("an answer for another place", () => {
  it.each(["seam three, tied off", "seam two, AB half, tied off", "seam two, other half, tied off", "seam 2, wrong half, yes"])(
    "%s",
    (said) => expect(talk(said, ears(tied))).toMatchObject({ meant: { elsewhere: said } }),
  );
  it("a lean that does not answer what is asked is kept as a note", () =>
    expect(talk("Alpha's leaning in an inch and a half", ears(leaning))).toMatchObject({
      meant: { remark: "Alpha's leaning in an inch and a half" },
    }));
  it("a lean at a call that asks for none is kept as a note", () =>
    expect(talk("C's leaning in an inch and a half", ears(lacing))).toMatchObject({
      meant: { remark: "C's leaning in an inch and a half" },
    }));
});

describe("the recognizer's other alternatives", () => {
  it("a hold in any alternative is a hold", () =>
    expect(open(["cold", "told", "hold"], ears(lacing))).toMatchObject({ meant: { intent: { type: "hold" } } }));
  it("a later alternative that can be read is read back", () =>
    expect(talk(["ate showing", "8 showing"], ears(showing))).toMatchObject(answer({ kind: "measure", n: 8, unit: "in" })));
  it("two numbers are both named when the guide asks again", () =>
    expect(talk(["fifteen showing", "fifty showing"], ears(showing))).toMatchObject({ meant: { ambiguous: { n: [15, 50], unit: "in" } } }));
  it("two spellings of one number agree", () =>
    expect(talk(["eight showing", "8 showing"], ears(showing))).toMatchObject(answer({ kind: "measure", n: 8, unit: "in" })));
  it("next from a later alternative is not accepted at a gate", () =>
    expect(talk(["neck", "next"], ears(tied))).toMatchObject({ meant: { notUnderstood: true } }));
  it("a number with two readings is asked again", () =>
    expect(talk("six two", ears(stepWith(measure("ft", 0, 100))))).toMatchObject({ meant: { ambiguous: { unit: "ft" } } }));
  it("degrees at a gate in inches are a wrong unit", () =>
    expect(talk("ten degrees", ears(showing))).toMatchObject({ meant: { wrongUnit: { gave: "deg", wants: "in" } } }));
  it("five in at a lean is five inches, not five degrees toward the tent", () =>
    expect(talk("AB 5 in", ears(leaning))).toMatchObject({ meant: { wrongUnit: { gave: "in" } } }));
  it("silence is chatter", () => expect(open(["", " "], ears(lacing))).toMatchObject({ leftAlone: "chatter" }));
});

describe("a hold in many forms", () => {
  it.each([
    "stop",
    "STOP!",
    "stop,stop",
    "Stop - stop",
    "stop, stop, somebody's hand",
    "woah stop",
    "everybody hold it",
    "hey stop",
    "please stop now",
    "get out get out",
    "A's leaning over, stop stop",
    "note stop stop",
    "albatross stop",
  ])("%s", (said) => {
    for (const e of [ears(lacing), ears(tied, { waiting: true }), ears(null)])
      for (const heard of [open(said, e), talk(said, e)])
        expect(heard).toMatchObject({ meant: { intent: { type: "hold" } }, readBack: false });
  });
  it("everybody told to leave is more than a hold: it is made safe", () =>
    expect(open("everybody get out", ears(tied))).toMatchObject({ meant: { everybodyOut: "everybody get out" } }));
  it.each(["hold that rope", "hold the door", "hold the stake", "don't stop pulling", "tell them to stop lifting when I say"])(
    "%s only pauses: a thing is held in the hand, or it is said inside another sentence",
    (said) => expect(open(said, ears(lacing))).toMatchObject({ meant: { intent: { type: "pause" } } }),
  );
  it.each(["para la tarde", "wait a bit", "stand still a moment and he'll see you", "I can't get hold of him"])("%s is none", (said) =>
    expect(open(said, ears(lacing))).toMatchObject({ leftAlone: "chatter" }),
  );
  it("a pause in any alternative counts if the best one means nothing", () =>
    expect(open(["whole that rope", "hold that rope"], ears(lacing))).toMatchObject({ meant: { intent: { type: "pause" } } }));
  it("a note may mention a hold word", () =>
    expect(open("note: he would not hold the pole", ears(lacing))).toMatchObject({ meant: { intent: { type: "note" } } }));
});

describe("while a read-back is waiting", () => {
  const waiting = ears(tied, { waiting: true });
  it.each(["yes", "yeah", "right", "okay"])("%s is not an answer, because it would turn a no into a yes", (said) =>
    expect(talk(said, waiting)).toMatchObject({ meant: { sayCorrect: true } }),
  );
  it.each(["no", "no, eight", "not that", "wrong", "nope"])("%s discards it", (said) =>
    expect(talk(said, waiting)).toMatchObject({ meant: { confirm: "wrong" } }),
  );
  it("a bare no discards it", () => expect(open("no", waiting)).toMatchObject({ meant: { confirm: "wrong" } }));
});

describe("alternatives that say the opposite", () => {
  it("not tied off with tied off as the second alternative is not understood", () => {
    expect(talk(["not tied off", "tied off"], ears(tied))).toMatchObject({ meant: { notUnderstood: true } });
    expect(talk(["four out, one under", "four out"], ears(comingOut))).toMatchObject({ meant: { notUnderstood: true } });
  });
  it("a bare word is accepted from the best alternative only", () => {
    expect(open(["give me the next", "next"], ears(lacing))).toMatchObject({ leftAlone: "wakeWord" });
    expect(open(["pack", "back"], ears(lacing))).toMatchObject({ leftAlone: "wakeWord" });
  });
  it("the wake word is accepted from the best alternative only", () =>
    expect(open(["all cross correct", "albatross correct"], ears(tied, { waiting: true }))).toMatchObject({
      leftAlone: expect.any(String),
    }));
});

describe("implausible values", () => {
  it.each(["wind minus 14", "-14 gusting 19", "wind 1000", "19 gusting 14"])("%s is not a wind reading", (said) =>
    expect(talk(said, ears(wind))).toMatchObject({ meant: { noSuchWind: true } }),
  );
  it("wind none is not understood", () => expect(talk("wind none", ears(wind))).toMatchObject({ meant: { notUnderstood: true } }));
  it.each([
    ["none tied", stepWith(noneOf, { wordsKey: "half.looked" })],
    ["four going under", comingOut],
    ["four missed", comingOut],
    ["none missed", goingUnder],
    ["four out", goingUnder],
  ])("%s, asked something else, is not caught", (said, step) =>
    expect(talk(said, ears(step))).toMatchObject({ meant: { notUnderstood: true } }),
  );
  it.each([
    "give me 5 minutes",
    "no permit 7",
    "wrong, 55",
    "it's not here, 2 of us looked",
    "heat 90 humidity 140",
    "heat 90 140",
    "gas 12 8 90 15",
    "wind 9 9 9",
    "humidity 140",
    "overhead 7 kv",
  ])("%s is not a document", (said) =>
    expect(talk(said, ears(stepWith({ kind: "document", expected: null, validFrom: null, validTo: null })))).not.toMatchObject({
      meant: { intent: expect.anything() },
    }),
  );
});
