import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { digest } from "../../machines/digest/digest.ts";
import { ORDER_OF_USE } from "../../machines/tent/load.ts";
import { checkSpec } from "../../machines/tent/spec.ts";
import { type BriefInput, readBrief } from "../../server/input/brief.ts";
import { briefFromForm } from "../../server/input/brief-from-form.ts";
import { briefToForm } from "../../server/input/brief-to-form.ts";
import { kitFromForm, kitOf, kitToForm } from "../../server/input/kit.ts";
import { inWords, Problem } from "../../server/input/problem.ts";
import { besideField, readTentForm, tentFromForm, tentToForm } from "../../server/input/tent.ts";
import { fields } from "../../views/text/en/brief.ts";
import { en } from "../../views/text/en/en.ts";
import { brief } from "../support/app.ts";
import { anySpec } from "../tent/any-tent.ts";

/** A brief through its form and back. */
const again = (input: BriefInput) => {
  const { frozen, names } = readBrief(input);
  return { before: frozen.brief, after: readBrief(briefFromForm(briefToForm(frozen.brief, names, en))).frozen.brief };
};
/** What is wrong with a brief, by field. */
const problemsOf = (input: unknown): Readonly<Record<string, string>> => {
  try {
    readBrief(input);
    return {};
  } catch (error) {
    if (error instanceof Problem) return inWords(error.fields, en);
    throw error;
  }
};
/** The demo's tent as a form, with some fields typed otherwise. */
const typed = (otherwise: Record<string, string>) =>
  readTentForm({ ...tentToForm(readBrief(brief()).frozen.brief.tent, en), ...otherwise });
const specOf = (otherwise: Record<string, string>) => {
  const read = typed(otherwise);
  if ("problems" in read) throw new Error(JSON.stringify(inWords(read.problems, en)));
  return read.spec;
};
const wrongIn = (otherwise: Record<string, string>) => {
  const read = typed(otherwise);
  return "problems" in read ? inWords(read.problems, en) : {};
};

describe("a tent through its form", () => {
  it("comes back as the same tent to the bit, whatever tent it is, and with no key that it did not have", () => {
    let [ringed, shifted, given] = [0, 0, 0];
    fc.assert(
      fc.property(anySpec, (spec) => {
        ringed += spec.rings ? 1 : 0;
        shifted += spec.shifted ? 1 : 0;
        given += spec.ridge.kind === "given" ? 1 : 0;
        const checked = checkSpec(tentFromForm(tentToForm(spec, en)));
        expect(checked).toStrictEqual({ spec });
        expect(digest.of("spec" in checked && checked.spec)).toBe(digest.of(spec));
      }),
      { numRuns: 200 },
    );
    expect(Math.min(ringed, shifted, given)).toBeGreaterThan(10);
  });
  it("says nothing of rings and corners where the cloth and the site said nothing", () => {
    expect(Object.keys(specOf({}))).not.toContain("rings");
    expect(Object.keys(specOf({}))).not.toContain("shifted");
  });
  it("takes a length as a tape or a crew says it", () => {
    expect(specOf({ "tent.setbackFt": "6 ft 6 in", "tent.shifted.C.yFt": "-3 1/2 in", "tent.centerPoleFt": "8 m" })).toMatchObject({
      setbackFt: 6.5,
      centerPoleFt: 26.246719,
      shifted: { C: { xFt: 0, yFt: -0.291667 } },
    });
  });
  it("shows a corner's shift as a tape does, and reads it back the same", () => {
    const form = tentToForm(specOf({ "tent.shifted.C.yFt": "-3 1/2 in", "tent.shifted.C.xFt": "0.3" }), en);
    expect([form["tent.shifted.C.xFt"], form["tent.shifted.C.yFt"]]).toEqual(["0.3", "-3 1/2 in"]);
  });
  it("takes mids however they are divided", () => {
    for (const mids of ["20", "10, 10", "10 + 10", "10 10", "10 ft; 10 ft"])
      expect(specOf({ "tent.midsFt": mids }).midsFt.reduce((a, b) => a + b)).toBe(20);
  });
  it("takes names of poles in small letters", () => {
    expect(specOf({ "tent.leaveOut": "q2, q9" }).leaveOut).toEqual(["Q2", "Q9"]);
  });
  it("takes poles more from any of its rows, and leaves empty ones alone", () => {
    expect(
      specOf({ "tent.add.3.kind": "quarter", "tent.add.3.xFt": "33", "tent.add.3.yFt": "47", "tent.add.1.kind": "center" }).add,
    ).toEqual([{ kind: "quarter", xFt: 33, yFt: 47 }]);
  });
});

