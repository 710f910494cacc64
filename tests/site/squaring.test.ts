import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { LENGTHS, type LengthName, type Squared, squared, toleranceIn } from "../../machines/site/squaring.ts";
import { tolerance } from "../../views/text/en/names.ts";
import { squaredText } from "../../views/text/en/squaring.ts";
import { moved, rectangle, TAPING, taped, without } from "../support/marks.ts";

const TENT = { want: rectangle(60, 120), inPer50Ft: 1, taping: TAPING };
const found = (lengths: Record<string, number>) => squared(lengths, TENT);
const says = (lengths: Record<string, number>) => squaredText(found(lengths));
const good = taped(TENT.want);

describe("a good rectangle", () => {
  test("is square with six lengths, which are checked against each other", () =>
    expect(found(good)).toMatchObject({ is: "square", checked: true, moves: [] }));
  test.each(LENGTHS)("is square without %s, and says that five lengths cannot show a misread", (name) => {
    expect(found(without(good, name))).toMatchObject({ is: "square", checked: false });
    expect(says(without(good, name))).toMatch(/^Square\. Five lengths cannot show a misread/);
  });
  test("a missing sixth length is computed", () => {
    const { lengths } = found(without(good, "BD")) as Extract<ReturnType<typeof found>, { lengths: unknown }>;
    expect(lengths.find((l) => l.name === "BD")).toMatchObject({ measured: false });
    expect(lengths.find((l) => l.name === "BD")!.ft).toBeCloseTo(134.164079, 6);
  });
});

describe("too few lengths", () => {
  test("with four lengths the missing ones are named", () => {
    const { AB, BC, CD, DA } = good;
    expect(found({ AB, BC, CD, DA })).toEqual({ is: "notEnough", missing: ["AC", "BD"] });
    expect(says({ AB, BC, CD, DA })).toBe("Still to measure: A to C, B to D. Five lengths fix the corners; six show a misread.");
  });
});

describe("equal diagonals alone", () => {
  test("do not make a trapezoid square: both marks of the short side have to move out", () => {
    const trapezoid = { AB: 120, BC: 60 + 1 / 96, CD: 118, DA: 60 + 1 / 96, AC: 133 + 3.25 / 12, BD: 133 + 3.25 / 12 };
    expect(found(trapezoid)).toMatchObject({ is: "out", checked: true });
    expect(says(trapezoid)).toBe("Not square. Hold A and the line A to B. C: 12 in outward. D: 12 in outward.");
  });
});

describe("the moves, with A and the line A to B fixed", () => {
  test.each([
    ["C", 3.5, -1, "C: 3 1/2 in toward B and 1 in outward."],
    ["C", -3.5, 1, "C: 3 1/2 in away from B and 1 in inward."],
    ["C", 0, -6, "C: 6 in outward."],
    ["D", 5, 2, "D: 5 in toward A and 2 in outward."],
    ["D", -5, -2, "D: 5 in away from A and 2 in inward."],
    ["B", 0, 4, "B: 4 in toward A, along the baseline."],
    ["B", 0, -4, "B: 4 in away from A, along the baseline."],
  ] as const)("%s off by %d in across and %d in along: %s", (corner, acrossIn, alongIn, words) => {
    expect(says(taped(moved(TENT.want, corner, acrossIn, alongIn)))).toBe(`Not square. Hold A and the line A to B. ${words}`);
  });
  test("a mark that is off within what is allowed stays, while another one moves", () => {
    const marks = moved(moved(TENT.want, "B", 0, 0.5), "D", 5, 2);
    expect(says(taped(marks))).toBe("Not square. Hold A and the line A to B. D: 5 in toward A and 2 in outward.");
  });
  test("a way that is as good as none is left out", () =>
    expect(says(taped(moved(TENT.want, "C", 3.5, 0.25)))).toBe("Not square. Hold A and the line A to B. C: 3 1/2 in toward B."));
  test("a mark a fifth of an inch off stays", () => {
    expect(found(taped(moved(TENT.want, "C", 0.2, 0)))).toMatchObject({ is: "square", moves: [] });
  });
  test("the corners are square after the moves, whatever was wrong", () => {
    const off = fc.double({ min: -12, max: 12, noNaN: true });
    fc.assert(
      fc.property(off, off, off, off, off, (b, cx, cy, dx, dy) => {
        const marks = moved(moved(moved(TENT.want, "B", 0, b), "C", cx, cy), "D", dx, dy);
        const before = found(taped(marks));
        if (before.is !== "out") return;
        const after = before.moves.reduce((m, by) => moved(m, by.corner, by.acrossIn, by.alongIn), marks);
        expect(found(taped(after)).is).toBe("square");
      }),
    );
  });
});

