import { describe, expect, it } from "vitest";
import type { Brief, Sheet } from "../../machines/install/brief.ts";
import { changesOf } from "../../machines/install/changes.ts";
import { DEFAULTS, limitsFor, MAX_GUST_MPH } from "../../machines/install/limits.ts";
import { looserIn } from "../../machines/install/looser.ts";
import type { Frozen } from "../../machines/install/step.ts";
import { EMPTY_SITE, type SiteModel } from "../../machines/site/model.ts";
import { changeText } from "../../views/text/en/changes.ts";
import { refusalText } from "../../views/text/en/refusals.ts";
import { briefOf, DAY, frozenOf, SMALL, START } from "../proof/fixtures.ts";
import { PAPER } from "../support/answers.ts";
import { Crew } from "../support/crew.ts";
import { at, wire } from "../support/sites.ts";

/** A sheet that gives every figure, stricter than what is usual. */
const FIGURES: Partial<Sheet> = {
  document: "RC-2020 rev A",
  stakeDiameterIn: 1.25,
  stakeLengthIn: 42,
  embedmentIn: 38,
  stakeLeanDeg: { from: 3, to: 8 },
  pullTestLbf: 900,
  squareInPer50Ft: 0.5,
  sidePoleLeanDeg: 0.5,
  raiseGustMph: 15,
  stopGustMph: 20,
  insideGustMph: 25,
};
type Changed = Omit<NonNullable<Parameters<typeof briefOf>[1]>, "crew">;
const given = ({ sheet, ...more }: Changed = {}): Brief => briefOf(SMALL, { ...more, sheet: { ...FIGURES, ...sheet } });
const strict = frozenOf(given());
const fields = (to: Frozen, from = strict) => looserIn(from, to).map((l) => l.field);

const LOOSER: readonly (readonly [string, Changed, string])[] = [
  ["a thinner stake", { sheet: { stakeDiameterIn: 1.125 } }, "sheet.stakeDiameterIn"],
  ["a shorter stake", { sheet: { stakeLengthIn: 40 } }, "sheet.stakeLengthIn"],
  ["less embedment", { sheet: { embedmentIn: 36 } }, "sheet.embedmentIn"],
  ["no embedment, which lets more of it show", { sheet: { embedmentIn: null } }, "sheet.embedmentIn"],
  ["more showing, of a longer stake", { sheet: { stakeLengthIn: 44 } }, "sheet.stakeLengthIn"],
  ["a lean that begins earlier", { sheet: { stakeLeanDeg: { from: 0, to: 8 } } }, "sheet.stakeLeanDeg.from"],
  ["a lean that goes further", { sheet: { stakeLeanDeg: { from: 3, to: 12 } } }, "sheet.stakeLeanDeg.to"],
  ["raising in more wind", { sheet: { raiseGustMph: 18 } }, "sheet.raiseGustMph"],
  ["stopping in more wind", { sheet: { stopGustMph: 24 } }, "sheet.stopGustMph"],
  ["people inside in more wind", { sheet: { insideGustMph: 30 } }, "sheet.insideGustMph"],
  ["no figure for raising, where the usual one is higher", { sheet: { raiseGustMph: null } }, "sheet.raiseGustMph"],
  ["squaring more loosely", { sheet: { squareInPer50Ft: 1 } }, "sheet.squareInPer50Ft"],
  ["side poles further off plumb", { sheet: { sidePoleLeanDeg: 1 } }, "sheet.sidePoleLeanDeg"],
  ["a lighter pull", { sheet: { pullTestLbf: 600 } }, "sheet.pullTestLbf"],
  ["inside poles tied when all stand", { sheet: { interiorTies: "afterAll" } }, "sheet.interiorTies"],
  ["another kind of stake", { sheet: { stakeKind: "wood" } }, "sheet.stakeKind"],
  ["other ground", { sheet: { soil: "loose sand" } }, "sheet.soil"],
  ["soil that is known", { site: { soilKnown: true } }, "site.soilKnown"],
];

