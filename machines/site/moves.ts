import type { Corner, Point } from "../tent/types.ts";
import { LENGTHS, type LengthName, lengthFt, type Marks } from "./lengths.ts";

/** How far to move a mark, in inches, to the nearest 1/8: across is away from the side of A and B, along is from A toward B. */
export type Move = { readonly corner: Exclude<Corner, "A">; readonly acrossIn: number; readonly alongIn: number };

/** How far each length may be off, in inches. */
type Within = Readonly<Record<LengthName, number>>;

/**
 * The marks that have to move: as few as bring every length within half of its tolerance, and of those sets the one that is
 * moved least. A mark that is off within what is allowed stays, and so does one that is off by at most half the narrowest
 * tolerance, less rounding.
 */
export function movesNeeded(want: Marks, are: Marks, within: Within): readonly Move[] {
  const stayIn = Math.max(1 / 16, Math.min(...LENGTHS.map((name) => within[name])) / 2 - 1 / 8);
  const all = (["B", "C", "D"] as const).flatMap((corner): Move[] => {
    const by = offsetIn(are[corner], want[corner]);
    return size(by) <= stayIn ? [] : [{ corner, acrossIn: toEighth(by.acrossIn), alongIn: toEighth(by.alongIn) }];
  });
  const sets = choices(all)
    .filter((moves) => moves.length > 0)
    .sort((a, b) => a.length - b.length || total(a) - total(b));
  const chosen = sets.find((moves) => fits(want, moved(are, moves), within)) ?? all;
  return withoutTrifles(chosen, (moves) => fits(want, moved(are, moves), within), stayIn);
}

/** Without the way of a move that is as good as none, as long as what is left still fits. */
function withoutTrifles(moves: readonly Move[], stillFits: (moves: readonly Move[]) => boolean, stayIn: number): readonly Move[] {
  let kept = moves;
  for (const { corner } of moves)
    for (const way of ["acrossIn", "alongIn"] as const) {
      const without = kept.map((move) => (move.corner === corner && Math.abs(move[way]) <= stayIn ? { ...move, [way]: 0 } : move));
      if (stillFits(without)) kept = without;
    }
  const seen = kept.map((move) => ({ ...move, acrossIn: seenIn(move.acrossIn), alongIn: seenIn(move.alongIn) }));
  return seen.filter((move) => size(move) > 0);
}

/** No part of a move is finer than a quarter inch: nobody moves a pin by less. Common practice, no source. */
const MIN_PART_IN = 1 / 4;
const seenIn = (partIn: number): number => (Math.abs(partIn) < MIN_PART_IN ? 0 : partIn);

/** Whether every length is within half of its tolerance. */
const fits = (want: Marks, are: Marks, within: Within): boolean =>
  LENGTHS.every((name) => Math.abs(lengthFt(are, name) - lengthFt(want, name)) * 12 <= within[name] / 2);

/** The marks after the moves. */
function moved(marks: Marks, moves: readonly Move[]): Marks {
  const at = (corner: Corner): Point => {
    const by = moves.find((move) => move.corner === corner) ?? { acrossIn: 0, alongIn: 0 };
    return { xFt: marks[corner].xFt + by.acrossIn / 12, yFt: marks[corner].yFt + by.alongIn / 12 };
  };
  return { A: marks.A, B: at("B"), C: at("C"), D: at("D") };
}

/** Every choice of some of these. */
const choices = <T>(of: readonly T[]): T[][] =>
  Array.from({ length: 2 ** of.length }, (_, n) => of.filter((__, i) => Math.floor(n / 2 ** i) % 2 === 1));
const size = ({ acrossIn, alongIn }: Pick<Move, "acrossIn" | "alongIn">): number => Math.sqrt(acrossIn ** 2 + alongIn ** 2);
const total = (moves: readonly Move[]): number => moves.reduce((sum, move) => sum + size(move), 0);
const offsetIn = (from: Point, to: Point) => ({ acrossIn: (to.xFt - from.xFt) * 12, alongIn: (to.yFt - from.yFt) * 12 });
const toEighth = (inches: number): number => Math.round(inches * 8) / 8 + 0;