describe("the tolerance is 1 in for every 50 ft of the length", () => {
  test.each([
    ["BC", 1.15, "square"],
    ["BC", 1.25, "out"],
    ["AB", 2.35, "square"],
    ["AB", 2.45, "out"],
  ] as const)("%s longer by %d in is %s", (edge, byIn, is) => {
    // Both edges of a pair grow, so that the figure stays a rectangle.
    const marks = edge === "BC" ? rectangle(60 + byIn / 12, 120) : rectangle(60, 120 + byIn / 12);
    expect(found(taped(marks)).is).toBe(is);
  });
  test("the sheet can make it narrower or wider", () => {
    const marks = taped(rectangle(60 + 1 / 12, 120));
    expect(squared(marks, { ...TENT, inPer50Ft: 0.5 }).is).toBe("out");
    expect(squared(taped(rectangle(60 + 2 / 12, 120)), { ...TENT, inPer50Ft: 2 }).is).toBe("square");
  });
});

describe("impossible lengths", () => {
  test("three lengths that make no triangle are named", () => {
    const five = { AB: 100, BC: 60, DA: 30, AC: 110, BD: 40 };
    expect(found(five)).toMatchObject({ is: "noTriangle", longest: "AB", others: ["BD", "DA"] });
    expect(says(five)).toBe(
      "A to B is longer than B to D and D to A together: no triangle does that. Names or units? Farthest off: B to D, 40 ft read, 134 ft 2 in wanted; D to A, 30 ft read, 60 ft wanted. No unit and no other naming fits. Look at the corners, and measure all again.",
    );
  });
  test("that are not far from what is wanted are measured again", () => {
    const five = { AB: 91, BC: 60, DA: 46, AC: 120, BD: 140 };
    expect(says(five)).toBe(
      "B to D is longer than A to B and D to A together: no triangle does that. None of them stands out. Measure them all again.",
    );
  });
  test("an extra zero is named with the likely length", () => {
    expect(found({ ...good, DA: 600 })).toMatchObject({ is: "noTriangle", suspects: [{ name: "DA", readFt: 600 }] });
  });
  test("corners in the wrong order are nowhere near, though every triangle is possible", () => {
    // C folded in over the diagonal.
    const folded = taped({ ...TENT.want, C: { xFt: 10, yFt: 20 } });
    expect(says(folded)).toMatch(/^These are nowhere near\. Names or units\? Farthest off: A to C,/);
  });
});

describe("six lengths that do not agree", () => {
  test.each(LENGTHS)("%s read a foot too long is named with the likely length", (name: LengthName) => {
    const misread = found({ ...good, [name]: good[name] + 1 });
    expect(misread).toMatchObject({ is: "misread", suspects: [{ name, readFt: good[name] + 1 }] });
    expect((misread as Extract<Squared, { is: "misread" }>).suspects[0]!.likelyFt).toBeCloseTo(good[name], 1);
  });
  test("the reply states the assumption behind the suspect", () => {
    expect(says({ ...good, DA: 61 })).toBe(
      "The six do not agree with each other. If the marks are near their places, it is D to A: 61 ft read, about 60 ft likely. Measure that one again.",
    );
  });
  test("with two misreads no suspect is named", () => {
    expect(says({ ...good, AC: 133, BD: 135.5 })).toBe(
      "The six do not agree with each other. None of them stands out. Measure them all again.",
    );
  });
  test("digits of the feet said the other way round are named", () => {
    const wide = rectangle(89, 120);
    const read = { ...taped(wide), DA: 98 };
    expect(squared(read, { ...TENT, want: wide })).toMatchObject({ suspects: [{ name: "DA", readFt: 98, likelyFt: 89 }] });
  });
  test("a short length of a long tent, whose misread the others hardly show, is measured again before anything is moved", () => {
    const long = { ...TENT, want: rectangle(20, 200) };
    const read = { ...taped(long.want), DA: 21 };
    const out = squared(read, long);
    expect(out).toMatchObject({ suspects: [{ name: "DA", readFt: 21, likelyFt: 20 }] });
    expect(squaredText(out)).toMatch(/D to A: 21 ft read, about 20 ft likely/);
  });
  test("where two are near, both are named, the likeliest first", () => {
    const long = { ...TENT, want: rectangle(20, 200) };
    const read = { ...taped(long.want), DA: 20.6 };
    const found = squared({ ...read, BC: 19.5 }, long);
    expect("suspects" in found && found.suspects.length).not.toBe(1);
  });
  test("marks racked by half a foot are out, and nobody is told to measure again", () => {
    const racked = moved(moved(TENT.want, "C", 0, 6), "D", 0, 6);
    expect(found(taped(racked))).toMatchObject({ is: "out", suspects: [] });
  });
  test("with five lengths a misread looks like a mark out of place", () => {
    expect(found({ ...without(good, "BD"), DA: 61 })).toMatchObject({ is: "out", checked: false });
  });
});

