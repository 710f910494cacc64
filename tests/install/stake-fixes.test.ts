import { describe, expect, it } from "vitest";
import { changesOf } from "../../machines/install/changes.ts";
import { everythingLooser } from "../../machines/install/looser-site.ts";
import { placeOf } from "../../machines/install/site-clearances.ts";
import { clearanceRules } from "../../machines/install/site-rules.ts";
import { truckLoadOf } from "../../machines/install/truck-load.ts";
import { fixesAt } from "../../machines/site/fixes.ts";
import type { SiteModel } from "../../machines/site/model.ts";
import { problemsOfFixes } from "../../machines/site/read-fixes.ts";
import { readSite } from "../../machines/site/read-site.ts";
import { toldAs } from "../../machines/site/told-as.ts";
import { stakeLines } from "../../machines/tent/tape.ts";
import { changeText } from "../../views/text/en/changes.ts";
import { en } from "../../views/text/en/en.ts";
import { sayText } from "../../views/text/replies.ts";
import { disagreements } from "../proof/disagreements.ts";
import { frozenOf } from "../proof/fixtures.ts";
import { PAPER } from "../support/answers.ts";
import { Crew } from "../support/crew.ts";
import { NEAR_AB1, onSite } from "../support/site-briefs.ts";
import { at, buried } from "../support/sites.ts";

/** A line that crosses the stake line at AB1. */
const CROSSING = buried([at(-60, 11), at(-3, 11)]);
const crossed = onSite({ buried: [CROSSING] });
const fixedWith = (...fixes: NonNullable<SiteModel["fixes"]>) => onSite({ buried: [CROSSING], fixes });
const slide = { is: "slide", station: "AB1", byFt: -4, stakes: [] } as const;
const anchor = { is: "engineeredAnchor", stake: { is: "plate", station: "AB1", plate: 1 }, expose: ["gas 1"] } as const;
const calls = (brief: ReturnType<typeof onSite>) => frozenOf(brief).script.steps.map(({ id }) => id);

describe("plates that slide", () => {
  it("stand elsewhere in the plan, and out of the zone", () => {
    const { plan } = frozenOf(fixedWith(slide));
    const before = frozenOf(crossed).plan;
    expect(plan.plates.find((p) => p.station === "AB1")).toMatchObject({ xFt: -6, yFt: 6 });
    expect([plan.stations, plan.kit, plan.edges]).toEqual([before.stations, before.kit, before.edges]);
    expect([calls(crossed).includes("site.stakes"), calls(fixedWith(slide)).includes("site.stakes")]).toEqual([true, false]);
  });
  it("are what the search finds for a stake in a zone", () => {
    const { plan, limits, brief } = frozenOf(onSite({ buried: [NEAR_AB1] }));
    const found = fixesAt(plan, brief.siteModel!, { place: placeOf(plan, brief.siteModel!), rules: clearanceRules(limits, []) });
    expect(problemsOfFixes(plan, found)).toEqual([]);
  });
  it.each([
    [{ ...slide, byFt: -9 }, "slidesTooFar"],
    [{ ...slide, byFt: 4 }, "ok"],
    [{ ...slide, station: "A" }, "slidesTooFar"],
    [{ ...slide, station: "AB9" }, "slidesTooFar"],
    [{ ...anchor, stake: { is: "plate", station: "AB1", plate: 3 } }, "noSuchStake"],
    [{ ...anchor, stake: { is: "tie", pole: "C1" } }, "ok"],
  ] as const)("%j: %s", (fix, is) => {
    const roomy = { ...frozenOf(crossed).plan, spec: { ...frozenOf(crossed).plan.spec, spacingFt: 15 } };
    expect(problemsOfFixes(roomy, [fix]).map(({ code }) => code)).toEqual(is === "ok" ? [] : [is]);
  });
  it("never open a gap wider than the sheet's spacing", () => {
    expect(problemsOfFixes(frozenOf(crossed).plan, [slide])).toMatchObject([{ path: "fixes.0", code: "slidesTooFar", limit: 10 }]);
  });
  it("ask the stakes again and are told", () => {
    const crew = new Crew(onSite({})).goTo("drive.BC");
    crew.amend(frozenOf(onSite({ fixes: [slide] })));
    expect(crew.job.snapshot.context.answers["drive.AB"]).toBeUndefined();
    expect(changesOf(frozenOf(crossed), frozenOf(fixedWith(slide))).map((c) => changeText(c, { name: String, zone: "UTC" }))).toEqual(["Plates at AB1 slide 4 ft counterclockwise along the edge."]); // biome-ignore format: one line reads best
  });
});

