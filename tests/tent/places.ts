import type { JoinEdge, Piece } from "../../machines/tent/types.ts";

export type Turn = 0 | 180;

const AROUND = ["left", "far", "right", "near"] as const;

/** The four edges clockwise from the left, as they lie when the piece is laid so or turned by half. A free edge is null. */
export function edgesAround(piece: Piece, turn: Turn = 0): (JoinEdge | null)[] {
  const edges = AROUND.map((side) => piece.edges[side] ?? null);
  return turn === 0 ? edges : [...edges.slice(2), ...edges.slice(0, 2)];
}

/** Whether a piece could be laid in the place of another, turned or not, and be laced there. */
export function fits(piece: Piece, place: Piece, turn: Turn): boolean {
  const sameSize = piece.at.widthFt === place.at.widthFt && piece.at.lengthFt === place.at.lengthFt;
  return sameSize && edgesAround(piece, turn).join() === edgesAround(place).join();
}

/** Looks the same from every side: its size and edges whichever way it lies, quarter turns included. */
export function looks(piece: Piece): string {
  const turns = AROUND.map((_, n) => {
    const edges = edgesAround(piece);
    const [wide, long] = n % 2 === 0 ? [piece.at.widthFt, piece.at.lengthFt] : [piece.at.lengthFt, piece.at.widthFt];
    return `${wide}x${long}:${[...edges.slice(n), ...edges.slice(0, n)].map(String).join(",")}`;
  });
  return turns.sort()[0]!;
}
