import { nearlyEqual, toGrid } from "./grid.ts";
import { crossSeamsFt } from "./sections.ts";
import type { EdgeName, InteriorPole, Piece, Point, Seam, SeamHalf, Side, TentSpec } from "./types.ts";

/**
 * The seams in lacing order, from the near end: the ridge seam of a split near end (R-DA), the cross seams S1, S2 …, the
 * ridge seam of a split far end (R-BC). A cross seam has two halves, each laced from the center ring out to its edge (S1.AB,
 * S1.CD); a ridge seam is one run from the hip point out to the end (R-DA.DA). Common practice, no source.
 *
 * @example seamsOf(spec, plan.pieces, plan.poles).map((seam) => seam.id) // ["R-DA", "S1", "S2", "R-BC"]
 */
export function seamsOf(spec: TentSpec, pieces: readonly Piece[], poles: readonly InteriorPole[]): Seam[] {
  if (spec.onePiece) return [];
  const middleFt = toGrid(spec.widthFt / 2);
  const cross = crossSeamsFt(spec).map((yFt, i): Seam => {
    const from = { xFt: 0, yFt };
    const to = { xFt: spec.widthFt, yFt };
    const ring = { xFt: middleFt, yFt };
    const id = `S${i + 1}`;
    const halves = [half(id, "AB", ring, from), half(id, "CD", ring, to)];
    return { id, kind: "cross", from, to, halves, ...seamPieces(halves) };
  });
  if (!spec.splitEnds) return cross;
  return [ridge("DA", cross[0]!.from.yFt, 0), ...cross, ridge("BC", cross.at(-1)!.from.yFt, spec.lengthFt)];

  function ridge(end: "DA" | "BC", hipFt: number, edgeFt: number): Seam {
    const from = { xFt: middleFt, yFt: hipFt };
    const to = { xFt: middleFt, yFt: edgeFt };
    const halves = [half(`R-${end}`, end, from, to)];
    return { id: `R-${end}`, kind: "ridge", from, to, halves, ...seamPieces(halves) };
  }

  function half(seam: string, toward: EdgeName, ring: Point, end: Point): SeamHalf {
    const [lacePiece, eyeletPiece] = piecesAt({ xFt: (ring.xFt + end.xFt) / 2, yFt: (ring.yFt + end.yFt) / 2 }, pieces);
    return {
      id: `${seam}.${toward}`,
      toward,
      lengthFt: lengthFt(ring, end),
      lacePiece,
      eyeletPiece,
      ringsAtFt: quarterRingsAlong(ring, end, poles),
    };
  }
}

/** The two pieces that meet at a point on a seam: the one with the lace edge, then the one with the eyelet edge. */
function piecesAt(place: Point, pieces: readonly Piece[]): [lace: string, eyelet: string] {
  const touching = pieces.flatMap((piece) => {
    const side = sideAt(place, piece);
    return side === null ? [] : [{ id: piece.id, edge: piece.edges[side] }];
  });
  const find = (edge: "lace" | "eyelet") => {
    const found = touching.find((t) => t.edge === edge);
    if (!found) throw new Error(`no ${edge} edge at ${place.xFt}, ${place.yFt} ft`);
    return found.id;
  };
  return [find("lace"), find("eyelet")];
}

function sideAt({ xFt, yFt }: Point, { at }: Piece): Side | null {
  const rightFt = at.xFt + at.widthFt;
  const farFt = at.yFt + at.lengthFt;
  if (xFt > at.xFt && xFt < rightFt) return nearlyEqual(yFt, at.yFt) ? "near" : nearlyEqual(yFt, farFt) ? "far" : null;
  if (yFt > at.yFt && yFt < farFt) return nearlyEqual(xFt, at.xFt) ? "left" : nearlyEqual(xFt, rightFt) ? "right" : null;
  return null;
}

/** Quarter-pole rings along a half of a seam, in feet from the center ring outward. */
function quarterRingsAlong(ring: Point, end: Point, poles: readonly InteriorPole[]): number[] {
  const wholeFt = lengthFt(ring, end);
  return poles
    .filter((p) => p.kind === "quarter" && nearlyEqual(lengthFt(ring, p) + lengthFt(p, end), wholeFt))
    .map((p) => lengthFt(ring, p))
    .filter((ft) => ft > 0)
    .sort((a, b) => a - b);
}

/** Uses the name of the whole split end when both of its pieces lie along the seam. */
function seamPieces(halves: readonly SeamHalf[]): { lacePiece: string; eyeletPiece: string } {
  const name = (ids: string[]) => {
    const unique = [...new Set(ids)];
    if (unique.length === 1) return unique[0]!;
    return unique.includes("end-A") ? "end-DA" : "end-BC";
  };
  return { lacePiece: name(halves.map((h) => h.lacePiece)), eyeletPiece: name(halves.map((h) => h.eyeletPiece)) };
}

const lengthFt = (a: Point, b: Point): number => toGrid(Math.sqrt((a.xFt - b.xFt) ** 2 + (a.yFt - b.yFt) ** 2));
