import { describe, expect, it } from "vitest";
import { problemsOfFriction } from "../../machines/loads/ballast.ts";
import { type AnchorFactsInput, problemsOfFacts } from "../../machines/loads/facts.ts";
import { alongStrap, facts, ground, steelPin } from "../support/loads.ts";
import { planOf, twenty } from "../tent/tents.ts";

const plan = planOf(twenty);
const problems = (changes: Partial<AnchorFactsInput>) => problemsOfFacts({ ...facts(), ...changes }, plan);

describe("what came in for a screening", () => {
  it("is taken as it is where nothing is wrong, unknown or not", () => {
    expect(problems({})).toEqual([]);
    expect(problems({ walls: null, underRoof: null, stake: null, wind: { gustMph: null, exposure: null, elevationFt: null } })).toEqual([]);
  });
  it.each([-5, 900])("a wind of %d mph is refused, with the limit", (gustMph) =>
    expect(problems({ wind: { gustMph, exposure: "C", elevationFt: 0 } })).toEqual([
      { field: "wind.gustMph", code: "outOfRange", is: gustMph, limit: { from: 0, to: 200 }, unit: "mph" },
    ]),
  );
  it("a pull without a direction is refused, and one in a direction that is none", () =>
    expect(
      problems({
        ground: {
          ...ground(),
          pulls: [
            { lbf: 900, softestSpot: true },
            { ...alongStrap(900), direction: "up" },
          ],
        },
      }),
    ).toEqual([
      { field: "ground.pulls.0.direction", code: "missing" },
      { field: "ground.pulls.1.direction", code: "notOneOf", is: "up", choices: ["alongStrap", "other"] },
    ]));
  it("what is no number, and more in the ground than a stake is long, are refused together", () =>
    expect(problems({ stake: { ...steelPin, diameterIn: "1 in", embeddedIn: 50 } })).toEqual([
      { field: "stake.diameterIn", code: "notANumber", is: "1 in" },
      { field: "stake.embeddedIn", code: "outOfRange", is: 50, limit: { from: 0, to: 48 }, unit: "in" },
    ]));
  it("a factor of safety under 1.5 is refused", () =>
    expect(problems({ ground: ground({ factorOfSafety: 1.2 }) })).toMatchObject([
      { field: "ground.factorOfSafety", limit: { from: 1.5 } },
    ]));
  it("stakes at a station or plate that is not there are refused", () =>
    expect(
      problems({
        driven: [
          { station: "ZZ1", plate: 1, stakes: 2 },
          { station: "A", plate: 4, stakes: 2.5 },
        ],
      }),
    ).toMatchObject([
      { field: "driven.0.station", code: "notOneOf" },
      { field: "driven.1.plate", code: "outOfRange", limit: { from: 1, to: 3 } },
      { field: "driven.1.stakes", code: "notANumber" },
    ]));
  it("a pull that no stake is known to hold is refused", () =>
    expect(problems({ ground: ground({ pulls: [alongStrap(9800)] }) })).toMatchObject([
      { field: "ground.pulls.0.lbf", code: "outOfRange", is: 9800, limit: { from: 0, to: 5000 } },
    ]));
  it("more pulls than anybody makes are refused by their number", () =>
    expect(problems({ ground: ground({ pulls: Array(100_000).fill(alongStrap(900)) }) })).toEqual([
      { field: "ground.pulls", code: "tooMany", is: 100_000, limit: 200 },
    ]));
  it("nothing at all is refused, and not thrown", () =>
    expect(
      problems({ walls: undefined, wind: undefined, ground: undefined, stake: 7, sheetAllows: [], driven: {} }).length,
    ).toBeGreaterThan(5));
  it("a friction over 1, or from nowhere, is refused", () =>
    expect(problemsOfFriction({ coefficient: 1.4, by: "table" })).toMatchObject([{ code: "outOfRange" }, { code: "notOneOf" }]));
});
