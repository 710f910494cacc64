import { describe, expect, it } from "vitest";
import { MIN_TOLERANCE_IN } from "../../machines/install/limits.ts";
import { UTILITIES } from "../../machines/install/utilities.ts";
import { BURIED_KINDS } from "../../machines/site/model.ts";
import { readSite } from "../../machines/site/read-site.ts";
import { MAX_PROBLEMS, SITE_LIMITS } from "../../machines/site/site-limits.ts";

const read = (input: unknown) => readSite(input, MIN_TOLERANCE_IN);
const problems = (input: unknown) => {
  const found = read(input);
  return "problems" in found ? found.problems.map(({ path, code, limit }) => [path, code, limit]) : [];
};
const off = (alongFt: unknown, offFt: unknown) => ({ alongFt, offFt });
const gas = (more: object = {}) => ({ id: "gas 1", kind: "gas", told: "ticket", points: [off(12, 8), off(90, 15)], ...more });
const shed = (corners: unknown, id = "shed") => ({ id, kind: "building", shape: { is: "polygon", corners } });
const square = [off(0, 0), off(0, 10), off(10, 10), off(10, 0)];

describe("a site as crews measure it", () => {
  it("is in feet along the baseline and off it", () => {
    expect(read({ buried: [gas()] })).toEqual({
      site: {
        buried: [
          {
            ...{ id: "gas 1", kind: "gas", told: "ticket", widthIn: null, toleranceIn: null, errorFt: 0 },
            points: [
              { xFt: 8, yFt: 12 },
              { xFt: 15, yFt: 90 },
            ],
          },
        ],
        ...{ overhead: [], things: [], ground: null, ticketArea: null, slope: null, wanted: null },
      },
    });
  });
  it("may have a wire of a voltage that nobody knows, and of a height that nobody measured", () => {
    expect(read({ overhead: [{ id: "street", points: [off(0, 0), off(5, 5)] }] })).toMatchObject({
      site: { overhead: [{ kv: null, lowestFt: null }] },
    });
  });
  it("may have its polygons closed or not", () => {
    const [open, closed] = [read({ ground: { corners: square } }), read({ ground: { corners: [...square, square[0]] } })];
    expect(open).toMatchObject({ site: { ground: { corners: { length: 4 } } } });
    expect(closed).toEqual(open);
  });
  it("knows every utility of a ticket, and the two other colors", () => {
    expect(BURIED_KINDS.filter((kind) => !UTILITIES.some((other) => other === kind))).toEqual(["survey", "excavation"]);
    expect(BURIED_KINDS).toEqual(expect.arrayContaining([...UTILITIES]));
  });
});

describe("what is no site", () => {
  const line = (points: unknown) => ({ buried: [gas({ points })] });
  it.each([
    ["nothing", null, ["", "notAnObject", null]],
    ["a line with one point", line([off(1, 1)]), ["buried.0.points", "tooFewPoints", 2]],
    ["a line without length", line([off(1, 1), off(1, 1)]), ["buried.0.points", "noLength", null]],
    ["an ocean away", line([off(1, 1), off(9_000_000, 1)]), ["buried.0.points.1.alongFt", "tooFar", 5280]],
    ["not a number", line([off(1, Number.NaN), off(2, 2)]), ["buried.0.points.0.offFt", "notANumber", null]],
    ["without an end", line([off(1, 1), off(Number.POSITIVE_INFINITY, 2)]), ["buried.0.points.1.alongFt", "notANumber", null]],
    ["a number in words", line([off("12", 8), off(90, 15)]), ["buried.0.points.0.alongFt", "notANumber", null]],
    ["a zone narrower than any law has it", { buried: [gas({ toleranceIn: 12 })] }, ["buried.0.toleranceIn", "tooSmall", 18]],
    ["a color that there is not", { buried: [gas({ kind: "beer" })] }, ["buried.0.kind", "notKnown", null]],
    ["a field that nobody knows", { buried: [gas({ widthMm: 3 })] }, ["buried.0.widthMm", "unknownField", null]],
    ["a name twice", { buried: [gas()], overhead: [{ id: "gas 1", points: square }] }, ["overhead.0.id", "nameTwice", null]],
    ["a line that nobody says the kind of", { buried: [{ id: "x", told: "found", points: square }] }, ["buried.0.kind", "missing", null]],
    ["a name that turns the direction of text", { buried: [gas({ id: "\u202eretaw" })] }, ["buried.0.id", "nameUnseen", null]],
    ["no name", { buried: [gas({ id: " " })] }, ["buried.0.id", "noName", null]],
    ["less than no voltage", { overhead: [{ id: "w", kv: -5, points: square }] }, ["overhead.0.kv", "tooSmall", 0]],
    ["two corners", { things: [shed(square.slice(0, 2))] }, ["things.0.shape.corners", "tooFewPoints", 3]],
    ["corners in a row", { things: [shed([off(0, 0), off(1, 1), off(2, 2)])] }, ["things.0.shape.corners", "noArea", null]],
    ["a bow tie", { things: [shed([off(0, 0), off(9, 10), off(0, 10), off(10, 0)])] }, ["things.0.shape.corners", "crossesItself", null]],
    ["a shape that there is not", { things: [{ id: "x", kind: "tree", shape: { is: "star" } }] }, ["things.0.shape.is", "notKnown", null]],
    ["a list that is none", { buried: "gas" }, ["buried", "notAList", null]],
  ])("%s is refused by name, with its limit", (_, input, wanted) => expect(problems(input)).toEqual([wanted]));

  it("of one mistake nothing is taken, and all mistakes are told", () => {
    expect(problems({ buried: [gas(), gas({ id: "gas 2", points: [] }), gas({ id: 3 })] })).toEqual([
      ["buried.1.points", "tooFewPoints", 2],
      ["buried.2.id", "notText", null],
    ]);
  });
  it("more stretches than any site has are refused before they are read", () => {
    const points = Array.from({ length: SITE_LIMITS.maxSegments + 2 }, () => off(Number.NaN, 0));
    expect(problems({ buried: [gas({ points })] })).toEqual([["", "tooManySegments", SITE_LIMITS.maxSegments]]);
  });
  it("more lines and things than anybody looks for one among are refused before they are read", () => {
    const many = (n: number) => Array.from({ length: n }, () => null);
    expect(problems({ things: many(300), buried: many(SITE_LIMITS.maxNeighbors - 299) })).toEqual([["", "tooManyNeighbors", 500]]);
  });
  it("no more problems are told than anybody reads", () => {
    expect(problems({ buried: Array.from({ length: 500 }, () => ({})) }).length).toBe(MAX_PROBLEMS);
  });
  it("names that every object has are names like others", () => {
    expect(problems(JSON.parse('{"__proto__": {"buried": []}}'))).toEqual([["__proto__", "unknownField", null]]);
    const wire = { id: "__proto__", points: [off(0, 0), off(5, 5)] };
    expect(read({ overhead: [wire] })).toMatchObject({ site: { overhead: [{ id: "__proto__" }] } });
  });
});
