import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fixesAt } from "../../machines/site/fixes.ts";
import { EMPTY_SITE } from "../../machines/site/model.ts";
import { findPlace } from "../../machines/site/placement.ts";
import { costFt, inOrder, SEARCH, shiftsTo, turnsTo } from "../../machines/site/shifts.ts";
import { at, box, buried, rulesFor, sameAsByHand, site, thing, wire } from "../support/sites.ts";
import { eighty, planOf, specOf, twenty } from "../tent/tents.ts";

const small = planOf(twenty);
const place = { middle: at(0, 0), headingDeg: 0 };
const look = (ground: Parameters<typeof rulesFor>[0], plan = small) => findPlace(plan, ground, { place, rules: rulesFor(ground) });

describe("the order of places", () => {
  it("is by cost, then by the smaller turn, clockwise first, then clockwise from ahead", () => {
    const all = turnsTo(2).flatMap((turnDeg) => shiftsTo(4).map((shift) => ({ ...shift, turnDeg })));
    const sorted = all.sort((a, b) => inOrder(a, b, 1));
    expect(sorted.slice(0, 8)).toEqual([
      { alongFt: 0, offFt: 0, turnDeg: 0 },
      { alongFt: 1, offFt: 0, turnDeg: 0 },
      { alongFt: 0, offFt: 1, turnDeg: 0 },
      { alongFt: -1, offFt: 0, turnDeg: 0 },
      { alongFt: 0, offFt: -1, turnDeg: 0 },
      { alongFt: 0, offFt: 0, turnDeg: 1 },
      { alongFt: 0, offFt: 0, turnDeg: -1 },
      { alongFt: 1, offFt: 1, turnDeg: 0 },
    ]);
  });
  it("goes no farther than its limits", () => {
    expect(Math.max(...shiftsTo(4).map((shift) => costFt(shift, 1)))).toBe(4);
    expect(shiftsTo(4).length).toBe(49);
  });

  it("is searched exactly: the same place as by looking at every one", () => {
    fc.assert(sameAsByHand(small, { ...SEARCH, maxShiftFt: 3, maxTurnDeg: 1 }), { numRuns: 8 });
  });
});

describe("where a tent goes", () => {
  it("stays where it is wanted if nothing is short there", () => {
    expect(look(site({ buried: [buried([at(-40, -40), at(40, -40)])] }))).toMatchObject({ is: "asWanted", costFt: 0 });
  });
  it("moves by the feet that its stakes are short of", () => {
    // The stake line is 16 ft from the middle; a foot of a plate and the zone's two make 19.
    const found = look(site({ buried: [buried([at(-60, -17), at(60, -17)])] }));
    expect(found).toMatchObject({ is: "moved", shift: { alongFt: 2, offFt: 0, turnDeg: 0 }, costFt: 2 });
  });
  it("keeps 20 ft and its ropes from a building, and out of a tree", () => {
    const house = thing("building", { is: "polygon", corners: box(-10, 30, 20, 20) });
    expect(look(site({ things: [house] }))).toMatchObject({ is: "moved", shift: { alongFt: -6, offFt: 0 } });
    const tree = thing("tree", { is: "circle", middle: at(0, 15), radiusFt: 1 });
    expect(look(site({ things: [tree] }))).toMatchObject({ is: "moved", shift: { alongFt: -3, offFt: 0 } });
  });
  it("finds a pole of a building in its middle, though no rope is near it", () => {
    const house = thing("other", { is: "polygon", corners: box(-0.5, -0.5, 1, 1) });
    expect(look(site({ things: [house] }))).toMatchObject({ is: "moved", shift: { turnDeg: 0 } });
  });
  it("stays on the ground that may be used", () => {
    const ground = { errorFt: 0, corners: box(-14, -40, 80, 80) };
    expect(look(site({ ground }))).toMatchObject({ is: "moved", shift: { alongFt: 0, offFt: 3, turnDeg: 0 } });
  });
  it("goes out of a pole's reach of a wire: its length and 10 ft", () => {
    const found = look(site({ overhead: [wire([at(-200, 22), at(200, 22)])] }));
    // The center pole of 13 ft wants 23, the side poles of 8 ft at 10 ft want 28.
    expect(found).toMatchObject({ is: "moved", shift: { alongFt: -6, offFt: 0 }, clearances: { verdict: "notShort" } });
  });
  it("does not say that a wire whose clearance only its owner knows is far enough", () => {
    const found = look(site({ overhead: [wire([at(-200, 100), at(200, 100)], { kv: 1200 })] }));
    expect(found).toMatchObject({ is: "asWanted", clearances: { verdict: "notKnown" } });
  });
  it("says which stakes leave the area that the ticket names", () => {
    const ground = site({ buried: [buried([at(-60, -17), at(60, -17)])], ticketArea: { errorFt: 0, corners: box(-17, -17, 34, 34) } });
    const found = look(ground);
    if (found.is !== "moved") throw new Error(found.is);
    expect(found.clearances.leavesTicket?.map((s) => s.is === "plate" && s.station[0]).sort()).toEqual(["B", "B", "B", "C", "C"]);
  });
  it("is nowhere where walls leave no place", () => {
    const ground = site({ things: [thing("building", { is: "polygon", corners: box(-300, -300, 600, 600) })] });
    const limits = { ...SEARCH, maxShiftFt: 10 };
    expect(findPlace(small, ground, { place, rules: rulesFor(ground), limits })).toEqual({ is: "nowhere" });
  });
  it("is not known on a site of which nothing was told", () => {
    expect(look(EMPTY_SITE)).toMatchObject({ is: "asWanted", clearances: { verdict: "notKnown" } });
  });
});

