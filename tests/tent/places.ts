import type { JoinEdge, Piece } from "../../machines/tent/types.ts";

export type Turn = 0 | 180;

const AROUND = ["left", "far", "right", "near"] as const;

/** The four edges clockwise from the left, for a piece laid as planned or turned by 180°. A free edge is null. */
export function edgesAround(piece: Piece, turn: Turn = 0): (JoinEdge | null)[] {
  const edges = AROUND.map((side) => piece.edges[side] ?? null);
  return turn === 0 ? edges : [...edges.slice(2), ...edges.slice(0, 2)];
}

/** Whether a piece, turned or not, fits another's place and could be laced there. */
export function fits(piece: Piece, place: Piece, turn: Turn): boolean {
  const sameSize = piece.at.widthFt === place.at.widthFt && piece.at.lengthFt === place.at.lengthFt;
  return sameSize && edgesAround(piece, turn).join() === edgesAround(place).join();
}

/** A description of a piece's size and edges that is the same in every orientation, quarter turns included. */
export function looks(piece: Piece): string {
  const turns = AROUND.map((_, n) => {
    const edges = edgesAround(piece);
    const [width, length] = n % 2 === 0 ? [piece.at.widthFt, piece.at.lengthFt] : [piece.at.lengthFt, piece.at.widthFt];
    return `${width}x${length}:${[...edges.slice(n), ...edges.slice(0, n)].map(String).join(",")}`;
  });
  return turns.sort()[0]!;
}
