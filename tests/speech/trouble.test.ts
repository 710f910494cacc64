import { describe, expect, it } from "vitest";
import { document, exactly, noneOf, yes } from "../../machines/install/gates.ts";
import { parseTrouble } from "../../machines/speech/en/trouble.ts";
import { understand } from "../../machines/speech/en/understand.ts";
import { hear, type ListeningContext } from "../../machines/speech/hear.ts";
import { NOTHING_ASKED } from "../../machines/speech/listening.ts";
import { ears } from "../support/ears.ts";
import { stepWith } from "../support/steps.ts";

const piece = (id: string, because: string) => ({ outOfUse: { piece: id }, because });
const backPiece = (id: string, because: string) => ({ backInUse: { piece: id }, because });
const items = (item: string, n: number | null) => ({ items: expect.arrayContaining([item]), n });

describe("a piece out of use", () => {
  it.each([
    ["mid one is torn", piece("mid-1", "torn")],
    ["Mid 1's torn at a ring.", piece("mid-1", "torn at a ring")],
    ["piece end A is out of use, torn ring", piece("end-A", "torn ring")],
    ["end piece Delta is out of use because the hem ripped", piece("end-D", "the hem ripped")],
    ["end Delta Alpha has a tear", piece("end-DA", "a tear")],
    ["the top is ripped", piece("top", "ripped")],
    ["mid two ripped", piece("mid-2", "ripped")],
    ["mid piece twelve is no good", piece("mid-12", "no good")],
    ["there's a tear in mid three", piece("mid-3", "a tear")],
    ["torn ring on end B", piece("end-B", "torn ring")],
    ["mid one is out of use", piece("mid-1", "out of use")],
  ])("%s", (said, meant) => expect(parseTrouble(said)).toEqual(meant));
});

describe("short of kit", () => {
  it.each([
    ["we're two straps short", "perimeterStrap", 2],
    ["short four stakes", "perimeterStake", 4],
    ["we're short by four stake plates", "stakePlate", 4],
    ["one side pole short", "sidePole", 1],
    ["a center pole short", "centerPole", 1],
    ["we're missing 12 hard hats", "hardHat", 12],
    ["two extinguishers missing", "extinguisher", 2],
    ["we need three more stakes", "perimeterStake", 3],
  ])("%s", (said, item, n) => expect(parseTrouble(said)).toMatchObject({ outOfUse: items(item, n) }));
});

describe("back in use", () => {
  it.each([
    ["mid one is mended", backPiece("mid-1", "mended")],
    ["end A is back in use", backPiece("end-A", "back in use")],
    ["mid two's been swapped for the spare", backPiece("mid-2", "swapped for the spare")],
    ["we patched mid one", backPiece("mid-1", "patched")],
  ])("%s", (said, meant) => expect(parseTrouble(said)).toEqual(meant));
  it.each([
    ["straps are here", "perimeterStrap", null],
    ["the missing stakes came", "perimeterStake", null],
    ["two straps came", "perimeterStrap", 2],
    ["four more straps came", "perimeterStrap", 4],
    ["we got two more side poles", "sidePole", 2],
    ["one center pole is here", "centerPole", 1],
  ])("%s", (said, item, n) => expect(parseTrouble(said)).toMatchObject({ backInUse: items(item, n) }));
});

describe("what is neither", () => {
  it.each([
    "is mid one torn",
    "mid one is torn?",
    "mid one isn't torn",
    "mid one is not torn",
    "mid one is torn but it's mended",
    "if mid one is torn",
    "check if mid one is torn",
    "nobody says mid one is torn",
    "mid one is not mended",
    "mid one isn't mended yet",
    "mid one is almost mended",
    "mid one is mended?",
    "are the straps here",
    "straps aren't here",
    "straps are not here",
    "two straps never came",
    "no straps came",
    "we're not two straps short",
    "are we two straps short",
    "zero straps short",
    "we're twenty thousand straps short",
    "two short",
    "mid one",
    "straps",
    "torn",
    "hand me the strap",
    "keep the straps short",
    "mid zero is torn",
    "the truck is here",
    "I think the straps are here maybe",
    "how many straps short are we",
    "you said mid one is torn yesterday and we looked at it and it was fine all along",
  ])("%s", (said) => {
    expect(parseTrouble(said)).toBeNull();
    const meant = understand(said, NOTHING_ASKED);
    expect("outOfUse" in meant || "backInUse" in meant).toBe(false);
  });
});

describe("how it is taken", () => {
  const lacing = (more: Partial<ListeningContext> = {}) => ears(stepWith(null, { wordsKey: "lace.ring" }), more);
  it.each(["mid one is torn", "we're two straps short", "mid one is mended", "straps are here"])(
    "%s is read back, and left alone bare",
    (said) => {
      expect(hear({ alternatives: [said], talk: true }, lacing())).toMatchObject({ readBack: true, source: "talk" });
      expect(hear({ alternatives: [`albatross ${said}`], talk: false }, lacing())).toMatchObject({ readBack: true, source: "wake" });
      expect(hear({ alternatives: [said], talk: false }, lacing())).toMatchObject({ leftAlone: "wakeWord" });
    },
  );

  it.each([yes, exactly(4), noneOf, document(null)])("is no answer to what is asked: %o", (check) =>
    expect(understand("mid one is torn", { step: stepWith(check), asks: null })).toEqual(piece("mid-1", "torn")),
  );

  it("a note may tell it and is a note", () =>
    expect(understand("note: mid one is torn", NOTHING_ASKED)).toEqual({ intent: { type: "note", text: "mid one is torn" } }));
});
