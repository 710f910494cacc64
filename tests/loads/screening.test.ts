import { describe, expect, it } from "vitest";
import { type AnchorFacts, problemsOfFacts } from "../../machines/loads/facts.ts";
import { stakeOfSheet } from "../../machines/loads/ground.ts";
import { screenAnchors } from "../../machines/loads/screening.ts";
import { tributaries } from "../../machines/loads/tributary.ts";
import { frozenFor } from "../support/briefs.ts";
import { alongStrap, facts, ground, pulled, steelPin } from "../support/loads.ts";
import { eighty, forty, hundred, planOf, sixty, twenty } from "../tent/tents.ts";

const plan = planOf(forty);
const screen = (changes: Partial<AnchorFacts> = {}) => screenAnchors(plan, facts(changes));
const sum = (all: readonly number[]) => all.reduce((a, b) => a + b, 0);

describe("what a station stands for", () => {
  it.each([
    ["20 × 20", twenty],
    ["40 × 80", forty],
    ["60 × 120", sixty],
    ["80 × 100", eighty],
    ["100 × 200", hundred],
    ["20 × 60 with its ends off center", { ...twenty, lengthFt: 60, spacingFt: 7 }],
  ])("all of %s together are the whole roof and all its edges", (_size, tent) => {
    const of = planOf(tent);
    const parts = [...tributaries(of).values()];
    const roofSqFt = of.widthFt * of.lengthFt;
    expect(parts.length).toBe(of.stations.length);
    expect(sum(parts.map((p) => p.edgeFt))).toBeCloseTo(2 * (of.widthFt + of.lengthFt), 3);
    expect(sum(parts.map((p) => p.nearestSqFt))).toBeCloseTo(roofSqFt, 2);
    expect(sum(parts.map((p) => p.shareSqFt))).toBeCloseTo(roofSqFt, 2);
  });
  it("in the middle of a long side reaches up to the ridge, and at a corner takes half a bay each way", () => {
    expect(tributaries(plan).get("AB3")).toMatchObject({ edgeFt: 10, nearestSqFt: 200 });
    expect(tributaries(plan).get("A")).toMatchObject({ edgeFt: 10, nearestSqFt: 25 });
    expect(tributaries(plan).get("A")!.shareSqFt).toBeCloseTo(3200 / 24, 6);
  });
});

describe("a 40 × 80 ft tent with 17 ft center poles, worked out by hand", () => {
  // EN 13782 over 5 m: 0.60 kN/m² = 12.531 psf. Roof at atan(9 / 20) = 24.23°: EN 1991-1-4, empty, 0.9846; drag 0.9846 on 9 ft of rise. Strap 8 ft up, 6 ft out.
  const found = screen({ ground: pulled(3000) });
  const side = found.stations.find((s) => s.station === "AB3")!;
  const result = (lines: typeof found.lines, formula: string) => lines.find((l) => l.formula === formula)!.result.n;
  it("has 12.53 psf on it", () => expect(result(found.lines, "pressureUsed")).toBeCloseTo(12.531, 3));
  it("lifts 2,467 lb at a station in the middle of a side, and pushes 1,110 lb", () => {
    expect(result(side.lines, "stationUplift")).toBeCloseTo(12.531 * 0.98455 * 200, 0);
    expect(result(side.lines, "stationDrag")).toBeCloseTo(12.531 * 0.98455 * 9 * 10, 0);
  });
  it("pulls its strap with 3,084 lb, the larger of 2,467 / 0.8 and 1,110 / 0.6, and each of two stakes with 1,542", () => {
    const [plate] = side.plates;
    expect(result(plate!.lines, "strapAngle")).toBeCloseTo(53.13, 2);
    expect(result(plate!.lines, "strapTension")).toBeCloseTo(3084, 0);
    expect(plate).toMatchObject({ demandLbf: expect.closeTo(1542, 0), verdict: "notShort", ratio: expect.closeTo(0.771, 3) });
  });
  it("shares a seam end between its two plates, and has a longer strap on the diagonal of a corner", () => {
    expect(found.stations.find((s) => s.station === "AB4")!.plates.map((p) => p.demandLbf)).toEqual([
      expect.closeTo(774, -1),
      expect.closeTo(774, -1),
    ]);
    const [first, diagonal] = found.stations.find((s) => s.station === "A")!.plates;
    expect(diagonal!.demandLbf!).toBeGreaterThan(first!.demandLbf!);
  });
  it("every line has its source, and its inputs have theirs", () => {
    const lines = [
      ...found.lines,
      ...found.capacity.lines,
      ...found.stations.flatMap((s) => [...s.lines, ...s.plates.flatMap((p) => p.lines)]),
    ];
    expect(lines.length).toBeGreaterThan(200);
    expect(lines.every((l) => l.source && Number.isFinite(l.result.n) && l.inputs.every((i) => i.source))).toBe(true);
  });
  it("says what it leaves out", () =>
    expect(found.leftOut).toEqual(
      expect.arrayContaining(["clothNotRigid", "edgeStrips", "pretension", "insideTies", "sharedSoil", "strapsAndPoles"]),
    ));
});

