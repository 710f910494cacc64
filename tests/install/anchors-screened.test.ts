import { describe, expect, it } from "vitest";
import type { Anchorage } from "../../machines/install/anchorage.ts";
import type { Brief } from "../../machines/install/brief.ts";
import { changesOf } from "../../machines/install/changes.ts";
import { finding } from "../../machines/install/checks/any-check.ts";
import { looserIn } from "../../machines/install/looser.ts";
import { truckLoadOf } from "../../machines/install/truck-load.ts";
import { changeText } from "../../views/text/en/changes.ts";
import { en } from "../../views/text/en/en.ts";
import { sayText } from "../../views/text/replies.ts";
import { disagreements } from "../proof/disagreements.ts";
import { frozenOf } from "../proof/fixtures.ts";
import { HELD_BY_PULLS, SHORT_BY_PULLS, screenedBrief, WINDY } from "../support/anchorages.ts";
import { PAPER } from "../support/answers.ts";
import { Crew } from "../support/crew.ts";

const calls = (brief: Brief) => frozenOf(brief).script.steps.filter(({ id }) => id.startsWith("anchors."));
const said = (brief: Brief) => calls(brief).map((step) => sayText(step, en));
const [SHORT, HELD] = [SHORT_BY_PULLS, HELD_BY_PULLS];
const given = (softest: number, second: number, third: number) =>
  ({ kind: "figures", unit: "lbf", n: { softest, second, third } }) as const;
const told = (from: Partial<Anchorage>, to: Partial<Anchorage>) =>
  changesOf(frozenOf(screenedBrief(from)), frozenOf(screenedBrief(to))).map((change) => changeText(change, { name: String, zone: "UTC" }));

describe("a screening that comes out short", () => {
  it("is told before the first stake is driven, with the worst station and its ratio", () => {
    const ids = frozenOf(screenedBrief(SHORT)).script.steps.map(({ id }) => id);
    expect(ids.indexOf("anchors.screened")).toBeLessThan(ids.indexOf("drive.AB"));
    expect(said(screenedBrief(SHORT))[0]).toBe("Screening: AB1 is short, 1.15 times what its stakes may carry.");
  });
  it("keeps shut at pulls that are too low, and opens at ones that hold the load times the factor", () => {
    const crew = new Crew(screenedBrief(SHORT)).goTo("anchors.pulled");
    crew.say({ type: "answer", gate: "anchors.pulled", value: given(640, 980, 1120) });
    expect(crew.next()).toMatchObject({ refused: [{ why: "gate", gate: "anchors.pulled", status: "outOfLimit" }] });
    crew.say({ type: "answer", gate: "anchors.pulled", value: given(735, 980, 1120) });
    expect(crew.missing).not.toBe("anchors.pulled");
  });
  it.each([9800, 5001])("takes no figure for a pull that no stake is known to hold: %i", (slipped) => {
    const crew = new Crew(screenedBrief(SHORT)).goTo("anchors.pulled");
    const outcome = crew.say({ type: "answer", gate: "anchors.pulled", value: given(735, slipped, 1120) });
    expect(outcome).toMatchObject({ refused: [{ why: "unbelievable", n: slipped, bounds: { to: 5000 } }] });
    expect(crew.missing).toBe("anchors.pulled");
  });
  it("takes an engineer's paper that a second person has seen", () => {
    const crew = new Crew(screenedBrief(SHORT)).goTo("anchors.pulled");
    crew.say({ type: "answer", gate: "anchors.pulled", value: PAPER });
    expect(crew.missing).toBe("anchors.pulled");
    crew.say({ type: "answer", gate: "anchors.pulled", value: PAPER }, "competent");
    expect(crew.missing).not.toBe("anchors.pulled");
  });
  it("says with both figures what pulls come to, and what a third stake would do", () => {
    const check = { ...calls(screenedBrief(SHORT))[1]!.gate!.check, pulls: { demandLbf: 540, tensionLbf: 1080, stakes: 2, allowed: null, factor: 1.5 } }; // biome-ignore format: one line reads best
    const text = (allowed: number | null) =>
      en.findingText(finding({ ...check, pulls: { ...check.pulls, allowed } } as never, given(640, 980, 1120), { answers: {} })!);
    expect(text(null)).toBe("Softest spot 640 lb: a stake counts for 427, against 540. A third stake only if the sheet allows it.");
    expect(text(2)).toContain("It takes 3 stakes; the sheet allows 2.");
    expect(text(4)).toContain("3 stakes at that plate are what it takes; the sheet allows 4.");
  });
  it("asks for nothing but a paper where the load isn't known", () => {
    const [, asked] = calls(screenedBrief({ ...SHORT, gustMph: null }));
    expect([asked?.wordsKey, asked?.gate?.check]).toEqual(["anchors.noLoad", { kind: "paperOnly" }]);
  });
  it("refuses bare stakes in sand", () => {
    expect(said(screenedBrief({ ...WINDY, soil: "sandDense" }))[0]).toContain("bare stakes don't hold in sand");
  });
  it("puts gauge and come-along on the truck", () => {
    const known = screenedBrief(SHORT, { site: { soilKnown: true } });
    const { plan, limits } = frozenOf(known);
    expect(truckLoadOf(known, plan, limits).map(({ item }) => item)).toContain("pullGauge");
  });
});

