import type { Point, TentPlan } from "../../machines/tent/types.ts";

/** Where things go in the drawing: the view box is in feet, y down, with the near edge at the bottom. */
export type Frame = {
  readonly widthFt: number;
  readonly heightFt: number;
  /** Feet that take this many CSS px when the drawing is shown 360 px wide, the narrowest phone. */
  readonly px: (n: number) => number;
  readonly x: (xFt: number) => number;
  readonly y: (yFt: number) => number;
};

const PHONE_PX = 360;
/** Room outside the stake line for station numbers. */
const MARGIN_PX = 26;

/** The frame of a tent with `belowPx` of room below it. */
export function frameOf({ widthFt, lengthFt, spec }: TentPlan, belowPx: number): Frame {
  const acrossFt = widthFt + 2 * spec.setbackFt;
  const wholeFt = acrossFt / (1 - (2 * MARGIN_PX) / PHONE_PX);
  const px = (n: number) => short((n * wholeFt) / PHONE_PX);
  const edgeFt = spec.setbackFt + px(MARGIN_PX);
  return {
    widthFt: short(wholeFt),
    heightFt: short(lengthFt + 2 * edgeFt + px(belowPx)),
    px,
    x: (xFt) => short(xFt + edgeFt),
    y: (yFt) => short(lengthFt - yFt + edgeFt),
  };
}

/** Hundredths of a foot are finer than any screen. */
export const short = (ft: number): number => Math.round(ft * 100) / 100 + 0;

export type Box = Point & { readonly wideFt: number; readonly highFt: number };

/** Whether two boxes, given by their middles, touch. */
export const overlap = (a: Box, b: Box): boolean =>
  Math.abs(a.xFt - b.xFt) * 2 < a.wideFt + b.wideFt && Math.abs(a.yFt - b.yFt) * 2 < a.highFt + b.highFt;
