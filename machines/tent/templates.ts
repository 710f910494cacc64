import { fillMids } from "./mids.ts";

/** Values to prefill a form with. All common practice, no source; the tent's own sheet decides. */
export type Template = {
  readonly onePiece: boolean;
  readonly splitEnds: boolean;
  readonly midsFt: readonly number[];
  /** `null` means ask. */
  readonly quarterRings: 0 | 1 | null;
  readonly ridgePoles: number;
  readonly spacingFt: number;
  readonly centerPoleFt: number;
  readonly sidePoleFt: number;
  readonly setbackFt: number;
};

/** Side pole length in feet, for 8 ft eaves. Common practice, no source. */
export const SIDE_POLE_FT = 8;
/** Distance from the side poles out to the stake line in feet, for 8 ft side poles. Common practice, no source. */
export const SETBACK_FT = 6;
/** Spacing of side poles in feet. Common practice, no source. */
export const SPACING_FT = 10;

/**
 * Rings of quarter poles for a width in feet: none up to 40, one from 60 to 100, otherwise `null`, which means ask. Common
 * practice, no source.
 *
 * @example usualRings(80) // 1
 */
export function usualRings(widthFt: number): 0 | 1 | null {
  if (widthFt <= 40) return 0;
  return widthFt >= 60 && widthFt <= 100 ? 1 : null;
}

/**
 * Whether the ends usually come in two pieces: from 60 ft wide, where one piece gets too heavy to carry. Common practice, no
 * source.
 *
 * @example usuallySplit(60) // true
 */
export const usuallySplit = (widthFt: number): boolean => widthFt >= 60;

/**
 * Whether the top usually comes in one piece: up to 40×40 ft. Common practice, no source.
 *
 * @example usuallyOnePiece(40, 60) // false
 */
export const usuallyOnePiece = (widthFt: number, lengthFt: number): boolean => widthFt <= 40 && lengthFt <= 40;

/** Minimum distance between two interior poles, in feet. Common practice, no source. */
export const MIN_POLE_SPACING_FT = 1;

/**
 * Number of poles along the ridge of a one-piece top: one at each hip point, spaced at most 20 ft and at least 1 ft. Common
 * practice, no source.
 *
 * @example usualRidgePoles(20, 60) // 3
 */
export const usualRidgePoles = (widthFt: number, lengthFt: number): number =>
  Math.min(Math.ceil((lengthFt - widthFt) / 20), Math.floor((lengthFt - widthFt) / MIN_POLE_SPACING_FT)) + 1;

/**
 * Usual length of a center pole in feet: the eave height plus a roof pitch of about 5 in 12, rounded up to a whole foot.
 * Common practice, no source.
 *
 * @example usualCenterPoleFt(80) // 25
 */
export const usualCenterPoleFt = (widthFt: number, sidePoleFt = SIDE_POLE_FT): number => Math.ceil(sidePoleFt + (widthFt / 2) * (5 / 12));

/**
 * Values to prefill the form with for a tent of this size in feet, until its sheet says otherwise.
 *
 * @example templateFor(80, 100).midsFt // [20]
 */
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
