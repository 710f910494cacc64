import type { Point, TentPlan } from "../../machines/tent/types.ts";

/** Where things go in the drawing: the view box is in feet, y down, with the near edge at the bottom. */
export type Frame = {
  readonly widthFt: number;
  readonly heightFt: number;
  /** Feet that take this many CSS px when the drawing is shown 360 px wide, the narrowest phone. */
  readonly px: (n: number) => number;
  readonly x: (xFt: number) => number;
  readonly y: (yFt: number) => number;
  /** Where a place of the cloth comes to lie in the drawing: stretched between the corner marks as they stand. */
  readonly cloth: (p: Point) => readonly [x: number, y: number];
};

const PHONE_PX = 360;
/** Room outside the stake line for station numbers. */
const MARGIN_PX = 26;

/** The frame of a tent with `belowPx` of room below it. */
export function frameOf(plan: TentPlan, belowPx: number): Frame {
  const { widthFt, lengthFt, spec } = plan;
  const acrossFt = widthFt + 2 * spec.setbackFt;
  const wholeFt = acrossFt / (1 - (2 * MARGIN_PX) / PHONE_PX);
  const px = (n: number) => roundHundredth((n * wholeFt) / PHONE_PX);
  const edgeFt = spec.setbackFt + px(MARGIN_PX);
  const x = (xFt: number) => roundHundredth(xFt + edgeFt);
  const y = (yFt: number) => roundHundredth(lengthFt - yFt + edgeFt);
  const lie = layOnSite(plan);
  return {
    widthFt: roundHundredth(wholeFt),
    heightFt: roundHundredth(lengthFt + 2 * edgeFt + px(belowPx)),
    px,
    x,
    y,
    cloth: (p) => {
      const { xFt, yFt } = lie(p);
      return [x(xFt), y(yFt)];
    },
  };
}

/** Lays the cloth between the corner marks, evenly each way: along an edge it agrees with the stations of the plan. */
export function layOnSite({ widthFt, lengthFt, stations }: TentPlan): (p: Point) => Point {
  const [a, b, c, d] = ["A", "B", "C", "D"].map((id) => stations.find((s) => s.id === id)!);
  return ({ xFt, yFt }) => {
    const [u, v] = [xFt / widthFt, yFt / lengthFt];
    const mix = (axis: "xFt" | "yFt") => (1 - u) * ((1 - v) * a![axis] + v * b![axis]) + u * ((1 - v) * d![axis] + v * c![axis]);
    return { xFt: mix("xFt"), yFt: mix("yFt") };
  };
}

/** Hundredths of a foot are finer than any screen. */
export const roundHundredth = (ft: number): number => Math.round(ft * 100) / 100 + 0;

export type Box = Point & { readonly wideFt: number; readonly highFt: number };

/** Whether two boxes, given by their middles, touch. */
export const overlap = (a: Box, b: Box): boolean =>
  Math.abs(a.xFt - b.xFt) * 2 < a.wideFt + b.wideFt && Math.abs(a.yFt - b.yFt) * 2 < a.highFt + b.highFt;