describe("what makes no sense in a tent's form", () => {
  it.each([
    ["tent.widthFt", "wide", '"wide" is not a number. Give a number of feet.'],
    ["tent.widthFt", "15", "15 ft wide is outside 20 to 120 ft. Nearest that works: 20."],
    ["tent.spacingFt", "10 lb", '"10 lb" is not a number. Give a number of feet. Nearest that works: 10.'],
    ["tent.leaveOut", "C9", 'There is no pole "C9" to leave out. Nearest that works: C2.'],
    ["tent.rings.AB", "900", "900 rings along AB: bays are 1 to 20 ft, and corners and seam ends have one each. Nearest that works: 101."],
    ["tent.rings.AB", "some", '"some" is not a number. Count them.'],
    ["tent.shifted.D.xFt", "3", "A corner 3 ft out of its place is more than cloth gives: at most 2 ft. Nearest that works: 2."],
    ["tent.anchors.corner.plates", "9", "9 is not a number of plates or stakes. Use whole numbers from the sheet. Nearest that works: 6."],
    ["tent.quarterRings", "7", "7 rings of quarter poles: the sheet says 0, 1 or 2. Look it up. Nearest that works: 2."],
  ])("%s: %s is refused beside its field, with the value and the reason", (field, text, sentence) => {
    expect(wrongIn({ [field]: text })[field]).toBe(sentence);
  });
  it("a mid that cannot be laid stands beside the field of the mids", () => {
    expect(wrongIn({ "tent.midsFt": "20, 0" })).toMatchObject({ "tent.midsFt": "A mid of 0 ft cannot be laid. Nearest that works: 1." });
  });
  it("a pole more outside the tent stands beside its own row", () => {
    const row = { "tent.add.2.kind": "center", "tent.add.2.xFt": "500", "tent.add.2.yFt": "50" };
    expect(wrongIn(row)).toEqual({ "tent.add.2.xFt": "A pole at 500, 50 is outside the tent. Nearest that works: 79, 50." });
  });
  it("poles evenly without a number, and at given places without a place, are asked for", () => {
    expect(wrongIn({ "tent.ridge.kind": "evenly" })).toEqual({
      "tent.ridge.count": "Nothing is given here. It takes a number. Nearest that works: 2.",
    });
    expect(wrongIn({ "tent.ridge.kind": "given" })).toMatchObject({ "tent.ridge.fromNearEndFt": /No place is given/ });
  });
  it("at the seams, for a top without seams, is refused beside the choice", () => {
    const onePiece = { "tent.onePiece": "yes", "tent.splitEnds": "no", "tent.midsFt": "", "tent.ridge.kind": "atSeams" };
    expect(wrongIn(onePiece)).toMatchObject({ "tent.ridge.kind": /"atSeams" is not a way to set the poles/ });
  });
  it("what was left empty is told apart from what is wrong", () => {
    expect(typed({ "tent.centerPoleFt": "", "tent.spacingFt": "-1" })).toMatchObject({ missing: ["tent.centerPoleFt"] });
  });
  it("every problem of every tent has a field in the form to stand beside", () => {
    const known = (field: string) => field in fields || /^tent\.add\.\d+\.(?:kind|xFt|yFt)$/.test(field);
    const text = fc.oneof(fc.constantFrom("", "0", "-1", "x", "900", "C9", "1, 2, x"), fc.string({ maxLength: 6 }));
    const names = Object.keys(tentToForm(readBrief(brief()).frozen.brief.tent, en)).concat(
      "tent.add.2.kind",
      "tent.add.2.xFt",
      "tent.add.2.yFt",
    );
    fc.assert(
      fc.property(fc.dictionary(fc.constantFrom(...names), text), (otherwise) => {
        expect(Object.keys(wrongIn(otherwise)).filter((field) => !known(field))).toEqual([]);
      }),
    );
  });
});