describe("lengths that are far from the wanted figure", () => {
  const scaled = (by: number) => Object.fromEntries(LENGTHS.map((name) => [name, good[name] * by])) as typeof good;
  test.each([
    ["meters", 0.3048],
    ["inches", 12],
    ["yards", 1 / 3],
  ])("that were read in %s are said to be", (unit, by) => {
    expect(says(scaled(by))).toBe(`These are nowhere near. Names or units? Read as ${unit}, they fit. Read feet and inches.`);
  });
  test("two that were written in each other's place are named", () => {
    expect(says({ ...good, AB: good.BC, BC: good.AB })).toMatch(
      /^These are nowhere near\. Names or units\? A to B and B to C look swapped\./,
    );
  });
  test("corners that were named another way are named", () => {
    const { AB, BC, CD, DA, AC, BD } = good;
    // Begun at D: what is called A to B is D to A.
    expect(says({ AB: DA, BC: AB, CD: BC, DA: CD, AC: BD, BD: AC })).toMatch(/They fit with other corners: your B is D, your D is B\./);
  });
  test("that disagree among themselves too are asked about by name and unit, the farthest off first", () => {
    const six = { AB: 80, BC: 40, CD: 90, DA: 30, AC: 100, BD: 70 };
    expect(says(six)).toBe(
      "These are nowhere near. Names or units? Farthest off: D to A, 30 ft read, 60 ft wanted; B to D, 70 ft read, 134 ft 2 in wanted; A to B, 80 ft read, 120 ft wanted. No unit and no other naming fits. Look at the corners, and measure all again.",
    );
  });
  test("that make no triangle either are asked about in the same way", () => {
    expect(says({ AB: 30, BC: 37, CD: 44, DA: 51, AC: 95, BD: 65 })).toMatch(
      /^A to C is longer than .+ Names or units\? Farthest off: A to B,/,
    );
  });
  test("that nothing explains are measured again", () => {
    expect(says(scaled(0.5))).toMatch(/No unit and no other naming fits\./);
  });
  test("a length is never told in hundreds of inches", () => {
    const far = taped(moved(moved(TENT.want, "C", 0, 72), "D", 0, 60));
    expect(says(far)).not.toMatch(/\b\d{3,} in\b/);
    expect(says(far)).toMatch(/\d ft/);
  });
});

test("no length is held to less than half an inch, and no part of a move is under a quarter", () => {
  expect(toleranceIn(20, 1)).toBe(0.5);
  expect(toleranceIn(100, 1)).toBe(2);
  const small = { ...TENT, want: rectangle(20, 20) };
  const found = squared(taped(moved(small.want, "C", 3, 0.15)), small);
  expect("moves" in found && found.moves).toMatchObject([{ corner: "C", alongIn: 0 }]);
});

test("lengths are judged against the wanted marks, even off a rectangle", () => {
  const want = moved(rectangle(60, 120), "C", 0, -12);
  expect(squared(taped(want), { want, inPer50Ft: 1, taping: TAPING }).is).toBe("square");
  expect(squared(good, { want, inPer50Ft: 1, taping: TAPING }).is).toBe("out");
});

test("any positive lengths get a reply without NaN or infinity", () => {
  const ft = fc.double({ min: 0.01, max: 5000, noNaN: true });
  fc.assert(
    fc.property(fc.record({ AB: ft, BC: ft, CD: ft, DA: ft, AC: ft, BD: ft }, { requiredKeys: [] }), (lengths) => {
      expect(says(lengths as Record<string, number>)).not.toMatch(/NaN|Infinity|undefined/);
    }),
    { numRuns: 500 },
  );
});

test.each([
  [2.4, "2 1/4 in"],
  [2.6875, "2 1/2 in"],
  [1.25, "1 1/4 in"],
  [0.2, "3/16 in"],
  [0.03, "0 in"],
] as const)("a tolerance of %d in is shown rounded down: %s", (n, text) => expect(tolerance(n)).toBe(text));
