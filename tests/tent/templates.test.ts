import { expect, test } from "vitest";
import { checkSpec } from "../../machines/tent/spec.ts";
import { templateFor, usualRings } from "../../machines/tent/templates.ts";

test("quarter rings by width: none up to 40 ft, ask at 50, one from 60 to 100, ask beyond", () => {
  expect([20, 40, 50, 60, 80, 100, 120].map(usualRings)).toEqual([0, 0, null, 1, 1, 1, null]);
});

test.each([
  [20, 20],
  [30, 60],
  [40, 40],
  [40, 100],
  // A ridge under 1 ft long has no room for two poles.
  [20.001, 21],
  [60, 90],
  [80, 80],
  [100, 200],
])("the prefilled form for %d×%d ft can be built unchanged", (widthFt, lengthFt) => {
  const { ridgePoles, ...fields } = templateFor(widthFt, lengthFt);
  const ridge = fields.onePiece ? ({ kind: "evenly", count: ridgePoles } as const) : null;
  expect(checkSpec({ widthFt, lengthFt, ...fields, ridge })).toHaveProperty("spec");
});