describe("an engineer's anchor in place of a stake", () => {
  const brief = fixedWith(anchor);
  it("takes that stake out of that line's zone, for two gates of its own", () => {
    expect(calls(brief).filter((id) => /^(?:site|anchor)\./.test(id))).toEqual(["anchor.exposed.AB1.1", "anchor.paper.AB1.1"]);
    expect(disagreements(frozenOf(brief))).toEqual([]);
  });
  it("is opened by the line exposed and a paper that two have seen, and by nothing else", () => {
    const crew = new Crew(brief).goTo("anchor.paper.AB1.1");
    const gate = "anchor.paper.AB1.1";
    expect(crew.say({ type: "answer", gate, value: { kind: "yesNo", yes: true } })).toMatchObject({ refused: [{ why: "wrongKind" }] });
    crew.say({ type: "answer", gate, value: PAPER });
    expect(crew.next()).toMatchObject({ refused: [{ gate, status: "unseen" }] });
    expect(crew.goTo("baseline").call).toBe("baseline");
  });
  it("does so however the record has sorted its fields", () => {
    const sorted = fixedWith({ ...anchor, stake: { is: "plate", plate: 1, station: "AB1" } });
    expect(calls(sorted)).not.toContain("site.stakes");
  });
  it("is in the way of nothing else: its stakes are not driven, counted, taped to, brought or pulled", () => {
    const step = (of: typeof brief, id: string) => frozenOf(of).script.steps.find((s) => s.id === id)!;
    const [want, before] = [brief, crossed].map((of) => step(of, "stakes.AB").gate!.check);
    const at = frozenOf(crossed).plan.plates.find(({ station }) => station === "AB1")!;
    if (want?.kind !== "figures" || before?.kind !== "figures") throw new Error("no counts");
    expect([want.want.stakes?.to, want.want.plates?.to]).toEqual([before.want.stakes!.to! - at.stakes, before.want.plates!.to! - 1]);
    expect(sayText(step(brief, "drive.AB"), en)).toBe("Drive AB, not AB1. Off the paint. Find the tallest.");
    expect(step(brief, "nearest.gas").params).not.toMatchObject({ stakes: expect.stringContaining("AB1") });
    const count = (of: typeof brief, item: string) =>
      truckLoadOf(of, frozenOf(of).plan, frozenOf(of).limits).find((l) => l.item === item)!.count;
    expect(count(crossed, "perimeterStake") - count(brief, "perimeterStake")).toBeGreaterThanOrEqual(at.stakes);
    expect(Number(step(crossed, "strike.stakes").params!.stakes) - Number(step(brief, "strike.stakes").params!.stakes)).toBe(at.stakes);
  });
  it("is marked on the layout, and has no stakes in its tables", () => {
    const { plan } = frozenOf(brief);
    expect(
      stakeLines(plan)[0]!
        .marks.filter(({ stakes }) => stakes === 0)
        .map(({ station }) => station),
    ).toEqual(["AB1"]);
    expect(plan.plates.filter(({ replaced }) => replaced)).toHaveLength(1);
  });
  it("in place of an inside stake has that one not driven either", () => {
    const tie = fixedWith({ is: "engineeredAnchor", stake: { is: "tie", pole: "C1" }, expose: ["gas 1"] });
    expect(sayText(frozenOf(tie).script.steps.find(({ id }) => id === "tied.center.C1")!, en)).toBe("Center pole C1: drive nothing. Strap it to the engineer's anchor."); // biome-ignore format: one line reads best
    expect(frozenOf(tie).plan.kit.some(({ item }) => item === "interiorStake")).toBe(false);
  });
  it("is offered for no stake in dug ground", () => {
    const {
      plan,
      limits,
      brief: there,
    } = frozenOf(
      onSite({
        buried: [
          { ...CROSSING, kind: "excavation" },
          { ...CROSSING, id: "gas 1" },
        ],
      }),
    );
    const found = fixesAt(plan, there.siteModel!, { place: placeOf(plan, there.siteModel!), rules: clearanceRules(limits, []) });
    expect(found.filter(({ is }) => is === "engineeredAnchor")).toEqual([]);
  });
  it("leaves an edge without a stake out of what is driven and pulled, and names a place once", () => {
    const plan = frozenOf(crossed).plan;
    const all = plan.stations
      .filter(({ edge }) => edge === "AB")
      .flatMap(({ id, plates }) =>
        Array.from({ length: plates }, (_, i) => ({ ...anchor, stake: { is: "plate", station: id, plate: i + 1 } as const })),
      );
    const ids = calls({ ...fixedWith(...all), site: { ...crossed.site, soilKnown: false } });
    expect(ids.filter((id) => /^(?:drive|pull)\.(?:AB|BC)$/.test(id))).toEqual(["drive.BC", "pull.BC"]);
  });
  it("helps no stake in dug ground, not even said to be exposed", () => {
    expect(calls(onSite({ buried: [{ ...CROSSING, kind: "excavation" }], fixes: [anchor] }))).toContain("site.stakes");
  });
  it("names the lines to expose, at least one", () => {
    expect(readSite({ fixes: [{ ...anchor, expose: [] }] }, 18)).toMatchObject({ problems: [{ path: "fixes.0.expose", code: "missing" }] });
  });
  it("helps no stake in dug ground", () => {
    const dug = onSite({ buried: [{ ...CROSSING, kind: "excavation" }], fixes: [{ ...anchor, expose: [] }] });
    expect(calls(dug)).toContain("site.stakes");
  });
  it("is asked again, line and paper, where another line is to be exposed for it", () => {
    const far = buried([at(-60, 200), at(-3, 200)], { id: "water 1", kind: "water" });
    const exposing = (...expose: string[]) => onSite({ buried: [CROSSING, far], fixes: [{ ...anchor, expose }] });
    const crew = new Crew(exposing("gas 1")).goTo("baseline");
    crew.amend(frozenOf(exposing("gas 1", "water 1")));
    expect(crew.missing).toBe("anchor.exposed.AB1.1");
    expect(crew.job.snapshot.context.answers["anchor.paper.AB1.1"]).toBeUndefined();
  });
  it("is told once for a stake, with all of its lines", () => {
    const twice = [anchor, { ...anchor, expose: ["water 1"] }];
    expect(problemsOfFixes(frozenOf(crossed).plan, twice)).toMatchObject([{ path: "fixes.1", code: "stakeTwice", value: "AB1.1" }]);
  });
  it("is shown as looser", () => {
    expect(everythingLooser(frozenOf(crossed), frozenOf(brief))).toEqual([{ field: "siteModel.fixes", paper: null }]);
  });
});

describe("what is done about stakes, as it comes in", () => {
  it("is read as it was told", () => {
    const site = fixedWith(slide, anchor).siteModel!;
    expect(readSite(JSON.parse(JSON.stringify(toldAs(site))), 18)).toEqual({ site });
  });
  it("is absent where nothing was told of it", () => {
    expect(readSite({}, 18)).not.toHaveProperty("site.fixes");
  });
  it.each([
    [{ is: "wish", station: "AB1" }, "fixes.0.is"],
    [{ ...slide, byFt: 90 }, "fixes.0.byFt"],
    [{ ...anchor, stake: { is: "plate", station: "AB1", plate: 0 } }, "fixes.0.stake.plate"],
    [{ ...slide, by: 3 }, "fixes.0.by"],
  ])("%j is refused by its place", (fix, path) => expect(readSite({ fixes: [fix] }, 18)).toMatchObject({ problems: [{ path }] }));
});
