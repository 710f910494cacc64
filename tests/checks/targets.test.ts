import { readFileSync } from "node:fs";
import { expect, it } from "vitest";

/** A size of the style, in px. */
const sizePx = (name: string): number =>
  Number(new RegExp(`--${name}: (\\d+)px;`).exec(readFileSync("views/parts/tokens.css", "utf8"))?.[1]);
/** CSS Values and Units: an inch is 96 px. */
const toPx = (mm: number): number => (mm / 25.4) * 96;

// MIL-STD-1472E, 5.4.3.1.3.3 (read): keys for mittens, 19 mm at least; in px, computed.
it("a target is 72 px, 19 mm", () => {
  expect(sizePx("target")).toBe(72);
  expect(Math.abs(toPx(19) - 72)).toBeLessThan(1);
});
// MIL-STD-1472F, push buttons (from memory): a gloved thumb, 25 mm at least.
it("the main one is at least 25 mm, 94.5 px", () => {
  expect(toPx(25)).toBeCloseTo(94.5, 1);
  expect(sizePx("target-main")).toBeGreaterThanOrEqual(toPx(25));
});
