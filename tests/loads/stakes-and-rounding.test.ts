import { describe, expect, it } from "vitest";
import { type AnchorFacts, problemsOfFacts } from "../../machines/loads/facts.ts";
import { screenAnchors } from "../../machines/loads/screening.ts";
import { stakesCounted } from "../../machines/loads/stakes.ts";
import { en } from "../../views/text/en/en.ts";
import { facts, ground, pulled } from "../support/loads.ts";
import { forty, planOf, twenty } from "../tent/tents.ts";

const { loads } = en;
const allows = (side: number | null) => ({ corner: null, seamEnd: null, side });

describe("stakes of a plate that count", () => {
  it.each([
    ["three planned, two allowed", { planned: 3, driven: 3, sheetAllows: 2 }, 2],
    ["three planned, the sheet says nothing", { planned: 3, driven: 3, sheetAllows: null }, 2],
    ["three planned, three allowed", { planned: 3, driven: 3, sheetAllows: 3 }, 3],
    ["three planned, five allowed", { planned: 3, driven: 3, sheetAllows: 5 }, 3],
    ["two planned, three driven, the sheet says nothing", { planned: 2, driven: 3, sheetAllows: null }, 2],
    ["two planned, three driven, three allowed", { planned: 2, driven: 3, sheetAllows: 3 }, 3],
    ["two planned, one driven", { planned: 2, driven: 1, sheetAllows: 3 }, 1],
    ["one planned, the sheet says nothing", { planned: 1, driven: 1, sheetAllows: null }, 1],
    ["one planned, two driven, the sheet says nothing", { planned: 1, driven: 2, sheetAllows: null }, 1],
  ] as const)("%s", (_, stakes, counted) => expect(stakesCounted(stakes)).toBe(counted));
});

describe("a side pole with three stakes on its plate", () => {
  const plan = planOf({ ...twenty, anchors: { side: { plates: 1, stakes: 3 } } });
  const at = (side: number | null) => {
    const found = screenAnchors(plan, facts({ ground: pulled(2000), sheetAllows: allows(side) }));
    const [plate] = found.stations.find((s) => s.station === "AB1")!.plates;
    return { found, plate: plate!, line: plate!.lines.at(-1)! };
  };
  it("has the load of two where the sheet allows two, and says that the rest is not counted", () => {
    const [two, three] = [at(2), at(3)];
    expect(two.plate.demandLbf! / three.plate.demandLbf!).toBeCloseTo(1.5, 5);
    expect(two.line.leftOut).toContain("stakesNotAllowed");
    expect(two.line.inputs.map(({ name, is }) => [name, is])).toEqual(
      expect.arrayContaining([
        ["stakes", { n: 2, unit: "number" }],
        ["stakesThere", { n: 3, unit: "number" }],
        ["stakesAllowed", { n: 2, unit: "number" }],
      ]),
    );
    expect(two.found.reasons).toContain("stakesNotAllowed");
    expect(three.line.leftOut).not.toContain("stakesNotAllowed");
    expect(three.found.reasons).toEqual([]);
  });
  it("has the load of two where nobody told what the sheet allows, and asks for that", () => {
    const { plate, found, line } = at(null);
    expect(plate.stakesCounted).toBe(2);
    expect(line.leftOut).toContain("stakesAllowedNotTold");
    expect(found.reasons).toEqual(["stakesAllowedNotTold"]);
    expect(found.instead).toEqual(["tellIt"]);
  });
});

it("a sheet that allows no stake at all on a plate is refused, as that is no figure", () => {
  const plan = planOf(forty);
  expect(problemsOfFacts(facts({ sheetAllows: allows(0) }), plan)).toEqual([
    { code: "outOfRange", field: "sheetAllows.side", is: 0, limit: { from: 1, to: 20 }, unit: "number" },
  ]);
});

describe("a ratio that is only known to be at least so much", () => {
  const screen = (changes: Partial<AnchorFacts>) => screenAnchors(planOf({ ...twenty, spacingFt: 5 }), facts(changes));
  it.each([
    ["the gust is not told", { wind: { gustMph: null, exposure: "C", elevationFt: 0 }, ground: pulled(4000) }],
    ["the figure is for sideways pulls alone", { ground: ground() }],
    ["nobody says whether it rained", { ground: { ...pulled(4000), rainSincePulls: null } }],
  ] as [string, Partial<AnchorFacts>][])("is said to be that where %s", (_, changes) => {
    const found = screen(changes);
    expect(found).toMatchObject({ verdict: "notKnown", isAtLeast: true });
    expect(found.stations.every((s) => s.isAtLeast)).toBe(true);
    expect(loads.ratio(found.ratio, found.isAtLeast)).toMatch(/^0\.\d\d or more$/);
  });
  it("is said so of what is short as well", () => {
    const found = screen({ ground: { ...pulled(400), rainSincePulls: null } });
    expect(found).toMatchObject({ verdict: "short", isAtLeast: true });
  });
  it("is a plain figure where both load and ground are known", () => {
    expect(screen({ ground: pulled(4000) })).toMatchObject({ verdict: "notShort", isAtLeast: false });
    expect(loads.ratio(0.5, false)).toBe("0.50");
  });
  it("is not told as the worst where a plate has no stake that counts", () => {
    const found = screenAnchors(planOf(forty), facts({ ground: pulled(3000), driven: [{ station: "AB4", plate: 1, stakes: 0 }] }));
    expect(found).toMatchObject({ verdict: "short", isAtLeast: true });
    expect(found.stations.find((s) => s.station === "AB4")!.isAtLeast).toBe(true);
  });
});

describe("figures as they are told go to the stricter side", () => {
  it("a load is rounded up to the pound", () => expect(loads.amount({ n: 326.1, unit: "lbf" }, "perStake")).toBe("327 lb"));
  it("a weight is rounded up to the pound", () => expect(loads.amount({ n: 3377.2, unit: "lb" }, "ballast")).toBe("3,378 lb"));
  it("a pressure is rounded up", () => expect(loads.amount({ n: 12.531, unit: "psf" })).toBe("12.54 psf"));
  it("a coefficient is rounded up", () => expect(loads.amount({ n: 0.98412, unit: "number" }, "coefficient")).toBe("0.985"));
  it.each(["capacityFromPulls", "capacityFromTable", "wetGround", "lowestPull", "dry"] as const)(
    "what a stake is counted for, %s, is rounded down",
    (of) => expect(loads.amount({ n: 426.667, unit: "lbf" }, of)).toBe("426.6 lb"),
  );
  it("a friction and a factor of safety are rounded down", () => {
    expect(loads.amount({ n: 0.45678, unit: "number" }, "friction")).toBe("0.456");
    expect(loads.amount({ n: 1.66667, unit: "number" }, "factor")).toBe("1.666");
  });
  it("whole figures stay as they are", () => {
    expect(loads.amount({ n: 540, unit: "lbf" }, "perStake")).toBe("540 lb");
    expect(loads.amount({ n: 700, unit: "lbf" }, "capacityFromTable")).toBe("700 lb");
    expect(loads.amount({ n: 0.4, unit: "number" }, "friction")).toBe("0.4");
  });
  it("says 'at most' of what a stake can be counted for at most", () => {
    expect(loads.ratioHow("750 lb", true)).toContain("at most 750 lb");
    expect(loads.ratioHow("750 lb", false)).not.toContain("at most");
  });
});