describe("the tables of the proofs", () => {
  it.each([
    ["short", SHORT],
    ["held by earlier pulls", HELD],
  ] as const)("agree with a job whose anchors are %s", (_, told) => expect(disagreements(frozenOf(screenedBrief(told)))).toEqual([]));
});

describe("weights at the straps", () => {
  const weights = (told: Partial<Anchorage>) => {
    const brief = screenedBrief({ ...WINDY, ...told });
    const { plan, limits } = frozenOf(brief);
    return truckLoadOf(brief, plan, limits).find(({ item }) => item === "ballastWeight");
  };
  it("are on the truck list, one a strap, with what the worst of them needs", () => {
    const [rough, slick] = [0.5, 0.25].map((coefficient) => weights({ friction: { coefficient, by: "dragTest" } }));
    expect(rough).toMatchObject({ count: frozenOf(screenedBrief(WINDY)).plan.plates.length, lb: rough!.count * rough!.unitLb! });
    expect(slick!.unitLb).toBeGreaterThan(rough!.unitLb!);
  });
  it("are none where no friction was told", () => {
    expect(weights({})).toBeUndefined();
  });
});

describe("a screening that finds nothing short, or doesn't know", () => {
  it("opens nothing and shuts nothing", () => {
    const [bare, notKnown] = [screenedBrief({}), screenedBrief(WINDY)].map((brief) => frozenOf(brief).script.steps);
    const gates = (steps: typeof bare) => steps!.filter(({ gate }) => gate).map(({ id }) => id);
    const { anchorage: _, ...without } = screenedBrief({});
    expect([gates(bare), gates(notKnown)]).toEqual([gates(frozenOf(without).script.steps), gates(frozenOf(without).script.steps)]);
  });
  it("says 'at least' of a ratio that may be more", () => {
    const rainy = { ...SHORT, rainSincePulls: null };
    expect(said(screenedBrief(rainy))[0]).toBe("Screening: AB1 is short, at least 1.15 times what its stakes may carry.");
  });
  it("says why it isn't known", () => {
    expect(said(screenedBrief({}))).toEqual(["Screening: not known. Nobody gave the design gust."]);
  });
  it("asks for pulls again after heavy rain where it rests on earlier ones, and not before", () => {
    const crew = new Crew(screenedBrief(HELD)).goTo("anchors.pulled");
    expect(crew.missing).not.toBe("anchors.pulled");
    crew.say({ type: "reading", reading: { kind: "rain", takenAt: crew.at } } as never);
    expect(crew.job.snapshot.context.reopened["anchors.pulled"]?.by).toBe("rain");
  });
});

describe("anchors told otherwise", () => {
  it("are asked again, and shown as kinder where a gust gets lower and the pulls higher", () => {
    expect(told(SHORT, { ...SHORT, gustMph: 40 })).toEqual(["LOOSER ON ANCHORS. Design gust, mph: 40; was 60."]);
    expect(told(SHORT, HELD)).toEqual([
      "LOOSER ON ANCHORS. Pulls before the job: 2000 lb along the strap; 1500 lb along the strap; 900 lb along the strap at the softest spot; was 1120 lb along the strap; 980 lb along the strap; 640 lb along the strap at the softest spot.",
    ]);
  });
  it("are not kinder where less is counted on", () => {
    expect(told(HELD, { ...HELD, exposure: "D", factorOfSafety: 2 })).toEqual([
      "Ground upwind: open water or flats upwind; was open country upwind.",
      "Factor of safety: 2.",
    ]);
  });
  it.each<[string, Partial<Anchorage>, Partial<Anchorage>]>([
    ["soil", { soil: "sandLoose" }, { soil: null }],
    ["underRoof", { underRoof: "obstructed" }, { underRoof: "clear" }],
    ["exposure", { exposure: "C" }, { exposure: null }],
    ["sheetAllows.side", {}, { sheetAllows: { corner: null, seamEnd: null, side: 3 } }],
    ["sheetAllows.side", { sheetAllows: { corner: null, seamEnd: null, side: 1 } }, {}],
    ["factorOfSafety", { factorOfSafety: 2 }, { factorOfSafety: null }],
  ])("a kinder %s is looser, and no paper governs it", (field, from, to) => {
    const looser = looserIn(frozenOf(screenedBrief({ ...WINDY, ...from })), frozenOf(screenedBrief({ ...WINDY, ...to })));
    expect(looser).toEqual([{ field: `anchorage.${field}`, paper: null }]);
  });
  it("that are no longer told at all are looser throughout", () => {
    const { anchorage: _, ...without } = screenedBrief(SHORT);
    expect(looserIn(frozenOf(screenedBrief(SHORT)), frozenOf(without)).map(({ field }) => field)).toContain("anchorage.pulls");
  });
  it("reopens pulls that were made", () => {
    const crew = new Crew(screenedBrief(SHORT)).goTo("anchors.pulled");
    crew.say({ type: "answer", gate: "anchors.pulled", value: given(2000, 2000, 2000) });
    crew.amend(frozenOf(screenedBrief({ ...SHORT, gustMph: 61 })));
    expect(crew.job.snapshot.context.answers["anchors.pulled"]).toBeUndefined();
  });
});
