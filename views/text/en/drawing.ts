/** Words of the tent drawing. Piece ids are said without their dash. */
export const drawing = {
  title: (widthFt: number, lengthFt: number) => `Tent of ${widthFt} by ${lengthFt} ft, seen from above`,
  desc: (n: { pieces: number; seams: number; centres: number; quarters: number; stations: number }) =>
    [
      "Near end D to A at the bottom, corner A bottom left, corners clockwise.",
      `Pieces: ${n.pieces}. Seams: ${n.seams}. Centre poles: ${n.centres}. Quarter poles: ${n.quarters}. Stations: ${n.stations}.`,
      "Stations between two corners are numbered clockwise.",
    ].join(" "),
  nearEnd: "near end",
  size: (widthFt: number, lengthFt: number) => `${widthFt} × ${lengthFt} ft`,
  piece: (id: string) => id.replace("-", " "),
  key: {
    order: "laying order",
    lace: "lace edge",
    eyelet: "eyelet edge",
    centre: "centre pole",
    quarter: "quarter pole",
    corner: "corner",
    seamEnd: "seam end",
    side: "side pole",
    plate: "stake plate",
  },
};

export type DrawingText = typeof drawing;
