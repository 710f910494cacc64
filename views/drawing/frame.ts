import type { Point, TentPlan } from "../../machines/tent/types.ts";
import { ON_PAGE, type Pen } from "./palette.ts";

/** Coordinates of a drawing. The view box is in feet, y down, with the near edge at the bottom; `px` is that of the narrowest phone. */
export type Frame = Pen & {
  readonly widthFt: number;
  readonly heightFt: number;
  readonly x: (xFt: number) => number;
  readonly y: (yFt: number) => number;
  /** Position in the drawing of a point on the cloth, stretched between the actual corner marks. */
  readonly cloth: (p: Point) => readonly [x: number, y: number];
};

const PHONE_PX = 360;
/** Room outside the stake line for station numbers. */
const MARGIN_PX = 26;

/** The frame of a tent with `belowPx` of room below it. */
export function frameOf(plan: TentPlan, belowPx: number): Frame {
  const { widthFt, lengthFt, spec } = plan;
  const stakeLineWidthFt = widthFt + 2 * spec.setbackFt;
  const drawingWidthFt = stakeLineWidthFt / (1 - (2 * MARGIN_PX) / PHONE_PX);
  const px = (n: number) => roundHundredth((n * drawingWidthFt) / PHONE_PX);
  const marginFt = spec.setbackFt + px(MARGIN_PX);
  const x = (xFt: number) => roundHundredth(xFt + marginFt);
  const y = (yFt: number) => roundHundredth(lengthFt - yFt + marginFt);
  const toSite = clothToSite(plan);
  return {
    ...ON_PAGE,
    widthFt: roundHundredth(drawingWidthFt),
    heightFt: roundHundredth(lengthFt + 2 * marginFt + px(belowPx)),
    px,
    x,
    y,
    cloth: (p) => {
      const { xFt, yFt } = toSite(p);
      return [x(xFt), y(yFt)];
    },
  };
}

/** Maps a point on the cloth to the ground by bilinear interpolation between the corner marks, as the plan's stations do. */
export function clothToSite({ widthFt, lengthFt, stations }: TentPlan): (p: Point) => Point {
  const [a, b, c, d] = ["A", "B", "C", "D"].map((id) => stations.find((s) => s.id === id)!);
  return ({ xFt, yFt }) => {
    const [u, v] = [xFt / widthFt, yFt / lengthFt];
    const mix = (axis: "xFt" | "yFt") => (1 - u) * ((1 - v) * a![axis] + v * b![axis]) + u * ((1 - v) * d![axis] + v * c![axis]);
    return { xFt: mix("xFt"), yFt: mix("yFt") };
  };
}

/** Rounds feet to a hundredth, which is finer than any screen. */
export const roundHundredth = (ft: number): number => Math.round(ft * 100) / 100 + 0;

export type Box = Point & { readonly widthFt: number; readonly heightFt: number };

/** Whether two boxes, given by their centers, overlap. */
export const overlap = (a: Box, b: Box): boolean =>
  Math.abs(a.xFt - b.xFt) * 2 < a.widthFt + b.widthFt && Math.abs(a.yFt - b.yFt) * 2 < a.heightFt + b.heightFt;
