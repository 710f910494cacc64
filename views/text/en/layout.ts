import type { Corner, EdgeName, Side, StationKind } from "../../../machines/tent/types.ts";
import type { Units } from "../../drawing/units.ts";
import type { Paper } from "../../pages/layout/state.ts";

const KIND: Readonly<Record<StationKind, string>> = { corner: "corner", seamEnd: "seam end", side: "side" };
export const stationKind = (kind: StationKind): string => KIND[kind];
export const edgeName = (edge: EdgeName): string => `${edge[0]}–${edge[1]}`;

const POLE = { center: "center", quarter: "quarter" } as const;
export const poleKind = (kind: keyof typeof POLE): string => POLE[kind];

const SIDE: Readonly<Record<Side, string>> = { near: "near", far: "far", left: "left", right: "right" };
export const sideName = (side: Side): string => SIDE[side];

/** Words of the layout sheet: the page, its tables, what is refused. */
export const layout = {
  title: "The layout",
  link: "The layout sheet, with every reading",
  drawing: "The layout, drawn to scale. Scroll it both ways.",
  sheetOf: (size: string) => `Layout sheet, ${size}`,
  readingsOf: (title: string, size: string) => `${title}: readings, ${size}`,
  howTo: [
    "Pull one tape along the whole edge. Leave it there, and set every mark off its reading.",
    "Never measure from the last mark to the next: small errors add up.",
    "Check from the far corner with the back reading.",
  ],
  from: { corner: (c: Corner) => `from ${c}`, start: "from start" },
  back: (c: Corner) => `back from ${c}`,
  backEnd: "back from end",
  choose: "Units and paper",
  units: { ft: "Feet and inches", mm: "Millimeters" } satisfies Record<Units, string>,
  papers: { a4: "A4", letter: "Letter" } satisfies Record<Paper, string>,
  print: "Print this page: the drawing comes on one sheet, the readings on the next.",
  edges: "Go to one edge",
  files: "Downloads",
  svg: "Drawing (SVG)",
  csv: "All marks (CSV)",
  json: "As data (JSON)",
  inMm: "Lengths in millimeters.",
  inFt: "Lengths in feet and inches, to 1/8 in.",
  bearings:
    "Bearings: square out is straight away from the edge, corner diagonal halfway between both edges; any other in degrees clockwise from the way A to B.",
  compass: (deg: number) => `A to B bears ${Math.round(deg * 10) / 10}° by compass, as taken on the site.`,
  noCompass: "Nobody has taken the compass bearing of A to B, so no north is drawn.",
  streetAt: (name: string, edge: EdgeName) => `Street along ${edgeName(edge)}: ${name}.`,
  stakeCorners: (setback: string) =>
    `A stake-line corner lies ${setback} out from the tent's corner, square to both edges. The stake tape runs from one to the next.`,
  plates: "Where a station has more than one plate, .1 is the first of them clockwise.",
  corners: "Corners",
  between: "Between",
  length: "Length",
  diagonal: (name: string) => `${name}, diagonal`,
  setback: "Setback of the stake line",
  edge: (edge: EdgeName) => `Edge ${edgeName(edge)}`,
  tapeFrom: (from: Corner, to: Corner) => `one tape from ${from} to ${to}`,
  stakeLine: (edge: EdgeName) => `Stake line ${edgeName(edge)}`,
  stakeTapeFrom: (from: Corner, setback: string) => `${setback} out, tape from its corner at ${from}`,
  mark: "Mark",
  kind: "Kind",
  plate: "Plate",
  plateOf: (station: string, plate: number, of: number) => (of > 1 ? `${station}.${plate}` : station),
  start: (c: Corner) => `start ${c}`,
  end: (c: Corner) => `end ${c}`,
  stakes: "Stakes",
  anchored: "none: an engineer's anchor",
  bearing: "Bearing",
  /** Which way a strap pulls from its station, as a crew lays it out. */
  bearingOf: (deg: number) => {
    const off = Math.round((deg % 90) * 10) / 10;
    return off === 0 ? "square out" : off === 45 ? "corner diagonal" : `${Math.round(deg * 10) / 10}°`;
  },
  aside: "Outside the tape",
  poles: "Poles inside",
  pole: "Pole",
  across: "Across from A–B",
  along: "Up from D–A",
  pieces: "Pieces, in laying order",
  order: "No.",
  piece: "Piece",
  size: "Across × along",
  lace: "Lace edge",
  eyelet: "Eyelet edge",
  none: "none",
  seams: "Seams, as laced from the center out",
  seam: "Seam",
  toward: "Out to",
  dxf: "For CAD (DXF)",
  /** Layers of the DXF. */
  layers: {
    footprint: "footprint",
    baseline: "baseline A-B",
    diagonals: "diagonals",
    stakeLine: "stake line",
    pieces: "pieces",
    corner: "corners",
    seamEnd: "seam ends",
    side: "side poles",
    plates: "stake plates",
    straps: "straps",
    center: "center poles",
    quarter: "quarter poles",
    readings: "readings",
    surroundings: "street and north",
  },
  /** Layers of what lies around the tent. A layer's name has no comma. */
  groundLayers: {
    buried: {
      electric: "buried electric",
      gas: "buried gas",
      communication: "buried communication",
      water: "buried water",
      sewer: "buried sewer",
      reclaimedWater: "buried reclaimed water",
      survey: "survey marks",
      excavation: "other digging",
    },
    zones: "tolerance zones",
    overhead: "overhead lines",
    things: "what stands there",
    areas: "ground and ticket",
  },
  version: (entry: number) => `This is the plan of entry ${entry} of the record. It is not the plan in force.`,
  noVersion: (entry: string) =>
    `Entry "${entry.slice(0, 20)}" of this job has no plan in it. The opening does, and so does every change put forward.`,
  badUnits: (given: string) => `"${given.slice(0, 20)}" is not a unit of this sheet. Use ft or mm.`,
  badPaper: (given: string) => `"${given.slice(0, 20)}" is not a paper of this sheet. Use a4 or letter.`,
  badLook: "The layout can't be shown that way. Fix this in the address:",
  columns: [
    "mark",
    "what",
    "kind",
    "edge",
    "x ft",
    "y ft",
    "x mm",
    "y mm",
    "reading",
    "reading mm",
    "back reading",
    "back reading mm",
    "bearing",
    "plates",
    "stakes",
  ],
  what: { station: "station", plate: "plate", pole: "pole" },
} as const;