describe("an amendment under the same sheet number", () => {
  it.each(LOOSER)("is refused for %s", (_what, changed, field) => {
    const to = frozenOf(given(changed));
    expect(fields(to)).toEqual([field]);
    const crew = new Crew(strict.brief);
    const outcome = crew.say({ type: "amend", because: "the sheet came", to });
    expect(outcome).toEqual({ refused: [{ why: "looserLimit", paper: "sheet", fields: [field] }] });
    expect(crew.job.proposed).toBeNull();
  });
  it.each(LOOSER)("is taken for the other way round than %s", (_what, changed) => {
    const from = frozenOf(given(changed));
    // A longer stake of the same embedment shows more; a shorter one is shorter; another kind is another: both ways are looser.
    if (changed.sheet?.stakeLengthIn || changed.sheet?.stakeKind || changed.sheet?.soil) return;
    expect(new Crew(from.brief).say({ type: "amend", because: "the sheet came", to: strict })).toEqual({ did: "proposed" });
  });
  it("is refused for a pull where only an engineer's paper would do", () => {
    const none = frozenOf(given({ sheet: { pullTestLbf: null } }));
    expect([fields(strict, none), fields(none)]).toEqual([["sheet.pullTestLbf"], []]);
  });
  it("is refused for fewer plates or stakes at a station, and not for more", () => {
    const anchored = (corner: object | null) =>
      frozenOf({ ...given(), tent: { ...given().tent, anchors: { corner, seamEnd: null, side: null } } as never });
    const [usual, six, eight] = [anchored(null), anchored({ plates: 3, stakes: 6 }), anchored({ plates: 3, stakes: 8 })];
    expect([fields(six, eight), fields(eight, six), fields(anchored({ plates: 1, stakes: 1 }), usual)]).toEqual([
      ["tent.anchors.corner.stakes"],
      [],
      ["tent.anchors.corner.plates", "tent.anchors.corner.stakes"],
    ]);
    expect(changesOf(eight, six).filter((c) => c.what === "fact" && c.looser)).toMatchObject([
      { field: "tent.anchors.corner.stakes", from: 8, to: 6 },
    ]);
  });
  it("is refused for stakes nearer to the poles, and not for stakes farther out", () => {
    const out = (setbackFt: number) => frozenOf({ ...given(), tent: { ...given().tent, setbackFt } });
    expect([fields(out(5), out(6)), fields(out(6), out(5))]).toEqual([["tent.setbackFt"], []]);
  });
  it("shows a line that is gone to the one who agrees, one of unknown voltage too, and not one more", () => {
    const two = frozenOf(given({ site: { overheadKv: [7.2, 345] } }));
    const none = frozenOf(given({ site: { overheadKv: [] } }));
    for (const overheadKv of [[345], [null]]) {
      const listed = frozenOf(given({ site: { overheadKv } }));
      expect(looserIn(listed, none)).toEqual([{ field: "site.overheadKv", paper: null }]);
      expect(new Crew(listed.brief).say({ type: "amend", because: "it's a phone line", to: none })).toEqual({ did: "proposed" });
    }
    const [one, beyond] = [frozenOf(given({ site: { overheadKv: [345] } })), frozenOf(given({ site: { overheadKv: [7.2, 1200] } }))];
    expect([fields(one, two), fields(two, one), fields(beyond, two), fields(two, beyond)]).toEqual([
      ["site.overheadKv"],
      [],
      [],
      ["site.overheadKv"],
    ]);
  });
  it("that takes one limit looser and another tighter is refused for the one", () => {
    const to = frozenOf(given({ sheet: { stakeDiameterIn: 1, embedmentIn: 40, sidePoleLeanDeg: 0.25 } }));
    expect(fields(to)).toEqual(["sheet.stakeDiameterIn"]);
  });
  it.each(["RC-2020 rev A", "rc 2020 REV a", "x"])("is refused under %s, which is no new number", (document) => {
    const to = frozenOf(given({ sheet: { stakeDiameterIn: 1, document } }));
    expect(new Crew(strict.brief).say({ type: "amend", because: "thin ones came", to })).toMatchObject({
      refused: [{ why: "looserLimit" }],
    });
  });
});

