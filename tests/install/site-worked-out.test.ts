import { describe, expect, it } from "vitest";
import type { Brief } from "../../machines/install/brief.ts";
import { changesOf } from "../../machines/install/changes.ts";
import { looserIn } from "../../machines/install/looser.ts";
import { everythingLooser } from "../../machines/install/looser-site.ts";
import { siteClearances } from "../../machines/install/site-clearances.ts";
import { type BuriedLine, EMPTY_SITE } from "../../machines/site/model.ts";
import { utilitiesMarked } from "../../views/text/en/calls/utilities-marked.ts";
import { changeText } from "../../views/text/en/changes.ts";
import { en } from "../../views/text/en/en.ts";
import { sayText } from "../../views/text/replies.ts";
import { disagreements } from "../proof/disagreements.ts";
import { briefOf, frozenOf, SMALL } from "../proof/fixtures.ts";
import { gateMutants } from "../proof/mutants.ts";
import { PAPER } from "../support/answers.ts";
import { Crew } from "../support/crew.ts";
import { FAR_OFF, NEAR_AB1, OFF_THE_BASELINE, onSite, TOO_NEAR } from "../support/site-briefs.ts";
import { at, box, buried, thing, wire } from "../support/sites.ts";

const said = (brief: Brief, id: string): string | null => {
  const step = frozenOf(brief).script.steps.find((one) => one.id === id);
  return step ? sayText(step, en) : null;
};
const told = (from: Brief, to: Brief) => changesOf(frozenOf(from), frozenOf(to)).map((change) => changeText(change, { name: String, zone: "UTC" })); // biome-ignore format: one line reads best
const gas = (...points: Parameters<typeof at>[]) => buried(points.map(([x, y]) => at(x, y)));
const moved = (xFt: number) => ({ wanted: { cornerA: at(xFt, 0), headingDeg: 0 } });

describe("stakes and buried lines", () => {
  const near = onSite({ buried: [NEAR_AB1] });
  it("names the stake, the line and both figures", () => {
    expect(said(near, "site.stakes")).toBe("AB1 stands in the gas zone: 18 in, 36 needed.");
  });
  it("counts the stake of an inside tie", () => {
    expect(said(onSite({ buried: [gas([10, 13], [14, 13])] }), "site.stakes")).toContain("C1 stands in the gas zone");
  });
  it("is opened by no answer, no paper, no reason and no next", () => {
    const crew = new Crew(near).goTo("site.stakes");
    const gate = "site.stakes";
    for (const value of [{ kind: "yesNo", yes: true }, { kind: "measure", n: 30, unit: "in" }, { kind: "unknown" }, PAPER] as const)
      expect(crew.say({ type: "answer", gate, value })).toMatchObject({ refused: [{ why: "wrongKind" }] });
    expect(crew.say({ type: "waive", gate, because: "it is deep" })).toMatchObject({ refused: [{ why: "hardGate" }] });
    expect(crew.next()).toMatchObject({ refused: [{ why: "gate", gate, status: "open" }] });
  });
  it("goes on once a lead and a second person correct the line, and asks the paint again", () => {
    const crew = new Crew(near).goTo("site.stakes");
    const target = crew.entry;
    crew.say({ type: "amend", because: "one flag off", to: frozenOf(onSite({ buried: [FAR_OFF] })) });
    expect(crew.say({ type: "agree", target }, "lead")).toEqual({ refused: [{ why: "sameAsProposer" }] });
    expect(crew.say({ type: "agree", target }, "competent")).toEqual({ did: "amended" });
    expect(crew.missing).toBe("marks.walked");
    expect(crew.goTo("baseline").call).toBe("baseline");
  });
  it("is worked out anew by another zone, at the same place on the same site", () => {
    const { plan, limits, brief } = frozenOf(onSite({ buried: [FAR_OFF] }));
    const wider = { ...limits, toleranceIn: { is: 480, source: "brief" } } as const;
    const verdict = (by: typeof limits) => siteClearances(plan, brief.siteModel!, by).verdict;
    expect([verdict(limits), verdict(wider), verdict(limits)]).toEqual(["notShort", "short", "notShort"]);
  });
  it("goes on once the tent is moved", () => {
    const crew = new Crew(near).goTo("site.stakes");
    crew.amend(frozenOf(onSite({ buried: [NEAR_AB1], ...moved(20) })));
    expect(crew.goTo("baseline").call).toBe("baseline");
  });
  it("says once that nothing is too near, and asks nothing with it", () => {
    const far = frozenOf(onSite({ buried: [FAR_OFF] }));
    expect(far.script.steps.filter(({ id }) => id.startsWith("site.")).map(({ id, gate }) => [id, gate])).toEqual([["site.clear", null]]);
  });
  it("asks for the line by the stakes that the crew measures, and shuts on what is measured inside the zone", () => {
    const far = onSite({ buried: [gas([-11, -50], [-11, 50])] });
    expect(said(far, "nearest.gas")).toBe("Gas paint: tape to A and AB1. Worked out: 60 in.");
    for (const n of [20, 35]) {
      const crew = new Crew(far).goTo("nearest.gas");
      crew.say({ type: "answer", gate: "nearest.gas", value: { kind: "measure", n, unit: "in" } });
      expect(crew.next()).toMatchObject({ refused: [{ gate: "nearest.gas", status: "outOfLimit" }] });
    }
  });
  it("wants of the tape what was needed on the drawing: zone, half the line's width, and a stake's way off its mark", () => {
    const from = (line: Partial<BuriedLine>) =>
      frozenOf(onSite({ buried: [{ ...FAR_OFF, ...line }] })).script.steps.find(({ id }) => id === "nearest.gas")?.gate?.check;
    expect(from({})).toMatchObject({ from: 36 });
    expect(from({ widthIn: 48 })).toMatchObject({ from: 60 });
    // Whoever tapes it sees where it is.
    expect(from({ errorFt: 3 })).toMatchObject({ from: 36 });
  });
  it("takes a wider zone of a line for what is measured, too", () => {
    const wide = frozenOf(onSite({ buried: [{ ...FAR_OFF, toleranceIn: 60 }] }));
    expect(wide.script.steps.find(({ id }) => id === "nearest.gas")?.gate?.check).toMatchObject({ from: 72 });
  });
  it("takes no 'none' where a private line was entered", () => {
    const well = frozenOf(onSite({ buried: [{ ...FAR_OFF, kind: "water", told: "private" }] }));
    expect(well.script.steps.find(({ id }) => id === "nearest.private")).toMatchObject({
      wordsKey: "nearest.entered",
      gate: { check: { noneIsGood: false } },
    });
  });
});

