import { checkSpec } from "./spec.ts";
import { templateFor } from "./templates.ts";
import type { TentSpec } from "./types.ts";

/** A tent of a common size built from the usual pieces, poles, and spacing. It stands for no maker's tent and no real sheet. */
export type Example = { readonly id: string; readonly spec: TentSpec };

type Size = {
  readonly widthFt: number;
  readonly lengthFt: number;
  /** Omitted for a one-piece top. */
  readonly ends?: readonly ("whole" | "split")[];
  /** Set where the width has no usual number of rings, or to show a different one. */
  readonly rings?: 0 | 1 | 2;
};

/** Common sizes. Common practice, no source. */
const SIZES: readonly Size[] = [
  { widthFt: 20, lengthFt: 20 },
  { widthFt: 20, lengthFt: 40 },
  { widthFt: 30, lengthFt: 60, ends: ["whole"] },
  { widthFt: 40, lengthFt: 40 },
  { widthFt: 40, lengthFt: 80, ends: ["whole", "split"] },
  { widthFt: 40, lengthFt: 100, ends: ["whole", "split"] },
  { widthFt: 60, lengthFt: 90, ends: ["whole", "split"] },
  { widthFt: 60, lengthFt: 120, ends: ["whole", "split"] },
  { widthFt: 80, lengthFt: 100, ends: ["whole", "split"] },
  { widthFt: 80, lengthFt: 120, ends: ["whole", "split"] },
  { widthFt: 100, lengthFt: 150, ends: ["whole", "split"] },
  { widthFt: 100, lengthFt: 200, ends: ["whole", "split"] },
  { widthFt: 100, lengthFt: 200, ends: ["split"], rings: 2 },
];

/** All examples, smallest first. */
export const EXAMPLES: readonly Example[] = SIZES.flatMap(({ widthFt, lengthFt, ends, rings }) =>
  ends ? ends.map((end) => exampleOf(widthFt, lengthFt, end, rings)) : [exampleOf(widthFt, lengthFt, "whole", rings)],
);

function exampleOf(widthFt: number, lengthFt: number, end: "whole" | "split", rings?: 0 | 1 | 2): Example {
  const { ridgePoles, ...usual } = templateFor(widthFt, lengthFt);
  const splitEnds = end === "split";
  const checked = checkSpec({ widthFt, lengthFt, ...usual, splitEnds, quarterRings: rings ?? usual.quarterRings });
  if ("problems" in checked) throw new Error(`the example ${widthFt}×${lengthFt} cannot be built: ${JSON.stringify(checked.problems)}`);
  const kind = usual.onePiece ? "one-piece" : end;
  const more = rings === undefined ? "" : `-${rings}-rings`;
  return { id: `example-${widthFt}x${lengthFt}-${kind}${more}`, spec: checked.spec };
}
