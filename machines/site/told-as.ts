import type { Point } from "../tent/types.ts";
import { type Area, type Offset, offsetOf, type SiteModel } from "./model.ts";
import type { Shape } from "./shape.ts";

/** A point as it was told, everywhere in a value. */
type Told<T> = T extends Point ? Offset : T extends readonly (infer U)[] ? readonly Told<U>[] : T extends object ? { readonly [K in keyof T]: Told<T[K]> } : T; // biome-ignore format: one line reads best

/** A site as `readSite` takes it: every point as an offset from the baseline. */
export type ToldSite = Told<SiteModel>;

/** A site as it can be told again: `readSite` of it gives the same site. */
export const toldAs = ({ buried, overhead, things, ground, ticketArea, slope, wanted, fixes }: SiteModel): ToldSite => ({
  buried: buried.map((line) => ({ ...line, points: line.points.map(offsetOf) })),
  overhead: overhead.map((line) => ({ ...line, points: line.points.map(offsetOf) })),
  things: things.map((thing) => ({ ...thing, shape: shapeAs(thing.shape) })),
  ground: areaAs(ground),
  ticketArea: areaAs(ticketArea),
  slope,
  wanted: wanted && { ...wanted, cornerA: offsetOf(wanted.cornerA) },
  ...(fixes === undefined ? {} : { fixes }),
});

const areaAs = (area: Area | null): Told<Area> | null => area && { ...area, corners: area.corners.map(offsetOf) };

function shapeAs(shape: Shape): Told<Shape> {
  switch (shape.is) {
    case "circle":
      return { ...shape, middle: offsetOf(shape.middle) };
    case "path":
      return { ...shape, points: shape.points.map(offsetOf) };
    case "polygon":
      return { ...shape, corners: shape.corners.map(offsetOf) };
  }
}
