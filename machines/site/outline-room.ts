import type { Point } from "../tent/types.ts";
import { insideByFt, isTooNear } from "./clearances.ts";
import type { Area, Thing } from "./model.ts";
import { boundOf, isInside } from "./plane.ts";
import { type ClearanceRules, knownFt, SAME_FT, thingTerms } from "./rules.ts";
import { apartFt, edgeOf, outlineOf } from "./shape.ts";
import { type Region, type Zone, zoneGrid } from "./zone-grid.ts";

/** Whether something is clear with the tent's middle at a place. */
export type Check = (xFt: number, yFt: number) => boolean;

/** Whether all of some checks are. The one that was not is asked first the next time: beside that place it likely is not again. */
export function allOf(checks: readonly Check[]): Check {
  const order = [...checks];
  return (xFt, yFt) => {
    for (let i = 0; i < order.length; i++) {
      if (order[i]!(xFt, yFt)) continue;
      if (i > 0) [order[0], order[i]] = [order[i]!, order[0]!];
      return false;
    }
    return true;
  };
}

/** Between points of the outline that are asked before its sides are, ft: it rules most places out at the cost of a few points. */
const OUTLINE_STEP_FT = 4;

/** Whether ropes and cloth are far enough from all things of a region: for an outline about its middle. */
export function ofThings(things: readonly Thing[], rules: ClearanceRules, region: Region): (outline: readonly Point[]) => Check[] {
  const near = things
    .map(({ shape, ...thing }) => ({
      shape,
      wantedFt: knownFt(thingTerms({ shape, ...thing }, rules)),
      bound: boundOf(edgeOf(shape).points),
    }))
    .map((one) => ({ ...one, reachFt: one.bound.radiusFt + one.wantedFt + (one.shape.is === "circle" ? one.shape.radiusFt : 0) }))
    .filter(({ reachFt, bound }) => distanceFt(bound.middle, region.middle) < reachFt + region.halfFt);
  // A little less: points between corners are rounded, and what they leave open the sides decide.
  const zones = near.flatMap(({ shape, wantedFt }) => {
    const radiusFt = wantedFt + (shape.is === "circle" ? shape.radiusFt : 0) - 10 * SAME_FT;
    return edgeOf(shape).segments.map((segment): Zone => ({ segment, radiusFt }));
  });
  const grid = zoneGrid(zones, region, 0);
  return (outline) => {
    const tentFt = Math.max(...outline.map((p) => Math.sqrt(p.xFt ** 2 + p.yFt ** 2)));
    const likely = alongOutline(outline).map(
      (p): Check =>
        (xFt, yFt) =>
          !grid.isIn(xFt + p.xFt, yFt + p.yFt, 0),
    );
    const surely = near.map(({ shape, wantedFt, bound, reachFt }): Check => {
      const [first] = edgeOf(shape).points as [Point];
      return (xFt, yFt) => {
        if (distanceFt(bound.middle, { xFt, yFt }) > reachFt + tentFt + 1) return true;
        // A trunk or a wall under the cloth: no need of its distances.
        if (isInside({ xFt: first.xFt - xFt, yFt: first.yFt - yFt }, outline)) return false;
        return !isTooNear(apartFt(outlineOf(movedBy(outline, xFt, yFt)), shape), wantedFt);
      };
    });
    return grid.isEmpty ? [] : [allOf(likely), allOf(surely)];
  };
}

/** Whether ropes and cloth are on the ground that may be used, for an outline about its middle. */
export const ofGround =
  (ground: Area | null, outline: readonly Point[]): Check =>
  (xFt, yFt) => {
    if (ground === null) return true;
    // A corner off the ground is cheap to see, and most places fail by one.
    if (!outline.every((p) => isInside({ xFt: xFt + p.xFt, yFt: yFt + p.yFt }, ground.corners))) return false;
    return !isTooNear(insideByFt(outlineOf(movedBy(outline, xFt, yFt)), ground), ground.errorFt);
  };

const movedBy = (points: readonly Point[], xFt: number, yFt: number): Point[] =>
  points.map((p) => ({ xFt: xFt + p.xFt, yFt: yFt + p.yFt }));

/** Points along the sides of an outline, its corners among them. */
const alongOutline = (corners: readonly Point[]): Point[] =>
  outlineOf(corners).sides.flatMap(({ from, dxFt, dyFt, lengthSq }) => {
    const steps = Math.max(1, Math.ceil(Math.sqrt(lengthSq) / OUTLINE_STEP_FT));
    return Array.from({ length: steps }, (_, i) => ({ xFt: from.xFt + (dxFt * i) / steps, yFt: from.yFt + (dyFt * i) / steps }));
  });

const distanceFt = (a: Point, b: Point): number => Math.sqrt((a.xFt - b.xFt) ** 2 + (a.yFt - b.yFt) ** 2);
