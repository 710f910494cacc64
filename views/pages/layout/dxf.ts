import Drawing from "dxf-writer";
import { cornerOf, edgeTapes, endsOf, OUTWARD, stakeLines } from "../../../machines/tent/tape.ts";
import { CORNERS, type Piece, type Point, type TentPlan } from "../../../machines/tent/types.ts";
import { clothToSite } from "../../drawing/frame.ts";
import { northDeg } from "../../drawing/surroundings.tsx";
import type { Units } from "../../drawing/units.ts";
import type { Words } from "../../text/words.ts";
import { writeGround } from "./dxf-ground.ts";
import type { LayoutState } from "./state.ts";

/** Sizes of letters and symbols on the ground, in feet: only to be seen by, nothing is measured off them. */
const LETTER_FT = 0.8;
const SYMBOL_FT = 0.3;
const CLEAR_FT = 2;
const STREET_FT = 12;
const NORTH_FT = 10;

type Layer = keyof Words["layout"]["layers"];

/**
 * The layout as a drawing for other programs (DXF), full size, in feet or millimeters: A at the origin but for a shift, the
 * baseline A–B up. Each kind of mark has its layer, named in plain words; each mark is a point in its exact place.
 */
export function layoutDxf(
  { plan, site, around }: Pick<LayoutState, "plan" | "site"> & Partial<Pick<LayoutState, "around">>,
  units: Units,
  words: Words,
): string {
  const { drawing, layout, layoutDrawing, tapeText } = words;
  const one = units === "mm" ? 304.8 : 1;
  const file = new Drawing();
  file.setUnits(units === "mm" ? "Millimeters" : "Feet");
  for (const name of Object.values(layout.layers)) file.addLayer(name, Drawing.ACI.WHITE, "CONTINUOUS");
  const on = (layer: Layer) => file.setActiveLayer(layout.layers[layer]);
  const spot = (p: Point): [number, number] => [tidy(p.xFt * one), tidy(p.yFt * one)];
  const line = (a: Point, b: Point) => file.drawLine(...spot(a), ...spot(b));
  const outline = (points: readonly Point[]) => file.drawPolyline(points.map(spot), true);
  const mark = (p: Point) => file.drawPoint(...spot(p)).drawCircle(...spot(p), SYMBOL_FT * one);
  const write = (p: Point, text: string, turnDeg = 0, side: "left" | "center" | "right" = "left") =>
    file.drawText(...spot(p), LETTER_FT * one, turnDeg, plain(text), side, "middle");

  if (around) writeGround({ file, spot, write, one }, around, words);
  const corners = CORNERS.map((c) => cornerOf(plan, c));
  on("footprint");
  outline(corners);
  on("baseline");
  line(corners[0]!, corners[1]!);
  on("diagonals");
  line(corners[0]!, corners[2]!);
  line(corners[1]!, corners[3]!);
  on("stakeLine");
  outline(stakeLines(plan).map((l) => l.start));
  on("pieces");
  for (const piece of plan.pieces) {
    const around = outlineOf(plan, piece);
    outline(around);
    write(middle(around), `${piece.order} ${drawing.piece(piece.id)}`, 0, "center");
  }
  for (const kind of ["corner", "seamEnd", "side"] as const) {
    on(kind);
    for (const s of plan.stations.filter((x) => x.kind === kind)) mark(s);
  }
  on("plates");
  for (const plate of plan.plates) mark(plate);
  on("straps");
  for (const plate of plan.plates) line(plan.stations.find((s) => s.id === plate.station)!, plate);
  for (const kind of ["center", "quarter"] as const) {
    on(kind);
    for (const pole of plan.poles.filter((p) => p.kind === kind)) {
      mark(pole);
      write({ xFt: pole.xFt + SYMBOL_FT * 2, yFt: pole.yFt + LETTER_FT }, pole.id);
    }
  }
  on("readings");
  for (const { edge, marks } of edgeTapes(plan)) {
    const out = OUTWARD[edge];
    const upright = out.xFt !== 0;
    for (const { station, readingFt } of marks) {
      const s = plan.stations.find((x) => x.id === station)!;
      const far = plan.spec.setbackFt + CLEAR_FT;
      const at = { xFt: s.xFt + out.xFt * far, yFt: s.yFt + out.yFt * far };
      write(at, `${station} ${tapeText(readingFt, units)}`, upright ? 0 : 90, out.xFt + out.yFt < 0 ? "right" : "left");
    }
  }
  on("surroundings");
  if (site.street) {
    const out = OUTWARD[site.street.edge];
    const from = middle(endsOf(site.street.edge).map((c) => cornerOf(plan, c)));
    const far = plan.spec.setbackFt + CLEAR_FT + STREET_FT;
    const at = { xFt: from.xFt + out.xFt * far, yFt: from.yFt + out.yFt * far };
    write(at, layoutDrawing.street(site.street.name), out.xFt === 0 ? 0 : 90, "center");
  }
  if (site.baselineBearingDeg !== undefined) {
    const turn = (northDeg(plan, site.baselineBearingDeg) * Math.PI) / 180;
    const asideFt = plan.spec.setbackFt + 2 * NORTH_FT;
    const foot = { xFt: corners[0]!.xFt - asideFt, yFt: corners[0]!.yFt - asideFt };
    const tip = { xFt: foot.xFt + NORTH_FT * Math.sin(turn), yFt: foot.yFt + NORTH_FT * Math.cos(turn) };
    line(foot, tip);
    write(tip, layoutDrawing.north, 0, "center");
  }
  return `${file.toDxfString()}\n`;
}

/** A millionth of a unit is finer than anything on a site. */
const tidy = (n: number): number => Math.round(n * 1e6) / 1e6 + 0;

/** On one line, and with no sign that a drawing program takes for a code of its own. */
const plain = (text: string): string =>
  text
    .replace(/\p{Cc}/gu, " ")
    .replaceAll("%%", "% %")
    .replaceAll("\\", "/")
    .replace(/[{}^]/g, " ");

function outlineOf(plan: TentPlan, { at }: Piece): Point[] {
  const [right, far] = [at.xFt + at.widthFt, at.yFt + at.lengthFt];
  const corners = [at, { xFt: at.xFt, yFt: far }, { xFt: right, yFt: far }, { xFt: right, yFt: at.yFt }];
  return corners.map(clothToSite(plan));
}

const middle = (points: readonly Point[]): Point => ({
  xFt: points.reduce((sum, p) => sum + p.xFt, 0) / points.length,
  yFt: points.reduce((sum, p) => sum + p.yFt, 0) / points.length,
});
