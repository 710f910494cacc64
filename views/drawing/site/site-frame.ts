import type { SiteModel } from "../../../machines/site/model.ts";
import { edgeOf } from "../../../machines/site/shape.ts";
import { type Place, standingAt, standingOf, turning } from "../../../machines/site/stand.ts";
import type { Point, TentPlan } from "../../../machines/tent/types.ts";
import type { XY } from "../dimension.tsx";
import type { Pen } from "../palette.ts";

/** What of a site is drawn, in feet of its baseline. */
export type View = { readonly left: number; readonly right: number; readonly near: number; readonly far: number };

/** What a site is drawn with, on any drawing: where a point of it lies there, and how long a foot is. */
export type SitePen = Pen & {
  readonly at: (p: Point) => XY;
  readonly perFt: number;
  /** What lies outside of it is left out, before it is drawn. */
  readonly view: View;
  /** Letters keep away from here: the middle of the tent. */
  readonly avoid: Point;
};

/** A drawing of a site by itself: the baseline runs up, and what is off to the right of it lies right. */
export type SiteFrame = SitePen & { readonly widePx: number; readonly highPx: number };

/** Across a phone held upright. */
export const SITE_WIDE_PX = 328;
const MIN_HIGH_PX = 240;
const MAX_HIGH_PX = 430;
/** Room around what is drawn, for its scales. */
const ROOM_PX = { left: 30, right: 10, top: 12, bottom: 26 } as const;
/** Shown around the tent at least, and how far off something may be and still be shown, ft. */
const AROUND_FT = 12;
const SHOWN_FT = 40;

/** What is seen of a site: the tent wherever it may stand, the beginning of the baseline, what was pressed, and what is near. */
export function viewOf(
  plan: TentPlan,
  site: SiteModel,
  { places, points = [] }: { places: readonly Place[]; points?: readonly Point[] },
): View {
  const tent = standingOf(plan);
  const core = grown(boundsOf([...places.flatMap((place) => standingAt(tent, place).outline), { xFt: 0, yFt: 0 }, ...points]), AROUND_FT);
  const wide = grown(core, SHOWN_FT);
  const isNear = ({ xFt, yFt }: Point) => xFt >= wide.left && xFt <= wide.right && yFt >= wide.near && yFt <= wide.far;
  const near = [
    ...[...site.buried, ...site.overhead].flatMap((line) => line.points),
    ...site.things.flatMap(({ shape }) => edgeOf(shape).points),
  ].filter(isNear);
  if (near.length === 0) return core;
  const all = grown(boundsOf(near), 3);
  return {
    left: Math.min(core.left, all.left),
    right: Math.max(core.right, all.right),
    near: Math.min(core.near, all.near),
    far: Math.max(core.far, all.far),
  };
}

/** The frame that fits a view across a phone. Colors come from whoever shows it. */
export function siteFrame(view: View, pen: Pick<SitePen, "ink" | "ground" | "fills" | "avoid">): SiteFrame {
  const [wideFt, highFt] = [view.right - view.left, view.far - view.near];
  const wide = SITE_WIDE_PX - ROOM_PX.left - ROOM_PX.right;
  const most = MAX_HIGH_PX - ROOM_PX.top - ROOM_PX.bottom;
  const perFt = Math.min(wide / wideFt, most / highFt);
  const highPx = Math.max(MIN_HIGH_PX, Math.round(highFt * perFt + ROOM_PX.top + ROOM_PX.bottom));
  const x0 = ROOM_PX.left + (wide - wideFt * perFt) / 2;
  const y0 = ROOM_PX.top + (highPx - ROOM_PX.top - ROOM_PX.bottom - highFt * perFt) / 2;
  const tenth = (px: number) => Math.round(px * 10) / 10 + 0;
  // What a frame has room for beside the view is seen, too.
  const shown = (px: number) => px / perFt;
  return {
    ...pen,
    px: (n) => n,
    perFt,
    at: ({ xFt, yFt }) => [tenth(x0 + (xFt - view.left) * perFt), tenth(y0 + (view.far - yFt) * perFt)],
    view: {
      left: view.left - shown(x0),
      right: view.left + shown(SITE_WIDE_PX - x0),
      near: view.far - shown(highPx - y0),
      far: view.far + shown(y0),
    },
    widePx: SITE_WIDE_PX,
    highPx,
  };
}

/** The point of a site, in whole feet, that was pressed on its drawing, so many px from its top left where it is so wide. */
export function pressedAt({ view, widePx, highPx }: SiteFrame, [x, y]: XY, shownWidePx: number): Point {
  const part = (n: number, of: number) => Math.min(1, Math.max(0, n / of));
  const shownHighPx = (highPx * shownWidePx) / widePx;
  return {
    xFt: Math.round(view.left + part(x, shownWidePx) * (view.right - view.left)) + 0,
    yFt: Math.round(view.far - part(y, shownHighPx) * (view.far - view.near)) + 0,
  };
}

