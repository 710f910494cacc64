import type Drawing from "dxf-writer";
import type { BuriedKind } from "../../../machines/site/model.ts";
import { segmentsOf } from "../../../machines/site/plane.ts";
import { knownFt, zoneTerms } from "../../../machines/site/rules.ts";
import type { Point } from "../../../machines/tent/types.ts";
import type { GroundAround } from "../../drawing/site/ground-around.ts";
import type { Words } from "../../text/words.ts";

/** Numbers of the AutoCAD color index that are nearest to the published colors; 7 is white on black and black on white. */
const COLOR: Readonly<Record<BuriedKind, number>> = { electric: 1, gas: 2, communication: 30, water: 5, sewer: 3, reclaimedWater: 200, survey: 221, excavation: 7 }; // biome-ignore format: one line reads best
const INK = 7;

type Pen = {
  readonly file: Drawing;
  readonly spot: (p: Point) => [number, number];
  readonly write: (p: Point, text: string) => void;
  /** Units of the drawing in a foot. */
  readonly one: number;
};

/** Lines, their zones, wires and things, each kind on a layer of its own, buried lines in the index color nearest to the published one. */
export function writeGround(
  { file, spot, write, one }: Pen,
  { site, rules }: GroundAround,
  { layout: { groundLayers: names } }: Words,
): void {
  const on = (name: string, color: number) => {
    file.addLayer(name, color, "CONTINUOUS");
    file.setActiveLayer(name);
  };
  const path = (points: readonly Point[], closed = false) => file.drawPolyline(points.map(spot), closed);
  for (const line of site.buried) {
    on(names.buried[line.kind], COLOR[line.kind]);
    path(line.points);
    write(line.points[0]!, line.id);
    on(names.zones, INK);
    const radiusFt = knownFt(zoneTerms(line, rules));
    for (const p of line.points) file.drawCircle(...spot(p), radiusFt * one);
    for (const { from, to, dxFt, dyFt, lengthSq } of segmentsOf(line.points)) {
      const part = lengthSq === 0 ? 0 : radiusFt / Math.sqrt(lengthSq);
      for (const n of [part, -part]) {
        const beside = (p: Point): Point => ({ xFt: p.xFt - dyFt * n, yFt: p.yFt + dxFt * n });
        file.drawLine(...spot(beside(from)), ...spot(beside(to)));
      }
    }
  }
  for (const line of site.overhead) {
    on(names.overhead, INK);
    path(line.points);
    write(line.points[0]!, line.id);
  }
  for (const { id, shape } of site.things) {
    on(names.things, INK);
    if (shape.is === "circle") file.drawCircle(...spot(shape.middle), shape.radiusFt * one);
    else path(shape.is === "path" ? shape.points : shape.corners, shape.is === "polygon");
    write(shape.is === "circle" ? shape.middle : (shape.is === "path" ? shape.points : shape.corners)[0]!, id);
  }
  for (const area of [site.ground, site.ticketArea]) {
    if (!area) continue;
    on(names.areas, INK);
    path(area.corners, true);
  }
}
