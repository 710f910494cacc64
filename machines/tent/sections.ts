import { toGrid } from "./grid.ts";
import type { JoinEdge, Piece, Side, TentSpec } from "./types.ts";

/** The kind of edge that a given kind is laced to. */
export const opposite = (edge: JoinEdge): JoinEdge => (edge === "lace" ? "eyelet" : "lace");

/**
 * The pieces of the top in the order they are laid out: from the near end (DA) to the far end, and from left to right.
 * Ends are half the width deep and mids lie between them. The two pieces of a split end are named by the corner they
 * hold, so that nobody lays one in another's place: end-A, end-D, mid-1 …, end-B, end-C. Common practice, no source.
 */
export function piecesOf(spec: TentSpec): Piece[] {
  if (spec.onePiece) {
    return [{ id: "top", kind: "whole", order: 1, at: box(0, 0, spec.widthFt, spec.lengthFt), edges: {} }];
  }
  const bands = bandsOf(spec);
  const lengthwise = walk(bands.length);
  return bands
    .flatMap((band, i) => {
      const across = walk(band.ids.length);
      const cuts = [0, ...(band.ids.length === 2 ? [toGrid(spec.widthFt / 2)] : []), spec.widthFt];
      return band.ids.map((id, j) => ({
        id,
        kind: band.kind,
        at: box(cuts[j]!, band.nearFt, cuts[j + 1]!, band.farFt),
        edges: joined({ near: lengthwise[i]!.meets, far: lengthwise[i]!.leaves, left: across[j]!.meets, right: across[j]!.leaves }),
      }));
    })
    .map((piece, i) => ({ ...piece, order: i + 1 }));
}

/** Distances in feet from the near end to each cross seam, in order. A one-piece top has none. */
export function crossSeamsFt(spec: Pick<TentSpec, "widthFt" | "midsFt" | "onePiece">): number[] {
  if (spec.onePiece) return [];
  const seams = [toGrid(spec.widthFt / 2)];
  for (const midFt of spec.midsFt) seams.push(toGrid(seams.at(-1)! + midFt));
  return seams;
}

type Band = { kind: "end" | "splitEnd" | "mid"; ids: string[]; nearFt: number; farFt: number };

function bandsOf(spec: TentSpec): Band[] {
  const cuts = [0, ...crossSeamsFt(spec), spec.lengthFt];
  const last = cuts.length - 2;
  return cuts.slice(1).map((farFt, i): Band => {
    const at = { nearFt: cuts[i]!, farFt };
    if (i > 0 && i < last) return { kind: "mid", ids: [`mid-${i}`], ...at };
    const end = i === 0 ? { whole: "end-DA", split: ["end-A", "end-D"] } : { whole: "end-BC", split: ["end-B", "end-C"] };
    return spec.splitEnds ? { kind: "splitEnd", ids: end.split, ...at } : { kind: "end", ids: [end.whole], ...at };
  });
}

/**
 * Walking over pieces that lie in a line, the edge we meet is the opposite of the edge we just left, and we leave each
 * piece by the opposite of the edge we met it by. So all mids are alike, and none can be laid the other way round.
 */
function walk(count: number): { meets?: JoinEdge; leaves?: JoinEdge }[] {
  const steps: { meets?: JoinEdge; leaves?: JoinEdge }[] = [];
  for (let i = 0; i < count; i++) {
    const left = steps.at(-1)?.leaves;
    const meets = left && opposite(left);
    steps.push({ meets, leaves: i === count - 1 ? undefined : meets ? opposite(meets) : "lace" });
  }
  return steps;
}

const joined = (edges: Partial<Record<Side, JoinEdge | undefined>>): Piece["edges"] =>
  Object.fromEntries(Object.entries(edges).filter(([, kind]) => kind !== undefined));

const box = (leftFt: number, nearFt: number, rightFt: number, farFt: number): Piece["at"] => ({
  xFt: leftFt,
  yFt: nearFt,
  widthFt: toGrid(rightFt - leftFt),
  lengthFt: toGrid(farFt - nearFt),
});
