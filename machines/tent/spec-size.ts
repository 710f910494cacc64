import { nearlyEqual, toGrid } from "./grid.ts";
import { fillMids, MIN_MID_FT, nearestMids } from "./mids.ts";
import { clamp, type FieldReader } from "./reading.ts";
import type { SpecInput } from "./spec-input.ts";
import { usuallyOnePiece, usuallySplit } from "./templates.ts";
import type { TentSpec } from "./types.ts";

/** What this tool plans for, in feet. Common practice, no source. */
export const MIN_WIDTH_FT = 20;
export const MAX_WIDTH_FT = 120;
export const MAX_LENGTH_FT = 400;

export type Size = Pick<TentSpec, "widthFt" | "lengthFt" | "midsFt" | "onePiece" | "splitEnds">;

/** How large the tent is and what pieces it comes in; `undefined` when that cannot be told. */
export function readSize(input: SpecInput, read: FieldReader): Size | undefined {
  const widthFt = read.withinRange("widthFt", "widthOutOfRange", input.widthFt, { from: MIN_WIDTH_FT, to: MAX_WIDTH_FT });
  const midsFt = readMids(input.midsFt, read);
  const lengthFt = readLength(input, widthFt, midsFt, read);
  const sized = widthFt !== undefined && lengthFt !== undefined;
  const usual = sized && !midsFt?.length && input.splitEnds !== true && usuallyOnePiece(widthFt, lengthFt);
  const onePiece = read.yesOrNo("onePiece", input.onePiece, usual);
  const splitEnds = read.yesOrNo("splitEnds", input.splitEnds, sized && onePiece === false && usuallySplit(widthFt));
  if (onePiece && splitEnds) read.refuse("splitEnds", "onePieceSplit", true, "false");
  if (onePiece && midsFt?.length) read.refuse("midsFt", "onePieceWithMids", midsFt.join("+"), []);
  if (!sized || midsFt === undefined || onePiece === undefined || splitEnds === undefined) return undefined;
  if (onePiece) return { widthFt, lengthFt, midsFt: [], onePiece, splitEnds };
  const mids = fill(widthFt, lengthFt, midsFt, read);
  return mids && { widthFt, lengthFt: toGrid(widthFt + sum(mids)), midsFt: mids, onePiece, splitEnds };
}

/** `null` where no mids are listed. */
function readMids(value: unknown, read: FieldReader): number[] | null | undefined {
  if (value === undefined || value === null) return null;
  if (!Array.isArray(value)) return read.refuse("midsFt", "notANumber", value);
  const mids = value.map((mid, i) => {
    const ft = read.finiteNumber(`midsFt[${i}]`, mid);
    if (ft === undefined || ft >= MIN_MID_FT) return ft;
    return read.refuse(`midsFt[${i}]`, "midNotPositive", ft, MIN_MID_FT);
  });
  return mids.some((ft) => ft === undefined) ? undefined : (mids as number[]);
}

/** The length given; without one, width and mids together. */
function readLength(
  input: SpecInput,
  widthFt: number | undefined,
  midsFt: number[] | null | undefined,
  read: FieldReader,
): number | undefined {
  const missing = input.lengthFt === undefined || input.lengthFt === null;
  if (missing && midsFt === undefined) return undefined;
  if (missing && midsFt && widthFt === undefined) return undefined;
  const lengthFt = missing && midsFt ? toGrid(widthFt! + sum(midsFt)) : read.finiteNumber("lengthFt", input.lengthFt, widthFt);
  if (lengthFt === undefined) return undefined;
  if (widthFt !== undefined && lengthFt < widthFt) return read.refuse("lengthFt", "lengthUnderWidth", lengthFt, widthFt);
  if (lengthFt >= MIN_WIDTH_FT && (lengthFt <= MAX_LENGTH_FT || nearlyEqual(lengthFt, MAX_LENGTH_FT))) return lengthFt;
  return read.refuse("lengthFt", "lengthOutOfRange", lengthFt, clamp(lengthFt, MIN_WIDTH_FT, MAX_LENGTH_FT));
}

function fill(widthFt: number, lengthFt: number, given: number[] | null, read: FieldReader): number[] | undefined {
  const gapFt = toGrid(lengthFt - widthFt);
  if (given && nearlyEqual(sum(given), gapFt)) return given;
  if (gapFt > 0 && gapFt < MIN_MID_FT) return read.refuse("lengthFt", "midsDoNotAddUp", lengthFt, widthFt);
  if (given) return read.refuse("midsFt", "midsDoNotAddUp", given.join("+"), nearestMids(given, widthFt, lengthFt));
  return fillMids(widthFt, lengthFt);
}

const sum = (lengths: readonly number[]): number => toGrid(lengths.reduce((a, b) => a + b, 0));
