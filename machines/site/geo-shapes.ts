import { tooManyOf } from "./geo-count.ts";
import { SITE_LIMITS, type SiteProblem, type SiteProblemCode } from "./site-limits.ts";

/** Longitude and latitude in degrees on WGS 84. */
export type Position = readonly [lonDeg: number, latDeg: number];
/** A geometry as it is needed here: each part of a multiple one by itself. */
export type GeoShape =
  | { readonly is: "point"; readonly position: Position }
  | { readonly is: "path"; readonly positions: readonly Position[] }
  | { readonly is: "polygon"; readonly positions: readonly Position[] };

export type Refuse = (path: string, code: SiteProblemCode, about?: Partial<SiteProblem>) => void;

/** The fields of an object; none where it is no object. */
export const fieldsIn = (value: unknown): Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value) ? (value as Record<string, unknown>) : {};

/** The parts of a geometry (RFC 7946, 3.1). What is wrong is refused by its path, and left out. */
export function shapesIn(geometry: unknown, path: string, refuse: Refuse): GeoShape[] {
  const { type, coordinates } = fieldsIn(geometry);
  const at = `${path}.coordinates`;
  const each = (of: (part: unknown, path: string) => GeoShape[]): GeoShape[] => {
    if (!Array.isArray(coordinates)) refuse(at, "notAList");
    else if (tooManyOf(coordinates)) refuse(at, "tooManyNeighbors", { ...tooManyOf(coordinates), path: at });
    else return coordinates.flatMap((part, i) => of(part, `${at}.${i}`));
    return [];
  };
  const point = (value: unknown, where: string): GeoShape[] => {
    const position = positionIn(value, where, refuse);
    return position ? [{ is: "point", position }] : [];
  };
  const line = (value: unknown, where: string): GeoShape[] => {
    const positions = positionsIn(value, where, refuse);
    return positions ? [{ is: "path", positions }] : [];
  };
  switch (type) {
    case "Point":
      return point(coordinates, at);
    case "MultiPoint":
      return each(point);
    case "LineString":
      return line(coordinates, at);
    case "MultiLineString":
      return each(line);
    case "Polygon":
      return ringIn(coordinates, at, refuse);
    case "MultiPolygon":
      return each((part, where) => ringIn(part, where, refuse));
    default:
      refuse(`${path}.type`, geometry === null || geometry === undefined ? "noGeometry" : "wrongGeometry", shownValue(type));
      return [];
  }
}

/** A polygon's outer ring, closed (3.1.6). One with holes is refused: half of it would be another thing. */
function ringIn(value: unknown, path: string, refuse: Refuse): GeoShape[] {
  if (!Array.isArray(value)) refuse(path, "notAList");
  else if (value.length !== 1) refuse(path, value.length === 0 ? "noGeometry" : "holes");
  else {
    const positions = positionsIn(value[0], `${path}.0`, refuse);
    if (!positions) return [];
    const [first, last] = [positions[0], positions.at(-1)];
    if (first && last && first[0] === last[0] && first[1] === last[1]) return [{ is: "polygon", positions: positions.slice(0, -1) }];
    refuse(`${path}.0`, "ringNotClosed");
  }
  return [];
}

function positionsIn(value: unknown, path: string, refuse: Refuse): Position[] | null {
  if (!Array.isArray(value)) {
    refuse(path, "notAList");
    return null;
  }
  // Before each of them is looked at; of many lines together the whole is counted.
  if (value.length > SITE_LIMITS.maxSegments + 1) {
    refuse(path, "tooManySegments", { value: value.length, limit: SITE_LIMITS.maxSegments });
    return null;
  }
  const read = value.map((position, i) => positionIn(position, `${path}.${i}`, refuse));
  return read.every((position) => position !== null) ? read : null;
}

/** Longitude, latitude, and perhaps a height, which is not read (3.1.1). */
function positionIn(value: unknown, path: string, refuse: Refuse): Position | null {
  if (Array.isArray(value) && (value.length === 2 || value.length === 3) && value.every(Number.isFinite)) {
    const [lon, lat] = value as [number, number];
    if (Math.abs(lon) <= 180 && Math.abs(lat) <= 90) return [lon, lat];
  }
  refuse(path, "notAPosition", shownValue(Array.isArray(value) ? value.slice(0, 4).map(shownText).join(" ") : value));
  return null;
}

/** A value as a problem shows it; of a list or an object only that it is one, however deep it goes. */
export const shownValue = (value: unknown): Partial<SiteProblem> =>
  typeof value === "number" && Number.isFinite(value) ? { value } : { value: value === undefined ? "" : shownText(value) };
export const shownText = (value: unknown): string => (typeof value === "object" && value !== null ? "object" : String(value).slice(0, 80));