describe("a wire", () => {
  const high = frozenOf(given({ site: { overheadKv: [115] } }));
  const low = (document: string) => frozenOf(given({ site: { overheadKv: [0.4] }, sheet: { document } }));
  it.each(["RC-2020 rev A", "RC-2020 rev B"])("of less voltage is refused under %s: no sheet speaks for its owner", (document) => {
    const outcome = new Crew(high.brief).say({ type: "amend", because: "they say it's the small one", to: low(document) });
    expect(outcome).toEqual({ refused: [{ why: "looserLimit", paper: "lineOwner", fields: ["site.overheadKv"] }] });
    if (!("refused" in outcome)) throw new Error("it was taken");
    expect(refusalText(outcome.refused[0]!, {} as never)).toBe(
      "Only the line's owner can allow less clearance. Bring their paper to that call.",
    );
  });
  it("is opened at its call by its owner's paper", () => {
    const crew = new Crew(high.brief).goTo("overhead.1");
    const shown = { type: "answer", gate: "overhead.1", value: PAPER } as const;
    crew.say(shown, "lead");
    expect(crew.call).toBe("overhead.1");
    crew.say(shown, "deputy");
    crew.ready();
    expect(crew.next()).toEqual({ did: "moved" });
  });
});

describe("a voltage that the brief lists, beside a wire that is entered on the site", () => {
  const site = (overheadKv: number[], ...overhead: SiteModel["overhead"]) =>
    frozenOf({ ...given({ site: { overheadKv } }), siteModel: { ...EMPTY_SITE, overhead } });
  const far = wire([at(400, 0), at(400, 90)], { id: "far off" });
  it("is its owner's to say, and gets no lower by a wire that is entered far off", () => {
    for (const to of [site([7.2], far), site([], far)])
      expect(new Crew(site([500]).brief).say({ type: "amend", because: "it's the small one", to })).toEqual({
        refused: [{ why: "looserLimit", paper: "lineOwner", fields: ["site.overheadKv"] }],
      });
  });
  it("is entered on the site where it runs", () => {
    const entered = site([], { ...far, kv: 500 });
    expect(new Crew(site([500]).brief).say({ type: "amend", because: "taped it", to: entered })).toEqual({ did: "proposed" });
  });
  it("of a wire that was entered is a correction of two people's", () =>
    expect(looserIn(site([], { ...far, kv: 500 }), site([], far))).toEqual([{ field: "siteModel.overhead", paper: null }]));
});

describe("fewer anchors than before, after an engineer's anchor stood in for some", () => {
  it("take a new sheet all the same", () => {
    const of = (corner: { plates: number; stakes: number }, ...fixes: NonNullable<SiteModel["fixes"]>) =>
      frozenOf({
        ...given(),
        tent: { ...given().tent, anchors: { corner, seamEnd: null, side: null } },
        siteModel: { ...EMPTY_SITE, fixes },
      });
    const [three, two] = [
      { plates: 3, stakes: 6 },
      { plates: 2, stakes: 4 },
    ];
    const anchored = of(three, { is: "engineeredAnchor", stake: { is: "plate", station: "A", plate: 1 }, expose: ["gas 1"] });
    expect(fields(of(two), anchored)).toEqual(["tent.anchors.corner.plates", "tent.anchors.corner.stakes"]);
  });
});

describe("a line off the list", () => {
  const wires = (...overheadKv: (number | null)[]) => frozenOf(given({ site: { overheadKv } }));
  it("hides no line that comes nearer: of two, the other may not have less clearance than either", () => {
    const outcome = new Crew(wires(115, 345).brief).say({ type: "amend", because: "one is gone", to: wires(7.2) });
    expect(outcome).toMatchObject({ refused: [{ why: "looserLimit", paper: "lineOwner" }] });
  });
  it("leaves those that stay as they were", () =>
    expect(new Crew(wires(7.2, 345).brief).say({ type: "amend", because: "one is gone", to: wires(7.2) })).toEqual({ did: "proposed" }));
});

