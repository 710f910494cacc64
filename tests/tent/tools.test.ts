import { describe, expect, it } from "vitest";
import { exitsFor } from "../../machines/install/published-limits.ts";
import { truckLoadOf } from "../../machines/install/truck-load.ts";
import { isTentPart, loadOf, ORDER_OF_USE, ORDER_ON_SITE } from "../../machines/tent/load.ts";
import type { SpecInput } from "../../machines/tent/spec-input.ts";
import { type ToolNeeds, toolsOf } from "../../machines/tent/tools.ts";
import { type Changes, frozenFor } from "../support/briefs.ts";
import { eighty, forty, hundred } from "./tents.ts";

const needs: ToolNeeds = {
  people: 6,
  pieces: 5,
  stakes: 112,
  straps: 50,
  longestFt: 128,
  walls: true,
  exits: 3,
  exitSigns: true,
  pulls: true,
};
const toolCount = (item: string, more: Partial<ToolNeeds> = {}) =>
  toolsOf({ ...needs, ...more }).find((line) => line.item === item)?.count ?? 0;
const truckOf = (tent: SpecInput, changes: Changes = {}) => {
  const { brief, plan, limits } = frozenFor(tent, changes);
  const load = truckLoadOf(brief, plan, limits);
  return { load, count: (item: string) => load.find((line) => line.item === item)?.count ?? 0 };
};

describe("what is on the truck besides the tent", () => {
  it("is whatever a call asks for", () => {
    const { count } = truckOf(eighty, { use: { walls: true, occupants: 320 } });
    const wanted = { whitePaint: 2, tape200: 1, tape100: 1, stringLine: 1, level: 1, horn: 1, windMeter: 1, firstAidKit: 1 };
    const measured = { waterCooler: 2, pocketTape: 2, layoutPin: 6, caliper: 1, shovel: 1, plumbBob: 1, leanGauge: 1, ladder: 1, broom: 1 };
    const worked = { stakeDriver: 2, stakePuller: 1, stakeCap: 112, groundCloth: 5, footRope: 4, strapFlag: 50 };
    const opened = { wallSet: 1, extinguisher: 3, exitSign: 3 };
    for (const [item, n] of Object.entries({ ...wanted, ...measured, ...worked, ...opened }))
      expect([item, count(item)]).toEqual([item, n]);
  });
  it("has a hat, muffs and goggles for everybody on site, and on to the next four: a late hand finds one", () => {
    for (const item of ["hardHat", "earMuff", "goggles"])
      expect([1, 4, 5, 6, 8, 9].map((people) => toolCount(item, { people }))).toEqual([4, 4, 8, 8, 8, 12]);
  });
  it("has a tape that covers the longest line in one length", () => {
    expect([toolCount("tape200", { longestFt: 200 }), toolCount("tape300", { longestFt: 200 })]).toEqual([1, 0]);
    expect([toolCount("tape200", { longestFt: 201 }), toolCount("tape300", { longestFt: 201 })]).toEqual([0, 1]);
    expect(truckOf(eighty).count("tape200")).toBe(1);
    expect(truckOf(hundred).count("tape300")).toBe(1);
  });
  it("has no walls where none are hung, and no signs where none are asked for", () => {
    expect(truckOf(forty, { use: { walls: false } }).count("wallSet")).toBe(0);
    expect(truckOf(forty, { use: { occupants: 20 } }).count("exitSign")).toBe(0);
    expect(truckOf(forty, { use: { occupants: 20 } }).count("extinguisher")).toBe(exitsFor(20)!.exits);
  });
  it("has a pull gauge where stakes are pulled on, and nowhere else", () => {
    for (const item of ["pullGauge", "comeAlong"]) {
      expect(truckOf(eighty, { site: { soilKnown: false } }).count(item)).toBe(1);
      expect(truckOf(eighty, { site: { soilKnown: true } }).count(item)).toBe(0);
    }
  });
  it("where nobody knows how many come, has enough for the most exits of the table", () => {
    const { count } = truckOf(forty, { use: { occupants: null } });
    expect([count("exitSign"), count("extinguisher")]).toEqual([4, 4]);
    expect(Math.max(...[0, 200, 500, 999].map((n) => exitsFor(n)!.exits))).toBe(4);
  });
  it("stands where it is used: paint and tapes before the stakes, walls after the poles", () => {
    const items = truckOf(eighty, { use: { walls: true } }).load.map((line) => line.item as string);
    for (const [first, then] of [
      ["whitePaint", "perimeterStake"],
      ["stakeDriver", "groundCloth"],
      ["groundCloth", "splitEndPiece"],
      ["centerPole", "wallSet"],
    ] as const)
      expect(items.indexOf(first)).toBeLessThan(items.indexOf(then));
  });
});

it("spare quarter poles and base plates go along with a tent that has any", () => {
  const load = loadOf(frozenFor(eighty).plan);
  for (const item of ["quarterPole", "polePlate"]) expect(load.find((line) => line.item === item)!.spares).toBe(1);
});

it("the order on site has every part of a tent and every tool, each once", () => {
  const parts = [eighty, forty, hundred].flatMap((tent) => frozenFor(tent).plan.kit.map(({ item }) => item));
  expect(ORDER_OF_USE).toEqual(expect.arrayContaining([...new Set(parts)]));
  expect(new Set(ORDER_ON_SITE).size).toBe(ORDER_ON_SITE.length);
  const all = toolsOf({ ...needs, weights: 4 }).concat(toolsOf({ ...needs, longestFt: 300 }));
  expect([...new Set(all.map((line) => line.item as string))].sort()).toEqual(ORDER_ON_SITE.filter((item) => !isTentPart(item)).sort());
});

it("every line of the truck is wanted at loading and back at the strike", () => {
  const { brief, plan, limits, script } = frozenFor(eighty);
  const listed = Object.fromEntries(truckLoadOf(brief, plan, limits).map(({ item, count }) => [item, count]));
  for (const id of ["kit.loaded", "back.kit"]) expect(script.steps.find((s) => s.id === id)!.gate!.check).toMatchObject({ want: listed });
});
