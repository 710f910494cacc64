import { describe, expect, it } from "vitest";
import { each, exactly, gate, measure, yes } from "../../machines/install/gates.ts";
import { understand } from "../../machines/speech/en/understand.ts";
import { type Asked, answerable } from "../../machines/speech/listening.ts";
import { stepWith } from "../support/steps.ts";

const asked = (wordsKey: string, check: Parameters<typeof gate>[0]): Asked => ({
  wordsKey,
  params: {},
  gate: { id: wordsKey, ...gate(check) },
});
const goingUnder = stepWith(exactly(4), { wordsKey: "under.in" });
const hats = asked("hats", yes);
const answer = (id: string, value: object) => ({ intent: { type: "answer", gate: id, value } });

describe("what is asked need not be the call's own gate", () => {
  it("an answer goes to what is asked, in that question's own words", () =>
    expect(understand("hats on", { step: goingUnder, asks: hats })).toEqual(answer("hats", { kind: "yesNo", yes: true })));
  it("what is no answer to it may answer the call's own gate", () => {
    expect(understand("four going under", { step: goingUnder, asks: hats })).toEqual(answer("here", { kind: "count", n: 4 }));
    expect(understand("hats on", { step: goingUnder, asks: null })).toEqual({ notUnderstood: true });
  });
  it("a call without a gate still takes answers to what is asked", () =>
    expect(understand("yup", { step: stepWith(null), asks: hats })).toEqual(answer("hats", { kind: "yesNo", yes: true })));
  it("a number with two readings is asked again, and not tried elsewhere", () =>
    expect(understand("six two", { step: goingUnder, asks: asked("clear.around", measure("ft", 20, null)) })).toMatchObject({
      ambiguous: { unit: "ft" },
    }));
  it("a number in another unit is", () =>
    expect(understand("six feet", { step: stepWith(measure("ft", 1, null)), asks: asked("lean", measure("deg", 0, 15)) })).toEqual(
      answer("here", { kind: "measure", n: 6, unit: "ft" }),
    ));
  it("a bare number is a wind where the wind is asked", () => {
    const wind = { wind: { mph: 12, gustMph: null, fromDeg: null, taken: null } };
    expect(understand("twelve", { step: goingUnder, asks: asked("wind", { kind: "wind", belowMph: 20 }) })).toEqual(wind);
  });
  it("a number that is no wind may answer the call's own gate", () =>
    expect(understand("six feet", { step: stepWith(measure("ft", 1, null)), asks: asked("wind", { kind: "wind", belowMph: 20 }) })).toEqual(
      answer("here", { kind: "measure", n: 6, unit: "ft" }),
    ));
  it("what is waived is what is asked", () =>
    expect(understand("waive because it is Sunday", { step: goingUnder, asks: hats })).toMatchObject({
      intent: { type: "waive", gate: "hats" },
    }));
  it("where time alone answers, the call's own gate is answered", () =>
    expect(understand("four", { step: goingUnder, asks: asked("thunder", { kind: "quiet" }) })).toEqual(
      answer("here", { kind: "count", n: 4 }),
    ));
  it("names on a list", () =>
    expect(understand("gas yes", { step: goingUnder, asks: asked("locate.answers", each(["gas"])) })).toEqual(
      answer("locate.answers", { kind: "each", yes: { gas: true } }),
    ));
  it("a gate that is both is tried once", () => {
    const { wordsKey, params } = goingUnder;
    expect(answerable({ step: goingUnder, asks: { wordsKey, params, gate: goingUnder.gate! } })).toHaveLength(1);
  });
});

describe("corners and edges in the spelling alphabet", () => {
  const lace = stepWith(yes, { wordsKey: "half.tied", params: { seam: "S2", toward: "CD" } });
  it("in the place before an answer", () => {
    expect(understand("seam two, Charlie Delta half, tied off", { step: lace, asks: null })).toEqual(
      answer("here", { kind: "yesNo", yes: true }),
    );
    expect(understand("seam two, Alpha Bravo half, tied off", { step: lace, asks: null })).toEqual({
      elsewhere: "seam two, Alpha Bravo half, tied off",
    });
  });
  it.each([
    ["how many stakes on Alpha Bravo", { what: "stakes", edge: "AB", kind: null }],
    ["how many stakes on the Bravo-Charlie side", { what: "stakes", edge: "BC", kind: null }],
    ["how many side poles on charlie delta", { what: "sidePoles", edge: "CD", kind: "side" }],
    ["how many stakes on A B", { what: "stakes", edge: "AB", kind: null }],
    ["how many stakes at the corners", { what: "stakes", edge: null, kind: "corner" }],
  ])("%s", (said, question) => expect(understand(said, { step: lace, asks: null })).toMatchObject({ question }));
  it.each([
    ["where is corner Charlie", "C"],
    ["where is Bravo-Charlie three", "BC3"],
    ["where's Bravo Charlie twenty-one", "BC21"],
    ["where is B C 3", "BC3"],
    ["where is BC3", "BC3"],
    ["where does Charlie one go", "C1"],
    ["where is Q 2", "Q2"],
    ["where's delta", "D"],
  ])("%s", (said, place) =>
    expect(understand(said, { step: lace, asks: null })).toMatchObject({
      question: { asks: "where", places: expect.arrayContaining([place]), words: said },
    }),
  );
  it("a note and a paper keep their words", () => {
    expect(understand("note: Charlie dropped the Delta pole", { step: lace, asks: null })).toMatchObject({
      intent: { text: "Charlie dropped the Delta pole" },
    });
    const paper = stepWith({ kind: "document", expected: null, validFrom: null, validTo: null });
    expect(understand("permit Delta 512", { step: paper, asks: null })).toEqual(answer("here", { kind: "document", named: "Delta 512" }));
  });
});