describe("what a tent is opened with", () => {
  const of = (use: Changed["use"]) => frozenOf(given({ use: { permit: "required", hungLoads: true, walls: true, ...use } }));
  it.each([
    ["fewer people, and so fewer exits", { occupants: 40 }, "use.occupants"],
    ["no permit", { permit: "notRequired" }, "use.permit"],
    ["no loads to look at", { hungLoads: false }, "use.hungLoads"],
    ["no walls", { walls: false }, "use.walls"],
  ] as const)("goes to a second person as looser for %s", (_what, use, field) => {
    const [from, to] = [of({}), of(use)];
    expect(new Crew(from.brief).say({ type: "amend", because: "they called", to })).toEqual({ did: "proposed" });
    const [first] = changesOf(from, to).filter((c) => c.what === "fact");
    expect(first).toMatchObject({ field, looser: true });
  });
  it("is no looser for more people, where nobody knew how many", () => {
    expect(fields(of({ occupants: 900 }), of({ occupants: 60 }))).toEqual([]);
    expect(fields(of({ occupants: null }), of({ occupants: 60 }))).toEqual([]);
  });
});

describe("the accident's stake", () => {
  const thin = { stakeDiameterIn: 0.75, embedmentIn: 28, raiseGustMph: 25, stopGustMph: 30, insideGustMph: 38 };
  it("is refused in a sentence that names what got looser", () => {
    const outcome = new Crew(strict.brief).say({ type: "amend", because: "that's what came", to: frozenOf(given({ sheet: thin })) });
    if (!("refused" in outcome)) throw new Error("it was taken");
    const texts = outcome.refused.map((refusal) => refusalText(refusal, {} as never));
    expect(texts).toEqual(["Looser limits need a new sheet number: stake diameter, embedment, gust that stops raising and 2 more."]);
    expect(texts[0]!.split(" ").length).toBeLessThanOrEqual(20);
  });
  it("under a new number goes to a second person, each looser limit first and said to be one", () => {
    const to = frozenOf(given({ sheet: { ...thin, document: "RC-2020 rev B" }, site: { rallyPoint: "the barn" } }));
    expect(new Crew(strict.brief).say({ type: "amend", because: "new sheet", to })).toEqual({ did: "proposed" });
    const texts = changesOf(strict, to).map((c) => changeText(c, { name: (id) => id, zone: "America/Denver" }));
    expect(texts.slice(0, 2)).toEqual(["LOOSER LIMIT. Stake diameter, in: 0.75; was 1.25.", "LOOSER LIMIT. Embedment, in: 28; was 38."]);
    expect(texts.map((text) => text.startsWith("LOOSER LIMIT. "))).toEqual([true, true, true, true, true, false, false]);
  });
});

