import { describe, expect, it } from "vitest";
import { DEFAULTS, MIN_TOLERANCE_IN } from "../../machines/install/limits.ts";
import { overheadClearanceFt } from "../../machines/install/published-limits.ts";
import { clearanceRules } from "../../machines/install/site-rules.ts";
import { clearancesOf, LEFT_OUT } from "../../machines/site/clearances.ts";
import { type BuriedLine, EMPTY_SITE, type SiteModel, THING_KINDS } from "../../machines/site/model.ts";
import { type Place, placeByCornerA } from "../../machines/site/stand.ts";
import { at, box, buried, rulesFor, site, thing, wire } from "../support/sites.ts";
import { eighty, planOf, twenty } from "../tent/tents.ts";

const plan = planOf(twenty);
const middle: Place = { middle: at(0, 0), headingDeg: 0 };
const at0 = (ground: SiteModel, place = middle) => clearancesOf(plan, ground, { place, rules: rulesFor(ground) });
const near = (ground: SiteModel, place = middle) => at0(ground, place).neighbors[0]!;
/** How much of the zone is left at the nearest stake of the near edge, whose stake line is 16 ft from the middle. */
const verdictAt = (yFt: number, more: Partial<BuriedLine> = {}) =>
  near(site({ buried: [buried([at(-60, yFt), at(60, yFt)], more)] })).nearest[0]!;

describe("a stake and a buried line", () => {
  it("are 24 in apart, and the foot that a stake may be off its plate's mark", () => {
    expect(verdictAt(-19)).toMatchObject({ distanceFt: 3, wantedFt: 3, verdict: "notShort" });
    expect(verdictAt(-18.9)).toMatchObject({ wantedFt: 3, verdict: "short" });
  });
  it("are measured from the line's outer edge where a width is marked", () => {
    expect(verdictAt(-19.5, { widthIn: 12 })).toMatchObject({ wantedFt: 3.5, verdict: "notShort" });
    expect(verdictAt(-19.4, { widthIn: 12 })).toMatchObject({ verdict: "short" });
  });
  it("are wider apart where the zone was entered wider, and never nearer than the ticket's", () => {
    expect(verdictAt(-19, { toleranceIn: 36 })).toMatchObject({ wantedFt: 4, verdict: "short" });
    expect(verdictAt(-19, { toleranceIn: 18 })).toMatchObject({ wantedFt: 3, verdict: "notShort" });
  });
  it("are wider apart by as much as the line may lie from where it was entered", () => {
    expect(verdictAt(-19, { errorFt: 2.5 })).toMatchObject({ wantedFt: 5.5, verdict: "short" });
  });
  it("are never judged by less than any law allows", () => {
    const ground = site({ buried: [buried([at(-60, -17), at(60, -17)])] });
    const rules = { ...rulesFor(ground), toleranceIn: { is: 6, source: "brief" as const } };
    const [line] = clearancesOf(plan, ground, { place: middle, rules }).neighbors;
    expect(line!.nearest[0]!.wantedFt).toBe(MIN_TOLERANCE_IN / 12 + 1);
  });
  it("are told with every figure and its source", () => {
    expect(verdictAt(-17, { widthIn: 12 })).toMatchObject({
      of: { is: "plate" },
      terms: [
        { term: "tolerance", ft: 2, source: DEFAULTS.toleranceIn.source },
        { term: "halfWidth", ft: 0.5, source: "brief" },
        { term: "entryError", ft: 0 },
        { term: "reach", ft: 1, source: "practice" },
      ],
    });
  });
  it("every stake that is short is named, and the nearest three are for the crew to measure", () => {
    const found = near(site({ buried: [buried([at(-60, -17), at(60, -17)])] }));
    // Of the near edge: two plates of each corner and the one between.
    expect(found.short.map(({ of }) => of.is === "plate" && `${of.station}.${of.plate}`).sort()).toEqual(
      ["A.1", "A.2", "D.2", "D.3", "DA1.1"].sort(),
    );
    expect(found.nearest.length).toBe(3);
  });
  it("inside ties are stakes, too", () => {
    expect(near(site({ buried: [buried([at(0, 3), at(1, 3)])] })).short).toMatchObject([{ of: { is: "tie", pole: "C1" }, wantedFt: 4 }]);
  });
  it("turn with the tent", () => {
    const turned = near(site({ buried: [buried([at(-60, -20), at(60, -20)])] }), { ...middle, headingDeg: 45 });
    // Turned by 45°, D's middle plate is 16√2 down, over the line; its other two, 10 and 16 ft out, are (10 + 16)/√2 down.
    expect(turned.short.map(({ distanceFt }) => distanceFt)).toEqual(
      [20 - 26 / Math.SQRT2, 20 - 26 / Math.SQRT2, 16 * Math.SQRT2 - 20].map((ft) => expect.closeTo(ft, 5)),
    );
  });
});

