import { toGrid } from "./grid.ts";
import { crossSeamsFt } from "./sections.ts";
import type { PatternSpec, TentSpec } from "./types.ts";

/** The ridge in feet from the near end: from one hip point to the other, half the width in from each end. */
export const ridgeEndsFt = (spec: Pick<TentSpec, "widthFt" | "lengthFt">) => ({
  fromFt: toGrid(spec.widthFt / 2),
  toFt: toGrid(spec.lengthFt - spec.widthFt / 2),
});

/**
 * Where the center poles stand, in feet from the near end: at each cross seam, evenly between the hip points (a single
 * one in the middle), or as the sheet gives them. Common practice, no source.
 */
export function ridgePositionsFt(spec: PatternSpec): number[] {
  const { ridge } = spec;
  if (ridge.kind === "atSeams") return crossSeamsFt(spec);
  if (ridge.kind === "given") return [...ridge.fromNearEndFt];
  if (ridge.count === 1) return [toGrid(spec.lengthFt / 2)];
  const { fromFt, toFt } = ridgeEndsFt(spec);
  return Array.from({ length: ridge.count }, (_, i) => toGrid(fromFt + ((toFt - fromFt) * i) / (ridge.count - 1)));
}
