import { describe, expect, test } from "vitest";
import { checkSpec } from "../../machines/tent/spec.ts";
import { eighty, problemsOf, specOf, twenty } from "./tents.ts";

/** The input with a new value at a field path such as `add[0].kind`, as a form would set it. */
function put(input: object, field: string, value: unknown): object {
  const corrected = structuredClone(input) as Record<string, unknown>;
  const path = field.split(/[.[\]]+/).filter((part) => part !== "");
  const last = path.pop()!;
  const at = path.reduce((o, part) => o[part] as Record<string, unknown>, corrected);
  if (last === "ridge") at[last] = { kind: value };
  else if (last === "leaveOut") at[last] = [value];
  else if (Array.isArray(value) && path.at(-1) === "add") Object.assign(at[last] as object, { xFt: value[0], yFt: value[1] });
  else at[last] = value === "true" || value === "false" ? value === "true" : value;
  return corrected;
}

const first = (input: unknown) => problemsOf(input).map(({ field, code, value, nearest }) => [field, code, value, nearest])[0];

/** A change to an 80×100 ft tent, and the first problem: field, code, value, nearest. */
const refusals: [name: string, change: object, problem: unknown[]][] = [
  ["mids that do not add up", { lengthFt: 140, midsFt: [20, 20] }, ["midsFt", "midsDoNotAddUp", "20+20", [20, 20, 20]]],
  ["mids for a tent without room for any", { lengthFt: 80, midsFt: [20] }, ["midsFt", "midsDoNotAddUp", "20", []]],
  ["a mid that does not divide the gap", { lengthFt: 140, midsFt: [25] }, ["midsFt", "midsDoNotAddUp", "25", [20, 20, 20]]],
  ["no mids for a longer tent", { midsFt: [] }, ["midsFt", "midsDoNotAddUp", "", [20]]],
  ["a gap that no mid fills", { lengthFt: 80.5, midsFt: undefined }, ["lengthFt", "midsDoNotAddUp", 80.5, 80]],
  ["a mid of zero length", { midsFt: [20, 0] }, ["midsFt[1]", "midNotPositive", 0, 1]],
  ["a negative mid", { midsFt: [-20] }, ["midsFt[0]", "midNotPositive", -20, 1]],
  ["shorter than wide", { lengthFt: 60 }, ["lengthFt", "lengthUnderWidth", 60, 80]],
  ["too long", { lengthFt: 401 }, ["lengthFt", "lengthOutOfRange", 401, 400]],
  ["too narrow", { widthFt: 19.9 }, ["widthFt", "widthOutOfRange", 19.9, 20]],
  ["too wide", { widthFt: 121 }, ["widthFt", "widthOutOfRange", 121, 120]],
  ["no spacing", { spacingFt: 0 }, ["spacingFt", "spacingNotPositive", 0, 1]],
  ["negative spacing", { spacingFt: -10 }, ["spacingFt", "spacingNotPositive", -10, 1]],
  ["spacing too wide", { spacingFt: 25 }, ["spacingFt", "spacingTooWide", 25, 20]],
  ["missing rings", { quarterRings: undefined }, ["quarterRings", "ringsNotKnown", "", 1]],
  ["three rings", { quarterRings: 3 }, ["quarterRings", "ringsNotKnown", 3, 2]],
  ["half a ring", { quarterRings: 0.4 }, ["quarterRings", "ringsNotKnown", 0.4, 0]],
  [
    "a center pole outside the ridge",
    { ridge: { kind: "given", fromNearEndFt: [30] } },
    ["ridge.fromNearEndFt[0]", "ridgeOutside", 30, 40],
  ],
  [
    "two center poles less than 1 ft apart",
    { ridge: { kind: "given", fromNearEndFt: [40, 40.5, 60] } },
    ["ridge.fromNearEndFt", "poleTwice", "40, 40.5, 60", [40, 60]],
  ],
  ["no center pole", { ridge: { kind: "given", fromNearEndFt: [] } }, ["ridge.fromNearEndFt", "noCenterPole", "", [50]]],
  ["an unknown ridge pattern", { ridge: { kind: "zigzag" } }, ["ridge", "ridgeOutside", "zigzag", "atSeams"]],
  ["half a center pole", { ridge: { kind: "evenly", count: 1.5 } }, ["ridge.count", "ridgeOutside", 1.5, 2]],
  ["omitting a pole that does not exist", { leaveOut: ["Q11"] }, ["leaveOut", "poleUnknown", "Q11", "Q10"]],
  ["omitting every center pole", { leaveOut: ["C1", "C2"] }, ["leaveOut", "noCenterPole", "C1, C2", null]],
  ["omitted poles that are not a list", { leaveOut: "C1" }, ["leaveOut", "poleUnknown", "C1", null]],
  ["adding a pole outside", { add: [{ kind: "quarter", xFt: 90, yFt: -2 }] }, ["add[0]", "poleOutside", "90, -2", [79, 1]]],
  ["adding a pole next to another", { add: [{ kind: "quarter", xFt: 40, yFt: 40.5 }] }, ["add[0]", "poleTwice", "40, 40.5", null]],
  ["adding a pole of an unknown kind", { add: [{ kind: "post", xFt: 40, yFt: 50 }] }, ["add[0].kind", "poleUnknown", "post", "quarter"]],
  ["missing center pole length", { centerPoleFt: undefined }, ["centerPoleFt", "notANumber", "", 25]],
  ["center pole no longer than the side poles", { centerPoleFt: 8 }, ["centerPoleFt", "poleLength", 8, 9]],
  ["side pole too short", { sidePoleFt: 3 }, ["sidePoleFt", "poleLength", 3, 6]],
  ["stake line on the side poles", { setbackFt: 0 }, ["setbackFt", "setback", 0, 1]],
  ["a plate without stakes", { anchors: { side: { plates: 2, stakes: 1 } } }, ["anchors.side.stakes", "anchorCount", 1, 2]],
  ["half a plate", { anchors: { corner: { plates: 2.5, stakes: 6 } } }, ["anchors.corner.plates", "anchorCount", 2.5, 3]],
  ["anchors that are not an object", { anchors: "many" }, ["anchors", "anchorCount", "many", null]],
  ["a word for a boolean", { splitEnds: "yes" }, ["splitEnds", "notYesOrNo", "yes", "true"]],
];