describe("the place of a tent on its site", () => {
  it("is told by corners A and B off the site's baseline, to the inch, before anything is painted", () => {
    const turned = OFF_THE_BASELINE;
    const ids = frozenOf(turned).script.steps.map(({ id }) => id);
    expect(ids.indexOf("white.footprint")).toBe(ids.indexOf("white.cornerA") + 2);
    expect([said(turned, "white.cornerA"), said(turned, "white.cornerB")]).toEqual([
      "Mark corner A: 5 ft back, 10 ft 6 in right.",
      // 20 ft at 30 degrees: 17.32 ft along, 10 ft off.
      "Mark corner B: 12 ft 4 in along, 20 ft 6 in right.",
    ]);
  });
  it("is asked again where it changes, and not told where it is the baseline itself", () => {
    const place = (y: number) => frozenOf(onSite({ wanted: { cornerA: at(0, y), headingDeg: 0 } }));
    const crew = new Crew(place(3).brief).goTo("baseline");
    crew.amend(place(9));
    expect(crew.missing).toBe("white.cornerB");
    expect(place(0).script.steps.some(({ id }) => id.startsWith("white.corner"))).toBe(false);
  });
});

describe("poles and wires: a 32 ft pole", () => {
  const poled = (kv: number | null, awayFt: number): Brief => ({ ...onSite({ overhead: [wire([at(10 - awayFt, -300), at(10 - awayFt, 300)], { kv })] }, { site: { overheadKv: [] } }), tent: { ...briefOf(SMALL).tent, centerPoleFt: 32 } }); // biome-ignore format: one line reads best
  const shutAt = (kv: number | null, awayFt: number) => said(poled(kv, awayFt), "site.poles");
  it.each([
    [7.2, 38, "Pole C1 reaches the overhead line: 38 ft, 42 needed."],
    [7.2, 43, null],
    [null, 51, "Pole C1 reaches the overhead line: 51 ft, 52 needed."],
    [null, 52, null],
  ])("%s kV at %s ft", (kv, awayFt, says) => expect(shutAt(kv, awayFt)).toBe(says));
  it("of several, they reach", () => {
    const say = (of: string) => utilitiesMarked["site.poles"]!.say({ of, distance: 38, wanted: 42 });
    expect(say("Q1 C1 C2 Q2")).toBe("Poles Q1 and 3 more reach the overhead line: 38 ft, 42 needed.");
  });
  it("measures each wire by its name, from the one list", () => {
    const two = poled(7.2, 60);
    expect(said(two, "overhead.1")).toBe("Wire 1, 7.2 kV. Tape to the nearest side pole, and inside pole.");
    expect(frozenOf(two).script.steps.filter(({ id }) => id.startsWith("overhead."))).toHaveLength(1);
  });
  it("tapes the nearest side pole and the nearest inside pole, each against its own length, wherever the wire was entered", () => {
    for (const xFt of [-20, 90]) {
      const { script } = frozenOf(onSite({ overhead: [wire([at(xFt, -300), at(xFt, 300)])] }, { site: { overheadKv: [] } }));
      const { centerPoleFt, sidePoleFt } = briefOf(SMALL).tent;
      expect(script.steps.find(({ id }) => id === "overhead.1")?.gate?.check).toMatchObject({
        kind: "figures",
        want: { sidePole: { from: sidePoleFt + 10 }, insidePole: { from: centerPoleFt + 10 } },
      });
    }
  });
  it("keeps a voltage of the brief that no entered wire has", () => {
    const { limits } = frozenOf(onSite({ overhead: [wire([at(90, 0), at(90, 50)])] }, { site: { overheadKv: [500, 7.2] } }));
    expect(limits.overheadFt.is).toEqual([25, 10]);
  });
  it("over 1,000 kV only the line's owner says", () => {
    const { script } = frozenOf(poled(1200, 200));
    expect(script.steps.find(({ id }) => id === "overhead.1")?.gate?.check.kind).toBe("paperOnly");
    expect(script.steps.some(({ id }) => id === "site.clear")).toBe(false);
  });
});

