import { describe, expect, it } from "vitest";
import { type Check, yes } from "../../machines/install/gates.ts";
import { english } from "../../machines/speech/en/english.ts";
import { understand } from "../../machines/speech/en/understand.ts";
import { stepWith } from "../support/steps.ts";

/** What words are at a question, by the key of its words. */
const at = (said: string, wordsKey: string, asks: Check) => understand(said, { step: stepWith(asks, { wordsKey }), asks: null });
const answer = (value: object) => ({ intent: { type: "answer", gate: "here", value } });
const fault: Check = { kind: "yesNo", good: false };

describe("yes, as crews say it to any question", () => {
  it.each([
    "yes",
    "yeah",
    "Yep.",
    "yup",
    "you bet",
    "affirmative",
    "sure is",
    "they are",
    "good",
    "all good",
    "we're good",
    "we’re all good",
    "all set",
    "done",
    "got it",
    "got 'em",
    "got them",
    "roger",
  ])("%s", (said) => {
    for (const key of ["straps.choked", "hats", "talk.briefed", "strike.ground"])
      expect(at(said, key, yes)).toEqual(answer({ kind: "yesNo", yes: true }));
    expect(english.isYes(said.toLowerCase().replace("’", "'").replace(".", ""))).toBe(true);
  });
});

describe("no, as crews say it to any question", () => {
  it.each(["no", "nope", "nah", "negative", "not yet", "no good", "not good", "not all of them", "they're not"])("%s", (said) =>
    expect(at(said, "straps.choked", yes)).toEqual(answer({ kind: "yesNo", yes: false })),
  );
  it("hold off is a hold word, which comes first", () => expect(english.holdsInside("hold off")).toBe(true));
});

describe("words that mean yes at one question, and nothing at another", () => {
  it.each([
    ["hats on", "hats"],
    ["on", "hats"],
    ["all on", "hats"],
    ["hard hats are on", "hats"],
    ["they're on", "earsAndEyes"],
    ["ears and eyes on", "earsAndEyes"],
    ["still there", "paint"],
    ["clear", "wayOut"],
    ["all clear", "wayOut"],
    ["all clear", "warning"],
    ["no warnings", "warning"],
    ["everybody knows", "caller"],
    ["secured", "lift.quarters"],
    ["foot's secured", "lift.center"],
    ["feet secured", "lift.quarters"],
    ["feet are secured", "sides.feet"],
    ["all held", "sides.feet"],
    ["all choked", "straps.choked"],
    ["threaded, with slack", "straps.threaded"],
    ["all locked", "handles.locked"],
    ["everywhere", "groundCloth"],
    ["tied off, hook shut", "half.tied"],
    ["everybody's briefed", "talk.briefed"],
    ["all in white", "white.stakeLine"],
    ["covers all of it", "locate.covers"],
    ["walked and clear", "marks.walked"],
    ["all plumb", "tension.plumb"],
    ["on the line", "feet.onLine"],
    ["tight again", "tension.again"],
    ["within the sheet", "walls"],
    ["all signed", "exits.signs"],
    ["power's off, cables are out", "strike.power"],
    ["walls are off", "strike.walls"],
    ["it's empty", "strike.people"],
    ["everybody's out", "strike.people"],
    ["still sound", "safe.looked"],
    ["clear", "hung.nothing"],
    ["they've got it", "handover"],
    ["agreed", "watch.end"],
    ["it's clean", "strike.ground"],
  ])("%s at %s", (said, key) => {
    expect(at(said, key, yes)).toEqual(answer({ kind: "yesNo", yes: true }));
    expect(at(said, "kit.spread", yes)).toEqual({ notUnderstood: true });
  });
  it("with words before them that are a yes to anything", () =>
    expect(at("we're good, all clear", "wayOut", yes)).toEqual(answer({ kind: "yesNo", yes: true })));
});

describe("words that answer half of what is asked are no answer", () => {
  it.each([
    ["all threaded", "straps.threaded"],
    ["power's off", "strike.power"],
    ["paint's there", "paint"],
    ["all in order", "laid.order"],
    ["capped", "trips"],
  ])("%s at %s", (said, key) => expect(at(said, key, yes)).toEqual({ notUnderstood: true }));
});

describe("a question that asks for a fault", () => {
  it.each([
    ["no", false],
    ["nope", false],
    ["none", false],
    ["none of them", false],
    ["all good", false],
    ["we're good", false],
    ["yes", true],
    ["yep", true],
    ["they are", true],
  ])("%s", (said, is) => expect(at(said, "sides.notTight", fault)).toEqual(answer({ kind: "yesNo", yes: is })));
  it.each(["not yet", "no good", "not good", "done", "got it", "roger", "clear", "all clear", "hats on"])("%s may mean either", (said) =>
    expect(at(said, "sides.notTight", fault)).toEqual({ notUnderstood: true }),
  );
});

describe("what is no answer to a yes or no", () => {
  it.each([
    "yeah, correct, mate",
    "good morning",
    "good rope",
    "on the truck",
    "not on your life",
    "yes and no",
    "got it wrong",
    "all of them but two",
    "none",
    "six",
    "constructor",
  ])("%s", (said) => {
    for (const key of ["hats", "lift.center", "wayOut", "constructor", "toString"])
      expect(at(said, key, yes)).toEqual({ notUnderstood: true });
  });
});