describe("what a screening comes to", () => {
  it("opens nothing, whatever it finds", () => {
    for (const lbf of [100, 3000, 90_000]) expect(screen({ ground: pulled(lbf) }).opens).toBe("nothing");
  });
  it("is short where one station is, and names the worst", () => {
    const found = screen({ ground: pulled(2000) });
    expect(found).toMatchObject({ verdict: "short", ratio: expect.closeTo(1.157, 3) });
    expect(found.stations.find((s) => s.station === found.worst)!.verdict).toBe("short");
    expect(found.stations.some((s) => s.verdict === "notShort")).toBe(true);
  });
  it.each([
    ["exposure", { wind: { gustMph: 100, exposure: null, elevationFt: 0 } }, "exposureNotTold"],
    ["gust", { wind: { gustMph: null, exposure: "C", elevationFt: 0 } }, "gustNotTold"],
    ["what is under the roof", { underRoof: null }, "underRoofNotTold"],
    ["whether walls hang", { walls: null }, "wallsNotTold"],
  ] as const)("without the %s it is not known, unless it is short at the kindest", (_what, unknown, reason) => {
    const found = screen({ ...unknown, ground: pulled(90_000) });
    expect(found).toMatchObject({ verdict: "notKnown", reasons: [reason], instead: ["tellIt"] });
    expect(screen({ ...unknown, ground: pulled(100) }).verdict).toBe(reason === "wallsNotTold" ? "notKnown" : "short");
  });
  it("an exposure that cannot matter is not asked for", () =>
    expect(screen({ wind: { gustMph: 40, exposure: null, elevationFt: 0 }, ground: pulled(90_000) })).toMatchObject({
      verdict: "notShort",
      reasons: [],
    }));
  it("a tent with walls is referred on, with nothing worked out", () =>
    expect(screen({ walls: true, ground: pulled(90_000) })).toMatchObject({
      verdict: "notKnown",
      ratio: null,
      reasons: ["walled"],
      instead: ["engineersPaper"],
      lines: [],
    }));
  it("a roof steeper than 45° is not known", () => {
    const steep = planOf({ ...forty, centerPoleFt: 30 });
    expect(screenAnchors(steep, facts({ ground: pulled(90_000) }))).toMatchObject({
      verdict: "notKnown",
      reasons: ["roofSlopeNotPublished"],
    });
  });
  it("a roof too flat for ASCE's figure is said to be, and has EN's", () => {
    const found = screenAnchors(planOf(eighty), facts({ ground: pulled(90_000) }));
    expect(found).toMatchObject({ verdict: "notShort" });
    expect(found.leftOut).toContain("heightToWidth");
  });
  it("a stake that is missing counts as missing, one too many only where the sheet allows it", () => {
    const at = (stakes: number, allowed: number | null) => {
      const sheetAllows = { corner: null, seamEnd: null, side: allowed };
      const found = screen({ ground: pulled(3000), driven: [{ station: "AB3", plate: 1, stakes }], sheetAllows });
      return found.stations.find((s) => s.station === "AB3")!;
    };
    expect(at(1, null)).toMatchObject({ verdict: "short", ratio: expect.closeTo(1.542, 3) });
    expect(at(0, null)).toMatchObject({ verdict: "short", ratio: null });
    expect(at(3, null).ratio).toBeCloseTo(0.771, 3);
    expect(at(3, 3).ratio).toBeCloseTo(0.514, 3);
  });
});

it("a job as it is frozen has the plan, the walls and the stake of its sheet", () => {
  const { brief, plan: frozen } = frozenFor(forty, {
    sheet: { stakeDiameterIn: 1, stakeLengthIn: 42, embedmentIn: 36 },
    use: { walls: false },
  });
  const given = facts({ walls: brief.use.walls, stake: stakeOfSheet(brief.sheet!, "steel"), ground: pulled(2000) });
  expect(problemsOfFacts(given, frozen)).toEqual([]);
  expect(screenAnchors(frozen, given)).toMatchObject({ verdict: "short", ratio: expect.closeTo(1.157, 3) });
});