describe("cloth, ropes and the ticket", () => {
  it.each([
    ["building", "Ropes or cloth too near the building: 9 ft, 20 needed."],
    ["exit", "Ropes or cloth too near the exit: 9 ft, 20 needed."],
    ["tree", null],
  ] as const)("a %s 9 ft off", (kind, says) => {
    expect(said(onSite({ things: [thing(kind, { is: "polygon", corners: box(35, 0, 10, 10) })] }), "site.cloth")).toBe(says);
  });
  it("stakes outside the area of the ticket ask for it again", () => {
    const area = { errorFt: 0, corners: box(-20, -20, 34, 60) };
    expect(said(onSite({ ticketArea: area }), "site.ticket")).toContain("stand outside the ticket's area. Call it in again.");
    expect(said(onSite({ ticketArea: { errorFt: 0, corners: box(-20, -20, 60, 60) } }), "site.ticket")).toBeNull();
  });
});

it("the table of gates has all of them, each hard", () => {
  const all = frozenOf(TOO_NEAR);
  expect(disagreements(all)).toEqual([]);
  expect(gateMutants(all).filter((m) => !m.caughtBy)).toEqual([]);
});

describe("what a change of the site makes looser", () => {
  const was = onSite({ buried: [NEAR_AB1], overhead: [wire([at(80, 0), at(80, 50)])] });
  const site = was.siteModel!;
  const looser = (siteModel: Brief["siteModel"]) =>
    everythingLooser(frozenOf(was), frozenOf({ ...was, siteModel })).map(({ field, paper }) => [field, paper]);
  it.each<[string, Brief["siteModel"], unknown]>([
    ["a line gone", { ...site, buried: [] }, [["siteModel.buried", null]]],
    ["a line moved away", { ...site, buried: [FAR_OFF] }, [["siteModel.buried", null]]],
    ["a line moved nearer", { ...site, buried: [{ ...NEAR_AB1, points: [at(-7, 5), at(-7, 15)] }] }, []],
    ["a lower voltage", { ...site, overhead: [{ ...site.overhead[0]!, kv: 0.4 }] }, []],
    [
      "no site at all",
      undefined,
      [
        ["siteModel.overhead", null],
        ["siteModel.buried", null],
      ],
    ],
    ["one line more", { ...site, buried: [NEAR_AB1, { ...FAR_OFF, id: "gas 2" }] }, []],
  ])("%s", (_what, siteModel, fields) => expect(looser(siteModel).sort()).toEqual([...(fields as string[][])].sort()));
  it("is put forward without a paper, and shown first", () => {
    const gone = { ...was, siteModel: { ...site, buried: [], wanted: { cornerA: at(3, 4), headingDeg: -10 } } };
    expect(new Crew(was).say({ type: "amend", because: "no such line", to: frozenOf(gone) })).toEqual({ did: "proposed" });
    expect(told(was, gone)).toEqual(['LOOSER ON CLEARANCE. Gas "too near 1": taken out.', "The tent: corner A moves by 5 ft, A–B turns by 10° counterclockwise."]); // biome-ignore format: one line reads best
  });
  it("is a lower voltage where that wants less", () => {
    const high = onSite({ overhead: [wire([at(80, 0), at(80, 50)], { kv: 300 })] });
    const low = onSite({ overhead: [wire([at(80, 0), at(80, 50)])] });
    expect(looserIn(frozenOf(high), frozenOf(low)).map(({ field, paper }) => [field, paper])).toEqual([["siteModel.overhead", null]]);
  });
});

it("a moved place asks every mark again, as another tent would", () => {
  const crew = new Crew(onSite({})).goTo("drive.AB");
  crew.amend(frozenOf(onSite(moved(30))));
  expect(["white.stakeLine", "squared", "marked"].filter((gate) => crew.job.snapshot.context.answers[gate])).toEqual([]);
});

it("without a site every call is as it was", () => {
  expect(frozenOf(briefOf(SMALL)).script.steps.some(({ id }) => id.startsWith("site."))).toBe(false);
  expect(frozenOf(onSite(EMPTY_SITE)).script.steps.map(({ id }) => id)).toEqual(frozenOf(briefOf(SMALL)).script.steps.map(({ id }) => id));
});
