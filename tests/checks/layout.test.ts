import { describe, expect, it, test } from "vitest";
import { diagonalsOf, edgeTapes, toMm } from "../../machines/tent/tape.ts";
import { feetInches } from "../../views/text/en/names.ts";
import { planOf } from "../tent/tents.ts";

const tent = (widthFt: number, lengthFt: number) => ({
  widthFt,
  lengthFt,
  midsFt: lengthFt > widthFt ? [lengthFt - widthFt] : [],
  spacingFt: 10,
  quarterRings: 0,
  centerPoleFt: 20,
});

// Geometry, computed: the diagonal of a rectangle is the square root of the sum of its squared sides.
test.each([
  [40, 80, 89.443],
  [60, 90, 108.167],
  [20, 40, 44.721],
  [40, 100, 107.703],
  [30, 40, 50],
])("both diagonals of %i×%i ft are %d ft on the layout sheet", (widthFt, lengthFt, diagonalFt) => {
  const { AC, BD } = diagonalsOf(planOf(tent(widthFt, lengthFt)));
  expect([AC, BD]).toEqual([expect.closeTo(diagonalFt, 3), expect.closeTo(diagonalFt, 3)]);
});

// Geometry, computed: 89.443 ft in feet and sixteenths of an inch.
test("the diagonal of 40×80 ft reads 89 ft 5 5/16 in on the tape", () =>
  expect(feetInches(diagonalsOf(planOf(tent(40, 80))).AC)).toBe("89 ft 5 5/16 in"));

// Parallelogram law, computed: 40×80 ft sheared by half a foot along the long side.
describe("a 40×80 ft layout sheared by half a foot along the long side", () => {
  const plan = planOf({ ...tent(40, 80), shifted: { C: { xFt: 0, yFt: 0.5 }, D: { xFt: 0, yFt: 0.5 } } });
  const { AC, BD } = diagonalsOf(plan);
  it("has diagonals of 89.890 and 88.996 ft", () => {
    expect(AC).toBeCloseTo(89.89, 3);
    expect(BD).toBeCloseTo(88.996, 3);
    expect(AC - BD).toBeCloseTo(0.894, 3);
  });
  it("is racked by 0.716 degrees: asin((d1² − d2²) / 4ab), which is 0.50 ft over the side of 40 ft", () => {
    const rackedRad = Math.asin((AC ** 2 - BD ** 2) / (4 * 40 * 80));
    expect((rackedRad * 180) / Math.PI).toBeCloseTo(0.716, 3);
    expect(40 * Math.tan(rackedRad)).toBeCloseTo(0.5, 2);
  });
  it("satisfies the parallelogram law: the squared diagonals add up to twice the squared sides", () => {
    const [ab, bc] = edgeTapes(plan);
    expect(AC ** 2 + BD ** 2).toBeCloseTo(2 * (ab!.lengthFt ** 2 + bc!.lengthFt ** 2), 3);
  });
});

// NIST SP 811, B.8: a foot is 0.3048 m exactly.
test("a 100 ft edge is 30,480 mm on its tape, and its thirds are rounded to whole millimeters", () => {
  expect([100, 100 / 3, 200 / 3].map(toMm)).toEqual([30480, 10160, 20320]);
});
