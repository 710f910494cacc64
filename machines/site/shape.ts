import type { Point } from "../tent/types.ts";
import { betweenSegmentsSq, isInside, type Segment, segmentsOf, sidesOf, toSegmentSq } from "./plane.ts";

/** What stands on a site, seen from above, in feet: walls of a building, a trunk, a lot line. */
export type Shape =
  | { readonly is: "polygon"; readonly corners: readonly Point[] }
  | { readonly is: "circle"; readonly middle: Point; readonly radiusFt: number }
  | { readonly is: "path"; readonly points: readonly Point[] };

/** A convex polygon with its sides: a tent with its ropes. */
export type Outline = { readonly corners: readonly Point[]; readonly sides: readonly Segment[] };

/** The outline with these corners. */
export const outlineOf = (corners: readonly Point[]): Outline => ({ corners, sides: sidesOf(corners) });

/** The points that a shape is drawn by, and the stretches of its edge; of a circle the middle alone. */
export function edgeOf(shape: Shape): { readonly points: readonly Point[]; readonly segments: readonly Segment[] } {
  switch (shape.is) {
    case "circle":
      return { points: [shape.middle], segments: segmentsOf([shape.middle]) };
    case "path":
      return { points: shape.points, segments: segmentsOf(shape.points) };
    case "polygon":
      return { points: shape.corners, segments: sidesOf(shape.corners) };
  }
}

/** Distance in feet between an outline and a shape; 0 where they touch, overlap, or one lies in the other. */
export function apartFt(outline: Outline, shape: Shape): number {
  const { points, segments } = edgeOf(shape);
  const radiusFt = shape.is === "circle" ? shape.radiusFt : 0;
  // One point of each is enough: if neither is in the other they overlap only where their edges cross.
  if (isInside(points[0]!, outline.corners)) return 0;
  if (shape.is === "polygon" && isInside(outline.corners[0]!, shape.corners)) return 0;
  let leastSq = Number.POSITIVE_INFINITY;
  for (const side of outline.sides) for (const segment of segments) leastSq = Math.min(leastSq, betweenSegmentsSq(side, segment));
  return Math.max(0, Math.sqrt(leastSq) - radiusFt);
}

/** Distance in feet from a point to the edge of an outline or polygon, whichever side of it the point is on. */
export const toEdgeFt = ({ xFt, yFt }: Point, sides: readonly Segment[]): number =>
  Math.sqrt(sides.reduce((least, side) => Math.min(least, toSegmentSq(xFt, yFt, side)), Number.POSITIVE_INFINITY));
