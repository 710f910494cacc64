import { describe, expect, it } from "vitest";
import { atLeast, type Check, exactly, measure, noneOf, yes } from "../../machines/install/gates.ts";
import { understand } from "../../machines/speech/en/understand.ts";
import { stepWith } from "../support/steps.ts";

const at = (said: string, wordsKey: string, asks: Check) => understand(said, { step: stepWith(asks, { wordsKey }), asks: null });
const answer = (value: object) => ({ intent: { type: "answer", gate: "here", value } });
const KEYS = ["straps.choked", "hats", "half.tied", "lift.center", "laid.order", "strike.people", "tension.plumb", "marks.walked"];
const cranked: Check = { kind: "yesNo", good: false };

describe("a yes with anything against it opens nothing", () => {
  it.each([
    "yes but not at C",
    "yes, but not at C",
    "yeah almost",
    "yeah, almost",
    "yes, except BC",
    "all but one",
    "yes, one's loose",
    "yes when he's done",
    "yep, two left",
    "yeah, should be",
    "I think so",
    "yes I think",
    "yeah no",
    "yes and no",
    "yeah, not yet",
    "yeah, half of them",
    "yes, most of them",
    "we're good, maybe",
    "good on AB",
    "not all good",
    "are we good",
    "is it good",
    "done in a minute",
    "almost done",
    "yes if you say so",
    "yes, they will be",
    "yeah, gonna be",
  ])("%s", (said) => {
    for (const key of KEYS) expect(at(said, key, yes), key).not.toEqual(answer({ kind: "yesNo", yes: true }));
  });
  it.each([
    ["choked, except BC", "straps.choked"],
    ["all choked low but one", "straps.choked"],
    ["one's choked", "straps.choked"],
    ["two are choked low", "straps.choked"],
    ["choked soon", "straps.choked"],
    ["hats on, almost", "hats"],
    ["tied off and hook's open", "half.tied"],
    ["tied off, hook's not shut", "half.tied"],
    ["half tied off", "half.tied"],
    ["all clear but the rope", "wayOut"],
    ["everybody knows but Jory", "wayOut"],
    ["secured on one side", "lift.center"],
    ["ears on", "earsAndEyes"],
    ["paint's still there", "paint"],
    ["paint is clear", "marks.walked"],
    ["everybody was here", "talk.briefed"],
    ["the dots are open", "groundCloth"],
    ["nothing's short", "kit.spread"],
    ["all steel", "kit.spread"],
    ["hook's shut", "half.tied"],
    ["plenty of tail", "straps.threaded"],
    ["no water on it", "watch"],
    ["straps are tight", "tension.again"],
    ["everybody knows it", "wayOut"],
    ["it's not empty", "strike.people"],
    ["nobody's in there but the caterers", "strike.people"],
  ])("%s at %s", (said, key) => expect(at(said, key, yes)).not.toEqual(answer({ kind: "yesNo", yes: true })));
  it.each(["no, one's past it", "no, two are cranked", "no but almost", "none yet", "not yet", "no good"])(
    "%s, where no is what is wanted",
    (said) => expect(at(said, "sides.notTight", cranked)).not.toEqual(answer({ kind: "yesNo", yes: false })),
  );
});

describe("no keeps the gate shut, whatever the reason after it", () => {
  it.each(["no, one's high", "nope, two to go", "nah, Jory's still on it", "no, they're not all in", "not yet, give us a minute"])(
    "%s",
    (said) => expect(at(said, "straps.choked", yes)).toEqual(answer({ kind: "yesNo", yes: false })),
  );
});

describe("a number with anything against it is asked again", () => {
  it.each([
    "about thirty-six",
    "thirty-six or so",
    "like 36",
    "36 I think",
    "thirty-six minus one",
    "maybe 36",
    "almost 36",
    "thirty-five, no, thirty-six",
    "thirty-five, thirty-six",
    "no 36",
    "not 36",
    "36 or 37",
    "more than 36",
    "at least 36",
    "36 plus one",
    "36 if you count mine",
    "should be 36",
    "36 by noon",
    "thirty-six, wait, thirty-five",
    "half of 36",
    "over 36",
    "36, one to go",
    "36, two still loose",
    "36, one missing",
  ])("%s", (said) => expect(at(said, "sides.laid", exactly(36))).not.toEqual(answer({ kind: "count", n: 36 })));
  it.each([
    "around six inches",
    "six or seven inches",
    "under six inches",
    "less than 6",
    "six to seven inches",
    "six inches short",
    "six inches, no seven",
  ])("%s", (said) => expect(at(said, "drive.edge", measure("in", 0, 6))).not.toEqual(answer({ kind: "measure", n: 6, unit: "in" })));
  it.each([
    "none that are good",
    "none of them straight",
    "none but one",
    "not one, two",
    "no idea",
    "none yet",
    "no more than two",
    "all of them",
    "no, three",
  ])("%s counts no bad ones", (said) => expect(at(said, "stakes.bent", noneOf)).not.toEqual(answer({ kind: "count", n: 0 })));
  it.each(["none of them are out", "nobody's out yet", "three in, one out"])("%s", (said) => {
    const meant = at(said, "under.out", atLeast(1));
    expect(meant).not.toMatchObject(answer({ kind: "count", n: 3 }));
  });
});
