import { OUTWARD } from "../../../machines/tent/tape.ts";
import type { EdgeName, Point, TentPlan } from "../../../machines/tent/types.ts";
import type { XY } from "../dimension.tsx";
import { clothToSite } from "../frame.ts";
import type { Pen } from "../palette.ts";

/** The whole plan is turned by this much, clockwise. Letters and numbers stay upright. */
export type Turn = 0 | 90 | 180 | 270;
export const TURNS: readonly Turn[] = [0, 90, 180, 270];

/** A box of this many px to be filled; it grows with its place on the page. */
export type Box = { readonly widePx: number; readonly highPx: number };
/** Across a phone held upright, with the call above it and what answers it below. */
export const ACROSS_A_PHONE: Box = { widePx: 328, highPx: 170 };
/** Half of a desk, or a tablet: shown at twice its px, with the names of poles and the numbers of stations. */
export const HALF_A_DESK: Box = { widePx: 450, highPx: 300 };
/** Beside a call and what answers it, from a desk's width on: about as high as wide. */
export const LEFT_OF_A_DESK: Box = { widePx: 450, highPx: 410 };
/** A whole phone held upright. */
export const DOWN_A_PHONE: Box = { widePx: 328, highPx: 560 };

/** The name of a drawing that is given no other. */
export const PICTURE = "picture";

/** Room in px that is kept free of the plan on each side. */
export type Room = { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };

/** Coordinates of a small drawing, in px of its box. */
export type SmallFrame = Pen & {
  readonly box: Box;
  readonly turn: Turn;
  readonly pxPerFt: number;
  /** Radius of the ring around a pole: no two touch. */
  readonly polePx: number;
  /** Position of a point of the plan. */
  readonly at: (p: Point) => XY;
  /** Position of a point on the cloth, laid between the actual corner marks. */
  readonly cloth: (p: Point) => XY;
  /** Direction out of the tent at an edge, of length 1. */
  readonly out: (edge: EdgeName) => XY;
  /** The middle of the plan, as far as it is shown. */
  readonly middle: XY;
  /** How far down a level of the picture is on the turned plan, in feet. */
  readonly levelFt: (y: number) => number;
  /** Where only a part of the plan is shown: between these levels. */
  readonly part?: { readonly fromPx: number; readonly toPx: number };
};

/** What a part of a turned plan takes up, in feet; y is down. */
export type Extent = { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };

const POLE_PX = { most: 11, least: 6.5 } as const;

/** Colors of a small drawing: a page may set its ground, which is that of what the drawing stands on. */
export const SMALL_PALETTE = { ink: "currentColor", ground: "var(--drawn-ground, Canvas)" } as const;

/** The turn that puts the long side of a plan along the long side of its box. A square tent is not turned. */
export function usualTurn({ widthFt, lengthFt }: Pick<TentPlan, "widthFt" | "lengthFt">, box: Box = ACROSS_A_PHONE): Turn {
  return widthFt !== lengthFt && lengthFt > widthFt === box.widePx > box.highPx ? 90 : 0;
}

/** The frame that fits these points of a plan into what a box has left. `plan` says where the cloth lies. */
export const smallFrame = (plan: TentPlan, points: readonly Point[], turn: Turn, into: { box: Box; room: Room }): SmallFrame =>
  frameFor(plan, extentOf(points, turn), turn, into);

/** What points of a plan take up once it is turned. */
export function extentOf(points: readonly Point[], turn: Turn): Extent {
  const spots = points.map((p) => turned(p, turn));
  const [left, right] = extent(spots.map(([x]) => x));
  const [top, bottom] = extent(spots.map(([, y]) => y));
  return { left, right, top, bottom };
}

/** The frame that fits a part of a turned plan into what a box has left. */
export function frameFor(plan: TentPlan, of: Extent, turn: Turn, { box, room }: { box: Box; room: Room }): SmallFrame {
  const { left, right, top, bottom } = of;
  const wide = box.widePx - room.left - room.right;
  const high = box.highPx - room.top - room.bottom;
  const pxPerFt = Math.min(wide / (right - left), high / (bottom - top));
  const x0 = room.left + wide / 2 - ((left + right) / 2) * pxPerFt;
  const y0 = room.top + high / 2 - ((top + bottom) / 2) * pxPerFt;
  const at = (p: Point): XY => {
    const [x, y] = turned(p, turn);
    return [tenth(x0 + x * pxPerFt), tenth(y0 + y * pxPerFt)];
  };
  const toSite = clothToSite(plan);
  return {
    ...SMALL_PALETTE,
    px: (n) => n,
    box,
    turn,
    pxPerFt,
    polePx: tenth(Math.min(POLE_PX.most, Math.max(POLE_PX.least, closestFt(plan.poles) * pxPerFt * 0.38))),
    at,
    cloth: (p) => at(toSite(p)),
    out: (edge) => outward(edge, turn),
    middle: [room.left + wide / 2, room.top + high / 2],
    levelFt: (y) => (y - y0) / pxPerFt,
  };
}

/** Direction out of the tent at an edge, of length 1, in a plan that is turned. */
export const outward = (edge: EdgeName, turn: Turn): XY => turned(OUTWARD[edge], turn);

/** How far apart the two points are that are closest to each other. */
function closestFt(points: readonly Point[]): number {
  let closest = Number.POSITIVE_INFINITY;
  for (const [i, a] of points.entries())
    for (let j = i + 1; j < points.length; j++) closest = Math.min(closest, Math.hypot(a.xFt - points[j]!.xFt, a.yFt - points[j]!.yFt));
  return closest;
}

/** A point of the plan with y down, turned clockwise about A. */
export function turned({ xFt, yFt }: Point, turn: Turn): XY {
  switch (turn) {
    case 0:
      return [xFt, -yFt + 0];
    case 90:
      return [yFt, xFt];
    case 180:
      return [-xFt + 0, yFt];
    case 270:
      return [-yFt + 0, -xFt + 0];
  }
}

/** The stake line's extent: what a plan takes up, wherever its corners lie. */
export const reachOf = ({ plates, stations }: TentPlan): Point[] => [...plates, ...stations];

const extent = (of: readonly number[]): [number, number] => [Math.min(...of), Math.max(...of)];

/** Rounds px to a tenth, which is finer than any screen at the size that it is drawn for. */
export const tenth = (px: number): number => Math.round(px * 10) / 10 + 0;