describe("a tent that cannot be built is refused with the nearest value that works", () => {
  test.each(refusals)("%s", (_, change, problem) => {
    expect(first({ ...eighty, ...change })).toEqual(problem);
  });

  test.each<[string, object, unknown[]]>([
    ["one piece with mids", { midsFt: [20], lengthFt: 40 }, ["midsFt", "onePieceWithMids", "20", []]],
    ["one piece with split ends", { splitEnds: true }, ["splitEnds", "onePieceSplit", "true", "false"]],
    ["poles at seams it does not have", { ridge: { kind: "atSeams" } }, ["ridge", "ridgeOutside", "atSeams", "evenly"]],
    ["two center poles on a ridge of one point", { ridge: { kind: "evenly", count: 2 } }, ["ridge.count", "ridgeOutside", 2, 1]],
  ])("one-piece top: %s", (_, change, problem) => {
    expect(first({ ...twenty, ...change })).toEqual(problem);
  });

  test.each([["80"], [Number.NaN], [Number.POSITIVE_INFINITY], [null], [{}], [[80]], [true]])("%s is not a number", (value) => {
    for (const field of ["widthFt", "lengthFt", "spacingFt", "centerPoleFt"]) {
      const input = { ...eighty, midsFt: undefined, [field]: value };
      expect(problemsOf(input)).toContainEqual(expect.objectContaining({ field, code: "notANumber" }));
    }
  });

  test.each(refusals.filter(([, , [, , , nearest]]) => nearest !== null))(
    "%s: the nearest value solves the problem",
    (_, change, problem) => {
      const [field, code, , nearest] = problem as [string, string, unknown, unknown];
      const corrected = put({ ...eighty, ...change }, field, nearest);
      expect(problemsOf(corrected).map((p) => [p.field, p.code])).not.toContainEqual([field, code]);
    },
  );

  test("all problems are reported at once", () => {
    const fields = problemsOf({ widthFt: 10, lengthFt: 500, spacingFt: 0, quarterRings: 7, setbackFt: -1, anchors: { side: {} } }).map(
      (p) => p.field,
    );
    expect(fields).toEqual([
      "widthFt",
      "lengthFt",
      "spacingFt",
      "quarterRings",
      "centerPoleFt",
      "setbackFt",
      "anchors.side.plates",
      "anchors.side.stakes",
    ]);
  });

  test.each([[null], [undefined], [7], ["tent"], [[]], [{}]])("%s is not a tent", (input) => {
    expect(problemsOf(input).length).toBeGreaterThan(0);
  });
});

describe("defaults", () => {
  test("8 ft side poles, 6 ft setback, poles at the seams, planning minimum", () => {
    expect(specOf(eighty)).toMatchObject({
      sidePoleFt: 8,
      setbackFt: 6,
      ridge: { kind: "atSeams" },
      anchors: { corner: null, seamEnd: null, side: null },
    });
  });

  test.each([
    [80, 120, [20, 20]],
    [60, 120, [30, 30]],
    [60, 80, [20]],
    [100, 200, [20, 20, 20, 20, 20]],
    [80, 110, [30]],
    [80, 125, [15, 15, 15]],
    [80, 80, []],
  ])("%i×%i ft is filled with usual mids", (widthFt, lengthFt, midsFt) => {
    expect(specOf({ ...eighty, widthFt, lengthFt, midsFt: undefined }).midsFt).toEqual(midsFt);
  });

  test("length is width plus mids", () => {
    expect(specOf({ ...eighty, lengthFt: undefined, midsFt: [20, 30] }).lengthFt).toBe(130);
  });

  test("a small top is one piece with evenly spaced poles", () => {
    expect(specOf({ ...twenty, widthFt: 30, lengthFt: 40, onePiece: undefined })).toMatchObject({
      onePiece: true,
      splitEnds: false,
      ridge: { kind: "evenly", count: 2 },
    });
  });

  test("checking a checked spec returns it unchanged", () => {
    const input = Object.freeze({ ...eighty });
    const spec = specOf(input);
    expect(checkSpec(spec)).toEqual({ spec });
  });

  test("mids in thirds of a foot add up", () => {
    const spec = specOf({ ...eighty, midsFt: [20 / 3, 20 / 3, 20 / 3] });
    expect(spec.midsFt).toEqual([6.666667, 6.666667, 6.666667]);
    expect(checkSpec(spec)).toEqual({ spec });
  });
});
