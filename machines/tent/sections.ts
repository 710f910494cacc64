import { toGrid } from "./grid.ts";
import type { JoinEdge, Piece, Side, TentSpec } from "./types.ts";

/**
 * The kind of edge that this kind is laced to.
 *
 * @example matingEdge("lace") // "eyelet"
 */
export const matingEdge = (edge: JoinEdge): JoinEdge => (edge === "lace" ? "eyelet" : "lace");

/**
 * The pieces of the top in laying order: from the near end (DA) to the far end, left to right. Ends are half the tent's
 * width deep, with the mids between them. The two pieces of a split end are named after their corners so that nobody swaps
 * them: end-A, end-D, mid-1 …, end-B, end-C. Common practice, no source.
 *
 * @example piecesOf(spec).map((piece) => piece.id) // ["end-A", "end-D", "mid-1", "end-B", "end-C"]
 */
export function piecesOf(spec: TentSpec): Piece[] {
  if (spec.onePiece) {
    return [{ id: "top", kind: "whole", order: 1, at: box(0, 0, spec.widthFt, spec.lengthFt), edges: {} }];
  }
  const bands = bandsOf(spec);
  const lengthwise = assignJoinEdges(bands.length);
  return bands
    .flatMap((band, i) => {
      const across = assignJoinEdges(band.ids.length);
      const cuts = [0, ...(band.ids.length === 2 ? [toGrid(spec.widthFt / 2)] : []), spec.widthFt];
      return band.ids.map((id, j) => ({
        id,
        kind: band.kind,
        at: box(cuts[j]!, band.nearFt, cuts[j + 1]!, band.farFt),
        edges: withoutFreeEdges({
          near: lengthwise[i]!.meets,
          far: lengthwise[i]!.leaves,
          left: across[j]!.meets,
          right: across[j]!.leaves,
        }),
      }));
    })
    .map((piece, i) => ({ ...piece, order: i + 1 }));
}

/**
 * Distances from the near end to each cross seam, in feet and in order. A one-piece top has none.
 *
 * @example crossSeamsFt({ widthFt: 80, midsFt: [20], onePiece: false }) // [40, 60]
 */
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
 * Alternates lace and eyelet edges along a line of pieces, so that each seam joins one of each and every mid has one of
 * each. All mids are therefore alike, and none can be laid backward.
 */
function assignJoinEdges(count: number): { meets?: JoinEdge; leaves?: JoinEdge }[] {
  const steps: { meets?: JoinEdge; leaves?: JoinEdge }[] = [];
  for (let i = 0; i < count; i++) {
    const left = steps.at(-1)?.leaves;
    const meets = left && matingEdge(left);
    steps.push({ meets, leaves: i === count - 1 ? undefined : meets ? matingEdge(meets) : "lace" });
  }
  return steps;
}

const withoutFreeEdges = (edges: Partial<Record<Side, JoinEdge | undefined>>): Piece["edges"] =>
  Object.fromEntries(Object.entries(edges).filter(([, kind]) => kind !== undefined));

const box = (leftFt: number, nearFt: number, rightFt: number, farFt: number): Piece["at"] => ({
  xFt: leftFt,
  yFt: nearFt,
  widthFt: toGrid(rightFt - leftFt),
  lengthFt: toGrid(farFt - nearFt),
});
