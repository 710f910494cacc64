import { toGrid } from "./grid.ts";
import { crossSeamsFt } from "./sections.ts";
import type { PatternSpec, TentSpec } from "./types.ts";

/**
 * The two hip points, in feet from the near end. Each is half the tent's width in from its end; the ridge runs between them.
 *
 * @example ridgeEndsFt({ widthFt: 80, lengthFt: 100 }) // { fromFt: 40, toFt: 60 }
 */
export const ridgeEndsFt = (spec: Pick<TentSpec, "widthFt" | "lengthFt">) => ({
  fromFt: toGrid(spec.widthFt / 2),
  toFt: toGrid(spec.lengthFt - spec.widthFt / 2),
});

/**
 * Positions of the center poles, in feet from the near end: at each cross seam, evenly between the hip points (a single one
 * in the middle), or as given on the sheet. Common practice, no source.
 *
 * @example ridgePositionsFt({ ...spec, ridge: { kind: "evenly", count: 3 } }) // [40, 50, 60]
 */
export function ridgePositionsFt(spec: PatternSpec): number[] {
  const { ridge } = spec;
  if (ridge.kind === "atSeams") return crossSeamsFt(spec);
  if (ridge.kind === "given") return [...ridge.fromNearEndFt];
  if (ridge.count === 1) return [toGrid(spec.lengthFt / 2)];
  const { fromFt, toFt } = ridgeEndsFt(spec);
  return Array.from({ length: ridge.count }, (_, i) => toGrid(fromFt + ((toFt - fromFt) * i) / (ridge.count - 1)));
}