/** Where a point of a site lies in the plan of a tent that stands at a place. */
export function inPlan(plan: Pick<TentPlan, "widthFt" | "lengthFt">, { middle, headingDeg }: Place): (p: Point) => Point {
  const back = turning(-headingDeg);
  return ({ xFt, yFt }) => {
    const from = back({ xFt: xFt - middle.xFt, yFt: yFt - middle.yFt });
    return { xFt: from.xFt + plan.widthFt / 2, yFt: from.yFt + plan.lengthFt / 2 };
  };
}

/** Where a point of a tent's plan lies on the site, the tent standing at a place. */
export function onSite(plan: Pick<TentPlan, "widthFt" | "lengthFt">, { middle, headingDeg }: Place): (p: Point) => Point {
  const turn = turning(headingDeg);
  return ({ xFt, yFt }) => {
    const from = turn({ xFt: xFt - plan.widthFt / 2, yFt: yFt - plan.lengthFt / 2 });
    return { xFt: middle.xFt + from.xFt, yFt: middle.yFt + from.yFt };
  };
}

/** The runs of a path of which something is seen: thousands of stretches a mile away are not drawn. */
export function runsIn({ left, right, near, far }: View, points: readonly Point[]): Point[][] {
  const runs: Point[][] = [];
  let isOn = false;
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1]!, points[i]!];
    const isSeen =
      Math.max(a.xFt, b.xFt) >= left && Math.min(a.xFt, b.xFt) <= right && Math.max(a.yFt, b.yFt) >= near && Math.min(a.yFt, b.yFt) <= far;
    if (isSeen && isOn) runs.at(-1)!.push(b);
    else if (isSeen) runs.push([a, b]);
    isOn = isSeen;
  }
  return runs;
}

/** Where along a stretch a letter may stand. */
const LETTER_AT = [0.12, 0.42, 0.88];

/** Where the letter of a path stands: on the longest stretch that is seen, away from the tent; `null` where none is seen. */
export function letterSpot({ view, avoid }: Pick<SitePen, "view" | "avoid">, points: readonly Point[]): Point | null {
  let best: { readonly a: Point; readonly b: Point; readonly ft: number } | null = null;
  for (let i = 1; i < points.length; i++) {
    const cut = clipped(view, points[i - 1]!, points[i]!);
    if (!cut) continue;
    const [a, b] = cut;
    const ft = Math.hypot(b.xFt - a.xFt, b.yFt - a.yFt);
    if (!best || ft > best.ft) best = { a, b, ft };
  }
  if (!best) return null;
  const { a, b } = best;
  const spots = LETTER_AT.map((t): Point => ({ xFt: a.xFt + (b.xFt - a.xFt) * t, yFt: a.yFt + (b.yFt - a.yFt) * t }));
  const farFt = ({ xFt, yFt }: Point) => Math.hypot(xFt - avoid.xFt, yFt - avoid.yFt);
  return spots.reduce((far, spot) => (farFt(spot) > farFt(far) + 1 ? spot : far));
}

/** What of a stretch lies inside (Liang and Barsky, 1984); `null` where nothing does. */
function clipped({ left, right, near, far }: View, a: Point, b: Point): readonly [Point, Point] | null {
  const [dx, dy] = [b.xFt - a.xFt, b.yFt - a.yFt];
  let [from, to] = [0, 1];
  for (const [p, q] of [
    [-dx, a.xFt - left],
    [dx, right - a.xFt],
    [-dy, a.yFt - near],
    [dy, far - a.yFt],
  ] as const) {
    // biome-ignore format: one line reads best
    if (p === 0 && q < 0) return null;
    if (p < 0) from = Math.max(from, q / p);
    if (p > 0) to = Math.min(to, q / p);
  }
  const at = (t: number): Point => ({ xFt: a.xFt + dx * t, yFt: a.yFt + dy * t });
  return from <= to ? [at(from), at(to)] : null;
}

const boundsOf = (points: readonly Point[]): View =>
  points.reduce(
    (all, { xFt, yFt }) => ({
      left: Math.min(all.left, xFt),
      right: Math.max(all.right, xFt),
      near: Math.min(all.near, yFt),
      far: Math.max(all.far, yFt),
    }),
    { left: Number.POSITIVE_INFINITY, right: Number.NEGATIVE_INFINITY, near: Number.POSITIVE_INFINITY, far: Number.NEGATIVE_INFINITY },
  );
const grown = ({ left, right, near, far }: View, ft: number): View => ({
  left: left - ft,
  right: right + ft,
  near: near - ft,
  far: far + ft,
});