describe("where no place is free", () => {
  const across = (yFt: number, id: string) => buried([at(-500, yFt), at(500, yFt)], { id });
  /** Lines everywhere, so that a tent is on some of them wherever it goes. */
  const crowded = site({ buried: [-60, -30, 0, 30, 60].map((y) => across(y, `line ${y}`)) });
  const limits = { ...SEARCH, maxShiftFt: 10, maxTurnDeg: 2 };
  const found = (plan = planOf(eighty)) => {
    const bad = findPlace(plan, crowded, { place, rules: rulesFor(crowded), limits });
    if (bad.is !== "leastBad") throw new Error(bad.is);
    return bad;
  };

  it("the one with fewest stakes in zones is offered, and every stake in a zone gets something done about it", () => {
    const bad = found();
    expect(bad.clearances.verdict).toBe("short");
    const short = new Set(bad.clearances.neighbors.flatMap((n) => n.short.map((c) => JSON.stringify(c.of))));
    const fixed = bad.fixes.flatMap((fix) => (fix.is === "slide" ? fix.stakes : [fix.stake])).map((s) => JSON.stringify(s));
    expect([...short].filter((stake) => !fixed.includes(stake))).toEqual([]);
  });
  it("an engineered anchor names the line that is exposed by hand first", () => {
    const bad = found();
    const anchors = bad.fixes.filter((fix) => fix.is === "engineeredAnchor");
    expect(anchors.length).toBeGreaterThan(0);
    expect(anchors.every((fix) => fix.expose.length > 0)).toBe(true);
  });
  describe("where the sheet allows 13 ft between stations, and they are 10 ft apart", () => {
    const roomy = { ...planOf(eighty), spec: { ...specOf(eighty), spacingFt: 13 } };
    const fixes = (yFt: number, plan = roomy) => {
      const ground = site({ buried: [across(yFt, "gas 1")] });
      return fixesAt(plan, ground, { place, rules: rulesFor(ground) });
    };
    it("a side station slides along its edge until it is clear", () => {
      expect(fixes(1)).toEqual([
        { is: "slide", station: "AB5", byFt: -2, stakes: [{ is: "plate", station: "AB5", plate: 1 }] },
        { is: "slide", station: "CD5", byFt: 2, stakes: [{ is: "plate", station: "CD5", plate: 1 }] },
      ]);
    });
    it("not where the gap would be wider than that: then it is an anchor that an engineer names", () => {
      expect(fixes(1, planOf(eighty))).toMatchObject([
        { is: "engineeredAnchor", stake: { station: "AB5" }, expose: ["gas 1"] },
        { is: "engineeredAnchor", stake: { station: "CD5" } },
      ]);
    });
    it("a corner, a seam end and an inside tie never slide", () => {
      const kinds = fixes(10).map((fix) => fix.is);
      expect(new Set(kinds)).toEqual(new Set(["engineeredAnchor"]));
    });
    it("no line is exposed for dug ground", () => {
      const ground = site({ buried: [buried([at(-500, 10), at(500, 10)], { kind: "excavation" })] });
      const found = fixesAt(roomy, ground, { place, rules: rulesFor(ground) });
      expect(found.every((fix) => fix.is === "engineeredAnchor" && fix.expose.length === 0)).toBe(true);
    });
  });
});