describe("ground nobody has pulled on", () => {
  const capacity = (changes: Parameters<typeof ground>[0], stake: AnchorFacts["stake"] = steelPin) =>
    screen({ ground: ground(changes), stake }).capacity;
  it("average clay shows a pin to be short, and a load under its figure is not known: that is for pulls sideways", () => {
    expect(screen()).toMatchObject({ verdict: "short", capacity: { by: "table", atMostLbf: 750, safeLbf: null } });
    const light = screenAnchors(planOf({ ...twenty, spacingFt: 5 }), facts());
    expect(light).toMatchObject({ verdict: "notKnown", reasons: ["sidewaysOnly"], instead: ["pulls", "engineersPaper"] });
  });
  it("a combination without a figure is not known, whatever figure is near it", () =>
    expect(capacity({}, { ...steelPin, lengthIn: 42 })).toMatchObject({
      by: "nothing",
      safeLbf: null,
      atMostLbf: null,
      reasons: ["noFigure"],
      instead: ["pulls", "engineersPaper"],
    }));
  it("sand refuses bare stakes, as if short, and says what else", () =>
    expect(screen({ ground: ground({ soil: "sandDense" }) })).toMatchObject({
      verdict: "short",
      capacity: { by: "refused", instead: ["anotherAnchor", "pulls", "engineersPaper"] },
    }));
  it("what is not told is asked for", () => {
    const reasons = capacity({ soil: null, state: null }, { ...steelPin, embeddedIn: null, material: null }).reasons;
    expect(reasons).toEqual(["materialNotTold", "embeddedNotTold", "soilNotTold", "groundStateNotTold"]);
    expect(capacity({}, null).reasons).toEqual(["stakeNotTold"]);
  });
  it("soaked ground holds at most half of a figure, frozen ground is not known at all", () => {
    expect(capacity({ state: "saturated" })).toMatchObject({ safeLbf: null, atMostLbf: 375 });
    expect(capacity({ state: "frozen" })).toMatchObject({ safeLbf: null, atMostLbf: null });
  });
  it("a picket in loam is counted for its 700 lb, as that is no figure for sideways alone", () =>
    expect(capacity({ soil: "loam" }, { diameterIn: 3, lengthIn: 60, embeddedIn: 40, material: "wood" })).toMatchObject({
      by: "table",
      safeLbf: 700,
      reasons: [],
    }));
});

describe("pulls on this ground", () => {
  const of = (changes: Parameters<typeof ground>[0]) => screen({ ground: ground(changes) }).capacity;
  const three = [alongStrap(1120), alongStrap(980), alongStrap(640, true)];
  it("win over any figure, in sand too", () => {
    expect(of({ pulls: [alongStrap(3000), alongStrap(3000), alongStrap(3000, true)] })).toMatchObject({ by: "pulls", safeLbf: 2000 });
    expect(of({ pulls: three, soil: "sandLoose" })).toMatchObject({ by: "pulls", safeLbf: expect.closeTo(426.667, 3) });
  });
  it.each([
    ["two of them", { pulls: [alongStrap(1120), alongStrap(640, true)] }, "fewerThanThreePulls"],
    ["none at the softest spot", { pulls: [alongStrap(1120), alongStrap(980), alongStrap(640)] }, "softestSpotNotPulled"],
    ["nobody knows whether it rained since", { pulls: three, rainSincePulls: null }, "rainSincePullsNotTold"],
  ] as const)("do not count where there are %s, but show what the ground does not hold", (_what, changes, reason) => {
    const found = of(changes);
    expect(found).toMatchObject({ safeLbf: null, atMostLbf: expect.closeTo(426.667, 3) });
    expect(found.reasons).toContain(reason);
  });
  it("after heavy rain show at most half, and are done again", () => {
    const found = of({ pulls: three, rainSincePulls: true });
    expect(found).toMatchObject({ safeLbf: null, atMostLbf: expect.closeTo(213.333, 3) });
    expect(found.instead).toContain("pulls");
  });
  it("in another direction than the strap's do not count at all", () => {
    const others = three.map((pull) => ({ ...pull, direction: "other" as const }));
    expect(of({ pulls: others })).toMatchObject({ by: "table", atMostLbf: 750 });
    expect(of({ pulls: [...others, alongStrap(900, true)] }).reasons).toContain("fewerThanThreePulls");
  });
  it("a larger factor of safety is taken, a smaller one is not", () => {
    expect(of({ pulls: three, factorOfSafety: 2 }).safeLbf).toBe(320);
    expect(of({ pulls: three, factorOfSafety: 1 }).safeLbf).toBeCloseTo(426.667, 3);
  });
});
