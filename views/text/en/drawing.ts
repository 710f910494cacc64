/** Words of the tent drawing. Piece ids are said without their dash. */
export const drawing = {
  title: (widthFt: number, lengthFt: number) => `Tent of ${widthFt} by ${lengthFt} ft, seen from above`,
  desc: (n: { pieces: number; seams: number; centers: number; quarters: number; stations: number }) =>
    [
      "Near end D to A at the bottom, corner A bottom left, corners clockwise.",
      `Pieces: ${n.pieces}. Seams: ${n.seams}. Center poles: ${n.centers}. Quarter poles: ${n.quarters}. Stations: ${n.stations}.`,
      "Stations between two corners are numbered clockwise.",
    ].join(" "),
  nearEnd: "near end",
  size: (widthFt: number, lengthFt: number) => `${widthFt} × ${lengthFt} ft`,
  piece: (id: string) => id.replace("-", " "),
  key: {
    order: "laying order",
    lace: "lace edge",
    eyelet: "eyelet edge",
    center: "center pole",
    quarter: "quarter pole",
    corner: "corner",
    seamEnd: "seam end",
    side: "side pole",
    plate: "stake plate",
  },
};

/** Words of the layout drawing. Lengths come in already written. */
export const layoutDrawing = {
  title: (wide: string, long: string) => `Layout of a tent of ${wide} by ${long}, to scale, seen from above`,
  heading: (wide: string, long: string) => `${wide} × ${long}, near end D–A below`,
  setback: (length: string) => `setback ${length}`,
  diagonal: (name: string, length: string) => `${name} ${length}`,
  baseline: "baseline",
  street: (name: string) => `Street: ${name}`,
  north: "N",
  bearing: (deg: number) => `A to B bears ${Math.round(deg * 10) / 10}°`,
  scale: { ft: (n: number) => `${n} ft`, mm: (n: number) => `${n} m` },
  key: {
    plate: "plate with its stakes",
    anchor: "engineer's anchor: drive nothing",
    strap: "strap",
    stakeLine: "stake line",
    diagonal: "diagonal",
  },
  note: {
    ft: "At each mark: its name, and its reading off one tape from the edge's first corner, clockwise. Feet and inches.",
    mm: "At each mark: its name, and its reading off one tape from the edge's first corner, clockwise. Millimeters.",
  },
  ratio: {
    is: 'In the boxes: load over what a stake may be counted for. Over 1 is short. "or more" and "?" are not known.',
    short: "short",
    notKnown: "not known",
    notShort: "not short",
    caution: "A screening. It passes no anchor: the sheet in its soil does, or pulls.",
  },
};
