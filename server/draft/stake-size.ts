import type { Fields } from "../input/form.ts";
import { typed } from "../input/typed.ts";

/** The one field in which a stake's size is typed, as crews say it ("1 x 42"), and the two figures of a sheet that it gives. */
export const STAKE_SIZE = "sheet.stakeSize";
const [ACROSS, LONG] = ["sheet.stakeDiameterIn", "sheet.stakeLengthIn"] as const;
const BY = /\s*(?:[x×*]|\bby\b)\s*/i;

/** Whether a field is one of those two figures. */
export const isStakeFigure = (field: string): boolean => field === ACROSS || field === LONG;

const isFigure = (text: string | undefined) => typeof typed(text, "in") === "number";

/** What was typed in a step, with a stake's size as its two figures. One that cannot be read stays as it was typed, in the first of them. */
export function withStakeFigures(f: Fields): Fields {
  const { [STAKE_SIZE]: size, ...rest } = f;
  return size === undefined ? f : { ...rest, ...figuresOf(size) };
}

function figuresOf(size: string): Fields {
  const two = size.trim().split(BY);
  if (two.length !== 2 || !two.every(isFigure)) return { [ACROSS]: size, [LONG]: "" };
  const [across, long] = two.toSorted((a, b) => Number(typed(a, "in")) - Number(typed(b, "in")));
  return { [ACROSS]: across!, [LONG]: long! };
}

/** The size as its field shows it. */
export function stakeSizeOf(f: Fields): string {
  const [across, long] = [f[ACROSS]?.trim() ?? "", f[LONG]?.trim() ?? ""];
  return long === "" ? across : `${across} x ${long}`;
}

/** Whether both figures are there as numbers, so that what is wrong with one is more than that it cannot be read. */
export const isStakeSize = (f: Fields): boolean => isFigure(f[ACROSS]) && isFigure(f[LONG]);
