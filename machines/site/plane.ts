import type { Point } from "../tent/types.ts";

/** A stretch of a line in feet, with what its distances are worked out from. */
export type Segment = {
  readonly from: Point;
  readonly to: Point;
  readonly dxFt: number;
  readonly dyFt: number;
  readonly lengthSq: number;
};

/** The stretch between two points. */
export function segmentOf(from: Point, to: Point): Segment {
  const [dxFt, dyFt] = [to.xFt - from.xFt, to.yFt - from.yFt];
  return { from, to, dxFt, dyFt, lengthSq: dxFt * dxFt + dyFt * dyFt };
}

/** The stretches of a path; of a single point, one without length. */
export const segmentsOf = (path: readonly Point[]): Segment[] =>
  path.length === 1 ? [segmentOf(path[0]!, path[0]!)] : path.slice(1).map((to, i) => segmentOf(path[i]!, to));

/** The sides of a polygon whose last corner is joined to its first. */
export const sidesOf = (corners: readonly Point[]): Segment[] =>
  corners.map((from, i) => segmentOf(from, corners[(i + 1) % corners.length]!));

/**
 * Square of the distance from a point to a stretch, in square feet. Squares, and coordinates one by one, because a search asks
 * millions of times.
 *
 * @example toSegmentSq(5, 3, segmentOf({ xFt: 0, yFt: 0 }, { xFt: 10, yFt: 0 })) // 9
 */
export function toSegmentSq(xFt: number, yFt: number, { from, dxFt, dyFt, lengthSq }: Segment): number {
  const px = xFt - from.xFt;
  const py = yFt - from.yFt;
  const along = lengthSq === 0 ? 0 : (px * dxFt + py * dyFt) / lengthSq;
  const within = Math.min(1, Math.max(0, along));
  const offX = px - within * dxFt;
  const offY = py - within * dyFt;
  return offX * offX + offY * offY;
}

/** Square of the distance between two stretches; 0 where they cross. */
export function betweenSegmentsSq(a: Segment, b: Segment): number {
  if (cross(a, b)) return 0;
  return Math.min(
    toSegmentSq(a.from.xFt, a.from.yFt, b),
    toSegmentSq(a.to.xFt, a.to.yFt, b),
    toSegmentSq(b.from.xFt, b.from.yFt, a),
    toSegmentSq(b.to.xFt, b.to.yFt, a),
  );
}

/** Whether two stretches cross, each with its ends on both sides of the other. A mere touch shows in the distances of the ends. */
export const cross = (a: Segment, b: Segment): boolean =>
  sideOf(a, b.from) * sideOf(a, b.to) < 0 && sideOf(b, a.from) * sideOf(b, a.to) < 0;

/** Above 0 left of a stretch, under 0 right of it, as one walks it. */
const sideOf = ({ from, dxFt, dyFt }: Segment, p: Point): number => Math.sign(dxFt * (p.yFt - from.yFt) - dyFt * (p.xFt - from.xFt));

/**
 * Whether a point is inside a polygon, by the sides that a ray from it crosses. On a side it may be either: ask for the distance.
 *
 * @example isInside({ xFt: 1, yFt: 1 }, [{ xFt: 0, yFt: 0 }, { xFt: 0, yFt: 3 }, { xFt: 3, yFt: 0 }]) // true
 */
export function isInside({ xFt, yFt }: Point, corners: readonly Point[]): boolean {
  let inside = false;
  for (let i = 0, j = corners.length - 1; i < corners.length; j = i++) {
    const [a, b] = [corners[i]!, corners[j]!];
    if (a.yFt > yFt !== b.yFt > yFt && xFt < ((b.xFt - a.xFt) * (yFt - a.yFt)) / (b.yFt - a.yFt) + a.xFt) inside = !inside;
  }
  return inside;
}

/** The smallest convex polygon around points, without corners on straight sides (Andrew, 1979). */
export function hullOf(points: readonly Point[]): Point[] {
  const sorted = [...points].sort((a, b) => a.xFt - b.xFt || a.yFt - b.yFt);
  const half = (ordered: readonly Point[]): Point[] => {
    const chain: Point[] = [];
    for (const p of ordered) {
      while (chain.length > 1 && sideOf(segmentOf(chain.at(-2)!, chain.at(-1)!), p) <= 0) chain.pop();
      chain.push(p);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.toReversed())];
}

/** Where the middle of some points' bounds is, and how far the farthest of them lies from it. */
export function boundOf(points: readonly Point[]): { readonly middle: Point; readonly radiusFt: number } {
  const middleOf = (of: (p: Point) => number): number =>
    (points.reduce((low, p) => Math.min(low, of(p)), Number.POSITIVE_INFINITY) +
      points.reduce((high, p) => Math.max(high, of(p)), Number.NEGATIVE_INFINITY)) /
    2;
  const middle = { xFt: middleOf((p) => p.xFt), yFt: middleOf((p) => p.yFt) };
  const sq = points.reduce((most, p) => Math.max(most, (p.xFt - middle.xFt) ** 2 + (p.yFt - middle.yFt) ** 2), 0);
  return { middle, radiusFt: Math.sqrt(sq) };
}