describe("a pole and a wire", () => {
  const tall = planOf({ ...eighty, centerPoleFt: 32 });
  const poleAt = (distanceFt: number, kv: number | null) => {
    // The center pole farthest off the baseline's end is 10 ft from the middle, side poles of 8 ft at 50.
    const ground = site({ overhead: [wire([at(-500, 10 + distanceFt), at(500, 10 + distanceFt)], { kv })] });
    const [found] = clearancesOf(tall, ground, { place: middle, rules: rulesFor(ground) }).neighbors;
    return found!.short.concat(found!.nearest).find(({ of }) => of.is === "pole" && of.id === "C2");
  };
  it("of 32 ft and 7.2 kV want 42: 38 is short, 43 is not", () => {
    expect(poleAt(38, 7.2)).toMatchObject({ distanceFt: 38, wantedFt: 42, verdict: "short" });
    const far = site({ overhead: [wire([at(-500, 53), at(500, 53)])] });
    const [found] = clearancesOf(planTied(), far, { place: middle, rules: rulesFor(far) }).neighbors;
    expect(found!.nearest[0]).toMatchObject({ of: { id: "C2" }, distanceFt: 43, wantedFt: 42, verdict: "notShort" });
  });
  it("of a voltage that nobody knows want 52", () => {
    expect(poleAt(51.9, null)).toMatchObject({ wantedFt: 52, verdict: "short" });
    expect(poleAt(38, null)).toMatchObject({ wantedFt: 52 });
  });
  it("beyond the table are not known, but short in reach of the pole itself", () => {
    expect(poleAt(31, 1200)).toMatchObject({ wantedFt: null, verdict: "short" });
    const far = site({ overhead: [wire([at(-500, 500), at(500, 500)], { kv: 1200 })] });
    expect(at0(far)).toMatchObject({ verdict: "notKnown", neighbors: [{ short: [] }] });
  });
  it("have the published clearances, by each line's own voltage", () => {
    const lines = [7.2, 69, null, 1200].map((kv, i) => ({ id: `${i}`, kv }));
    expect(Object.values(clearanceRules(DEFAULTS, lines).overheadFt)).toEqual(lines.map(({ kv }) => overheadClearanceFt(kv)));
  });
  it("that no rule says anything about are not known", () => {
    const ground = site({ overhead: [wire([at(-500, 500), at(500, 500)])] });
    const rules = { ...rulesFor(ground), overheadFt: {} };
    expect(clearancesOf(plan, ground, { place: middle, rules }).verdict).toBe("notKnown");
  });
  /** The tall tent with nothing but its center poles near the wire: side poles of 8 ft reach less, but stand farther out. */
  function planTied() {
    return { ...tall, stations: tall.stations.filter((s) => s.yFt < 60), poles: tall.poles.filter((p) => p.kind === "center") };
  }
});

describe("ropes and cloth", () => {
  it.each(THING_KINDS)("keep 20 ft from what the fire standard names, and off what is in the way: %s", (kind) => {
    const wantedFt = kind === "tree" || kind === "other" ? 0 : 20;
    const beside = thing(kind, { is: "polygon", corners: box(-5, 26, 10, 10) });
    expect(near(site({ things: [beside] })).nearest).toMatchObject([
      { of: { is: "outline" }, distanceFt: 10, wantedFt, verdict: wantedFt > 10 ? "short" : "notShort" },
    ]);
  });
  it("are short of a thing that they touch or stand over, whatever is wanted", () => {
    for (const shape of [
      { is: "circle", middle: at(0, 0), radiusFt: 1 },
      { is: "polygon", corners: box(-100, -100, 200, 200) },
      { is: "polygon", corners: box(-1, -100, 2, 200) },
      { is: "path", points: [at(16, -5), at(16, 5)] },
    ] as const)
      expect(near(site({ things: [thing("tree", shape)] })).nearest).toMatchObject([{ distanceFt: 0, verdict: "short" }]);
  });
  it("are short of ground of which a corner comes in under them", () => {
    const notched = [at(-50, -50), at(-50, 50), at(0, 10), at(50, 50), at(50, -50)];
    expect(near(site({ ground: { errorFt: 0, corners: notched } }))).toMatchObject({ from: { is: "ground" }, short: [{ distanceFt: 0 }] });
    expect(near(site({ ground: { errorFt: 0, corners: box(-20, -20, 40, 40) } }))).toMatchObject({ short: [] });
    expect(near(site({ ground: { errorFt: 5, corners: box(-20, -20, 40, 40) } }))).toMatchObject({ short: [{ wantedFt: 5 }] });
  });
});

describe("a verdict", () => {
  it("is not known where nothing was entered", () => expect(at0(EMPTY_SITE).verdict).toBe("notKnown"));
  it("says what it leaves out: of wires where there are some, of widths where one is not marked", () => {
    const line = buried([at(-60, -60), at(60, -60)], { widthIn: 4 });
    expect(at0(site({ buried: [line] })).leftOut).not.toContain("wireSway");
    expect(at0(site({ buried: [line] })).leftOut).not.toContain("widthNotMarked");
    const all = site({ buried: [{ ...line, widthIn: null }], overhead: [wire([at(-500, 500), at(500, 500)])] });
    expect(at0(all).leftOut).toEqual(LEFT_OUT);
  });
  it("names the stakes outside the ticket's area; on its edge they are in it, and within its error they are not", () => {
    const ticketed = (halfFt: number, errorFt = 0) =>
      site({ ticketArea: { errorFt, corners: box(-halfFt, -halfFt, 2 * halfFt, 2 * halfFt) } });
    expect(at0(EMPTY_SITE).leavesTicket).toBe(null);
    expect(at0(ticketed(16)).leavesTicket).toEqual([]);
    expect(at0(ticketed(15.9)).leavesTicket?.length).toBe(16);
    expect(at0(ticketed(17, 2)).leavesTicket?.length).toBe(16);
  });
  it("is the same from corner A as from the middle", () => {
    expect(placeByCornerA(plan, at(-10, -10), 0)).toEqual(middle);
  });
});