describe("a brief through its form", () => {
  it("comes back the same with all that it can say", () => {
    const { before, after } = again({
      ...brief(),
      site: { ...brief().site, overheadKv: [null, 115], baselineBearingDeg: 271.5, street: { edge: "CD", name: "Tansy Lane" } },
      tent: { ...brief().tent, anchors: { corner: { plates: 4, stakes: 8 } }, leaveOut: ["Q2"], rings: { AB: 12 } },
      sheet: {
        ...brief().sheet,
        stakeLeanDeg: { from: 2, to: 8 },
        pullTestLbf: 900,
        sidePoleLeanDeg: 0.5,
        insideGustMph: 35,
        interiorTies: "afterAll",
      },
      kit: { perimeterStake: { spare: 0.07, unitLb: 13.5 }, midPiece: { unitLb: 240 }, sidePole: { spare: 0 } },
    });
    expect(after).toStrictEqual(before);
    expect(before.site.street).toEqual({ edge: "CD", name: "Tansy Lane" });
    expect(before.kit).toEqual({ perimeterStake: { spare: 0.07, unitLb: 13.5 }, midPiece: { unitLb: 240 }, sidePole: { spare: 0 } });
  });
  it("takes the gusts of a sheet up to their bounds, and each one's words stand beside its field", () => {
    const { frozen, names } = readBrief(brief());
    const form = (gusts: Record<string, string>) => briefFromForm({ ...briefToForm(frozen.brief, names, en), ...gusts });
    const most = form({ "sheet.raiseGustMph": "25", "sheet.stopGustMph": "30", "sheet.insideGustMph": "38" });
    expect(readBrief(most).frozen.brief.sheet).toMatchObject({ raiseGustMph: 25, stopGustMph: 30, insideGustMph: 38 });
    const none = form({ "sheet.raiseGustMph": "", "sheet.stopGustMph": "", "sheet.insideGustMph": "" });
    expect(readBrief(none).frozen.brief.sheet).toMatchObject({ raiseGustMph: null, stopGustMph: null, insideGustMph: null });
    const over = form({ "sheet.raiseGustMph": "25.5", "sheet.stopGustMph": "30.5", "sheet.insideGustMph": "38.5" });
    expect(problemsOf(over)).toEqual({
      "sheet.raiseGustMph": "25.5 mph is over the guide's own cap of 25, whatever the sheet allows. Enter 25.",
      "sheet.stopGustMph": "30.5 mph is over the guide's own cap of 30, whatever the sheet allows. Enter 30.",
      "sheet.insideGustMph": "38.5 mph is over the guide's own cap of 38, whatever the sheet allows. Enter 38.",
    });
    expect(problemsOf(form({ "sheet.raiseGustMph": "25", "sheet.stopGustMph": "24" }))).toEqual({
      "sheet.raiseGustMph": "Raising stops at 25 mph, which is over the 24 mph where everything stops. Enter 24 or less.",
    });
  });
  it("asks for a storm shelter, and takes no tree and no tent for one", () => {
    const { frozen, names } = readBrief(brief());
    const shelter = (text: string) => briefFromForm({ ...briefToForm(frozen.brief, names, en), "site.stormShelter": text });
    expect(readBrief(shelter("the school gym")).frozen.brief.site.stormShelter).toBe("the school gym");
    expect(problemsOf(shelter(""))).toEqual({ "site.stormShelter": "Empty. Fill it in." });
    for (const none of ["the oak by the gate", "the other tent", "under the oaks"])
      expect(problemsOf(shelter(none)), none).toEqual({
        "site.stormShelter": `${none} is no storm shelter. Name a building or a hard-topped vehicle.`,
      });
  });
  it("that says nothing of bearing, street and kit is frozen as it always was", () => {
    const { before, after } = again({ ...brief(), site: { ...brief().site, baselineBearingDeg: null, street: null }, kit: null });
    expect(after).toStrictEqual(before);
    expect(before).toStrictEqual(readBrief(brief()).frozen.brief);
    expect([...Object.keys(before), ...Object.keys(before.site)]).not.toEqual(expect.arrayContaining(["kit"]));
    // Taken down before briefs could say more than this.
    expect(Object.keys(before).sort()).toEqual(["crew", "sheet", "site", "tent", "ticket", "title", "use", "zone"]);
    expect(Object.keys(before.site).sort()).toEqual(["address", "firstAid", "overheadKv", "rallyPoint", "soilKnown", "stormShelter"]);
  });
  it("with one end of the lean left empty takes what the field says of an empty one", () => {
    const { frozen, names } = readBrief(brief());
    const form = { ...briefToForm(frozen.brief, names, en), "sheet.stakeLeanDeg.to": "6" };
    expect(readBrief(briefFromForm(form)).frozen.brief.sheet?.stakeLeanDeg).toEqual({ from: 0, to: 6 });
  });
  it("from a script with fields missing, of the wrong kind, or unheard of is refused field by field, in our words", () => {
    const { title: _, ...rest } = brief();
    const site = { ...rest.site, soilKnown: "maybe", street: { edge: "XY", name: "Tansy Lane" } };
    const sheet = { ...rest.sheet, interiorTies: "someday" };
    expect(problemsOf({ ...rest, sheet, site, zone: 7, crew: [{ name: "Ines", role: "boss" }, rest.crew[1]] })).toEqual({
      title: "Nothing is given here, and it is needed.",
      zone: "7 is not what belongs here.",
      "sheet.interiorTies": '"someday" is not one of: byLine, afterAll.',
      "site.soilKnown": "Say true or false.",
      "site.street.edge": '"XY" is not one of: AB, BC, CD, DA.',
      "crew.0.role": expect.stringMatching(/^"boss" is not one of: lead, deputy/),
    });
  });
  it("from a script with a misspelled field of the tent is refused: nothing that was meant is left out silently", () => {
    expect(problemsOf({ ...brief(), tent: { ...brief().tent, leaveout: ["C1"] } })).toEqual({
      "tent.leaveout": '"leaveout" is not known; did you mean leaveOut?',
    });
  });
  it("names a wrong value and its limits", () => {
    const { frozen, names } = readBrief(brief());
    const form = {
      ...briefToForm(frozen.brief, names, en),
      "site.baselineBearingDeg": "400",
      "site.street.name": "Tansy Lane",
      "site.overhead": "115, lots",
      "sheet.stakeLengthIn": "long",
      "kit.perimeterStake.spare": "150",
      "kit.midPiece.unitLb": "9000 lb",
      "kit.sidePole.unitLb": "heavy",
    };
    const problems = problemsOf(briefFromForm(form));
    expect(Object.fromEntries(Object.entries(problems).map(([field, why]) => [besideField(field, form), why]))).toEqual({
      "site.baselineBearingDeg": "400 is out of range. From 0 to 360.",
      "site.street.edge": "Not one of: AB, BC, CD, DA.",
      "site.overhead": '"lots" is not a number. Give one, like 8 or 5 1/2.',
      "sheet.stakeLengthIn": '"long" is not a number. Give one, like 8 or 5 1/2.',
      "kit.perimeterStake.spare": "Spares of 150% are outside 0 to 100%.",
      "kit.midPiece.unitLb": "9000 lb is outside 0.1 to 5000 lb for one of them.",
      "kit.sidePole.unitLb": '"heavy" is not a weight. Give what one weighs in lb, or leave it empty.',
    });
  });
});

describe("notes on the kit through their form", () => {
  const note = fc.record(
    { spare: fc.integer({ min: 0, max: 1_000_000 }).map((n) => n / 1e6), unitLb: fc.integer({ min: 1, max: 50_000 }).map((n) => n / 10) },
    { requiredKeys: [] },
  );
  it("come back the same, and an item of which nothing is known is not there", () => {
    fc.assert(
      fc.property(fc.dictionary(fc.constantFrom(...ORDER_OF_USE), note), (notes) => {
        const kit = kitOf(notes);
        expect(kitOf((kitFromForm(kitToForm(kit)) ?? null) as typeof notes | null)).toStrictEqual(kit);
      }),
    );
  });
  it("are taken with a per cent sign and a unit", () => {
    expect(kitFromForm({ "kit.sidePole.spare": "7 %", "kit.sidePole.unitLb": "31 1/2 lb" })).toEqual({
      sidePole: { spare: 0.07, unitLb: 31.5 },
    });
  });
  it("are nothing where nothing is filled in: no weight is guessed", () => {
    expect(kitFromForm(kitToForm(undefined))).toBeUndefined();
  });
});
