import { fillMids } from "./mids.ts";

/** Pre-fills for a form. All common practice, no source: the tent's own sheet decides. */
export type Template = {
  readonly onePiece: boolean;
  readonly splitEnds: boolean;
  readonly midsFt: readonly number[];
  /** `null`: ask. */
  readonly quarterRings: 0 | 1 | null;
  readonly ridgePoles: number;
  readonly spacingFt: number;
  readonly centerPoleFt: number;
  readonly sidePoleFt: number;
  readonly setbackFt: number;
};

/** Side pole in feet: 8 ft eaves. Common practice, no source. */
export const SIDE_POLE_FT = 8;
/** From the side poles out to the stake line in feet, for side poles of 8 ft. Common practice, no source. */
export const SETBACK_FT = 6;
/** Between side poles in feet. Common practice, no source. */
export const SPACING_FT = 10;

/** Rings of quarter poles by width in feet: none up to 40, one from 60 to 100, otherwise ask. Common practice, no source. */
export function usualRings(widthFt: number): 0 | 1 | null {
  if (widthFt <= 40) return 0;
  return widthFt >= 60 && widthFt <= 100 ? 1 : null;
}

/** Ends come in two pieces from 60 ft wide: one piece gets too heavy to carry. Common practice, no source. */
export const usuallySplit = (widthFt: number): boolean => widthFt >= 60;

/** Tops up to 40×40 ft usually come as one piece. Common practice, no source. */
export const usuallyOnePiece = (widthFt: number, lengthFt: number): boolean => widthFt <= 40 && lengthFt <= 40;

/** Two interior poles stand at least this far apart, in feet. Common practice, no source. */
export const MIN_POLE_SPACING_FT = 1;

/** Poles along the ridge of a one-piece top: one at each hip point, no more than 20 ft between and no less than 1. Common practice, no source. */
export const usualRidgePoles = (widthFt: number, lengthFt: number): number =>
  Math.min(Math.ceil((lengthFt - widthFt) / 20), Math.floor((lengthFt - widthFt) / MIN_POLE_SPACING_FT)) + 1;

/** Length of a center pole in feet: the eave and a roof of about 5 in 12, to the next whole foot. Common practice, no source. */
export const usualCenterPoleFt = (widthFt: number, sidePoleFt = SIDE_POLE_FT): number => Math.ceil(sidePoleFt + (widthFt / 2) * (5 / 12));

/** What to write into the form for a tent of this size in feet, until its sheet says otherwise. */
export function templateFor(widthFt: number, lengthFt: number): Template {
  const onePiece = usuallyOnePiece(widthFt, lengthFt);
  return {
    onePiece,
    splitEnds: !onePiece && usuallySplit(widthFt),
    midsFt: onePiece ? [] : fillMids(widthFt, lengthFt),
    quarterRings: usualRings(widthFt),
    ridgePoles: usualRidgePoles(widthFt, lengthFt),
    spacingFt: SPACING_FT,
    centerPoleFt: usualCenterPoleFt(widthFt),
    sidePoleFt: SIDE_POLE_FT,
    setbackFt: SETBACK_FT,
  };
}