describe("a ticket", () => {
  const wide = frozenOf(given({ ticket: { toleranceIn: 24, number: "DIG-26-1187" } }));
  const near = (number: string) => frozenOf(given({ ticket: { toleranceIn: 18, number } }));
  it("lets stakes nearer to a mark only under a number of its own", () => {
    const crew = new Crew(wide.brief);
    expect(crew.say({ type: "amend", because: "the county says 18", to: near("DIG-26-1187") })).toEqual({
      refused: [{ why: "looserLimit", paper: "ticket", fields: ["ticket.toleranceIn"] }],
    });
    expect(crew.say({ type: "amend", because: "new ticket", to: near("DIG-26-1240") })).toEqual({ did: "proposed" });
  });
  const marked = [
    { kind: "gas", marked: true },
    { kind: "water", marked: false },
  ] as const;
  it.each([
    ["a utility with lines to have none", { utilities: [{ kind: "gas", marked: false }, marked[1]] }, ["ticket.utilities.gas.marked"]],
    [
      "a utility with lines to say nothing yet",
      { utilities: [{ kind: "gas", marked: "unanswered" }, marked[1]] },
      ["ticket.utilities.gas.marked"],
    ],
    ["a utility to be off the list", { utilities: [marked[0]] }, ["ticket.utilities.water.marked"]],
    ["itself hold for longer", { validTo: START + 61 * DAY }, ["ticket.validTo"]],
    ["itself hold from earlier on", { validFrom: START - 2 * DAY }, ["ticket.validFrom"]],
  ] as const)("lets %s only under a number of its own", (_what, ticket, looser) => {
    const to = (number: string) => frozenOf(given({ ticket: { ...ticket, number } }));
    const { number } = strict.brief.ticket!;
    expect(new Crew(strict.brief).say({ type: "amend", because: "they called", to: to(number) })).toEqual({
      refused: [{ why: "looserLimit", paper: "ticket", fields: looser }],
    });
    expect(new Crew(strict.brief).say({ type: "amend", because: "new ticket", to: to(`${number} update 1`) })).toEqual({ did: "proposed" });
  });
  it("lets a utility without lines have some, or one more stand on it, and itself end earlier", () => {
    const utilities = [marked[0], { kind: "water", marked: true }, { kind: "sewer", marked: false }] as const;
    expect(fields(frozenOf(given({ ticket: { utilities, validTo: START + 59 * DAY } })))).toEqual([]);
  });
  it.each([true, false])("takes the answer of a utility that had none yet, under its own number: lines %s", (answer) => {
    const asked = frozenOf(given({ ticket: { utilities: [{ kind: "gas", marked: "unanswered" }] } }));
    const to = frozenOf(given({ ticket: { utilities: [{ kind: "gas", marked: answer }] } }));
    expect(looserIn(asked, to)).toEqual([]);
    const { steps } = asked.script;
    expect(steps.find((step) => step.id === "locate.answers")!.gate!.check).toMatchObject({ kind: "each", names: ["gas"] });
    expect(steps.some((step) => step.id === "nearest.gas")).toBe(true);
    expect(to.script.steps.some((step) => step.id === "nearest.gas")).toBe(answer);
  });
  it("is no paper for a stake", () => {
    const to = frozenOf(given({ ticket: { number: "DIG-26-1240" }, sheet: { stakeDiameterIn: 1 } }));
    expect(new Crew(wide.brief).say({ type: "amend", because: "thin", to })).toMatchObject({ refused: [{ paper: "sheet" }] });
  });
});

describe("wind limits", () => {
  it("never stand above what is published, whatever a brief says", () => {
    const old = briefOf(SMALL, { sheet: { raiseGustMph: 60, stopGustMph: 60, insideGustMph: 60 } });
    const { raiseGustMph, stopGustMph, insideGustMph } = limitsFor(old);
    expect({ raiseGustMph: raiseGustMph.is, stopGustMph: stopGustMph.is, insideGustMph: insideGustMph.is }).toEqual(MAX_GUST_MPH);
    expect([raiseGustMph.source, stopGustMph.source, insideGustMph.source]).toEqual(["practice", "practice", "practice"]);
  });
  it("are the sheet's up to there, and the usual ones where it is silent", () => {
    const { raiseGustMph, stopGustMph } = limitsFor(briefOf(SMALL, { sheet: { raiseGustMph: 25, stopGustMph: null } }));
    expect([raiseGustMph, stopGustMph]).toEqual([{ is: 25, source: "sheet" }, DEFAULTS.stopGustMph]);
  });
});

it("a default that is looser today than when the job was frozen is nobody's amendment", () => {
  const from = frozenOf(briefOf(SMALL, { sheet: { sidePoleLeanDeg: null } }));
  const limits = { ...from.limits, sidePoleLeanDeg: { ...from.limits.sidePoleLeanDeg, is: 5 } };
  expect(looserIn(from, { ...from, limits })).toEqual([]);
});
