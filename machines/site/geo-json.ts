import { own } from "../lookup/own.ts";
import { hasTooMany, keptProblem, tooManyOf, tooMuchInText } from "./geo-count.ts";
import { type GeoFrame, PROJECTION_ERROR_FT, roundingErrorFt, toOffset } from "./geo-frame.ts";
import { fieldsIn, type GeoShape, type Position, type Refuse, shapesIn, shownText, shownValue } from "./geo-shapes.ts";
import { type BURIED_KINDS, type Offset, type SiteModel, THING_KINDS } from "./model.ts";
import { partNames } from "./names.ts";
import { readSite } from "./read-site.ts";
import { SITE_LIMITS, type SiteProblem } from "./site-limits.ts";

/** What a feature is: in its properties, under these names and no others, or said for the whole file. */
export type GeoMeaning = {
  readonly what: "buried" | "overhead" | "ground" | "ticketArea" | (typeof THING_KINDS)[number];
  readonly kind?: (typeof BURIED_KINDS)[number];
  readonly [more: string]: unknown;
};

export type ReadGeoJson =
  | {
      readonly site: SiteModel;
      /** Most that anything is off: laid flat, and by how many decimals its degrees have. It stands in each part's `errorFt`, too. */
      readonly projectionErrorFt: number;
      readonly roundingErrorFt: number;
    }
  | { readonly problems: readonly SiteProblem[] };

/** How a file is read: where the baseline lies, and the narrowest zone, in. `as`: what all of it is; its properties are not read then. */
export type GeoReading = { readonly frame: GeoFrame; readonly minToleranceIn: number; readonly as?: GeoMeaning };

/**
 * Reads GeoJSON (RFC 7946, on WGS 84) into feet of the baseline: all of it, or nothing and what is wrong. What the file's own
 * survey is off, or how another datum lies to WGS 84 (some feet), cannot be seen in it and is not in the error.
 *
 * @example readGeoJson("gas", { frame: { lonDeg: 0, latDeg: 0, baselineBearingDeg: 0 }, minToleranceIn: 18 }) // { problems: [{ path: "", code: "notJson", value: "", limit: null }] }
 */
export function readGeoJson(text: string, { frame, minToleranceIn, as }: GeoReading): ReadGeoJson {
  const problems: SiteProblem[] = [];
  const refuse: Refuse = (path, code, about = {}) => keptProblem(problems, { path, code, value: "", limit: null, ...about });

  const tooMuch = tooMuchInText(text);
  if (tooMuch) return { problems: [tooMuch] };
  const parts = partsIn(parsed(text, refuse), as, refuse);
  const positions = parts.flatMap(({ shape }) => (shape.is === "point" ? [shape.position] : shape.positions));
  if (positions.length > SITE_LIMITS.maxSegments * 2)
    return { problems: [{ path: "", code: "tooManySegments", value: positions.length, limit: SITE_LIMITS.maxSegments }] };
  if (problems.length > 0) return { problems };

  const rounding = roundingErrorFt(mostDecimals(positions));
  if (rounding > SITE_LIMITS.maxErrorFt)
    return { problems: [{ path: "", code: "tooCoarse", value: Math.round(rounding), limit: SITE_LIMITS.maxErrorFt }] };
  const told = siteOf(parts, { toOffset: (position) => toOffset(frame, position), errorFt: PROJECTION_ERROR_FT + rounding }, refuse);
  if (problems.length > 0) return { problems };
  const read = readSite(told.input, minToleranceIn);
  if ("problems" in read) return { problems: read.problems.map((problem) => ({ ...problem, path: told.cameFrom(problem.path) })) };
  return { site: read.site, projectionErrorFt: PROJECTION_ERROR_FT, roundingErrorFt: rounding };
}

/** A shape with what it is, where in the file it stands, and which of its feature's it is, from 1. */
type Part = {
  readonly path: string;
  readonly meaning: Readonly<Record<string, unknown>>;
  readonly shape: GeoShape;
  readonly part: number;
};

function parsed(text: string, refuse: Refuse): unknown {
  try {
    return JSON.parse(text);
  } catch {
    refuse("", "notJson");
    return undefined;
  }
}

function partsIn(file: unknown, as: GeoMeaning | undefined, refuse: Refuse): Part[] {
  if (file === undefined) return [];
  const { type, features, crs } = fieldsIn(file);
  // The older GeoJSON of 2008 could name another system. RFC 7946, 4: none but WGS 84.
  const { name: system, href } = fieldsIn(fieldsIn(crs).properties);
  if (crs !== undefined && !CRS84.some((name) => name === system)) refuse("crs", "otherSystem", shownValue(system ?? href));
  const ofFeature = (feature: unknown, path: string): Part[] => {
    const { type: kind, geometry, properties, id } = fieldsIn(feature);
    if (kind !== "Feature") refuse(`${path}type`, "notGeoJson", shownValue(kind));
    const meaning = as ?? fieldsIn(properties);
    const tooMany = hasTooMany(meaning);
    if (tooMany) {
      refuse(`${path}properties`, tooMany.code, { value: tooMany.value, limit: tooMany.limit });
      return [];
    }
    const name = id === undefined ? {} : { id: typeof id === "number" ? String(id) : id };
    return shapesIn(geometry, `${path}geometry`, refuse).map((shape, i) => ({
      path,
      meaning: { ...name, ...meaning },
      shape,
      part: i + 1,
    }));
  };
  if (type === "FeatureCollection") {
    if (!Array.isArray(features)) refuse("features", "notAList");
    else if (tooManyOf(features)) refuse("", "tooManyNeighbors", tooManyOf(features)!);
    else return features.flatMap((feature, i) => ofFeature(feature, `features.${i}.`));
  } else if (type === "Feature") return ofFeature(file, "");
  else if (as && typeof type === "string")
    return shapesIn(file, "geometry", refuse).map((shape, i) => ({ path: "", meaning: as, shape, part: i + 1 }));
  else refuse("type", "notGeoJson", shownValue(type));
  return [];
}
const CRS84 = ["urn:ogc:def:crs:OGC:1.3:CRS84", "urn:ogc:def:crs:OGC::CRS84"];

/** Which properties each may have; what it becomes is checked by `readSite`. */
const PROPERTIES: Readonly<Record<string, { readonly list: "buried" | "overhead"; readonly names: readonly string[] }>> = {
  buried: { list: "buried", names: ["kind", "told", "widthIn", "toleranceIn"] },
  overhead: { list: "overhead", names: ["kv", "lowestFt"] },
};

type Laid = { readonly toOffset: (position: Position) => Offset; readonly errorFt: number };

function siteOf(parts: readonly Part[], laid: Laid, refuse: Refuse) {
  const lists: Record<"buried" | "overhead" | "things", { path: string; told: unknown }[]> = { buried: [], overhead: [], things: [] };
  const areas: Record<string, unknown> = {};
  const nameOf = partNames(parts.map(({ meaning }) => ({ id: meaning.id })));
  for (const { path, meaning, shape, part } of parts) {
    const { what, id, errorFt = 0, ...more } = meaning;
    const no = lists.buried.length + lists.overhead.length + lists.things.length + 1;
    const common = { id: nameOf({ id, part }, shownText(what), no) };
    const error = { errorFt: typeof errorFt === "number" ? errorFt + laid.errorFt : errorFt };
    const line = typeof what === "string" ? own(PROPERTIES, what) : undefined;
    const known = line ? line.names : what === "tree" || what === "other" ? ["radiusFt"] : [];
    for (const name of Object.keys(more)) if (!known.includes(name)) refuse(`${path}properties.${name}`, "unknownField");
    const wrong = () => refuse(`${path}geometry.type`, "wrongGeometry", shownValue(shape.is));
    if (line) {
      if (shape.is !== "path") wrong();
      else lists[line.list].push({ path, told: { ...common, ...error, ...more, points: shape.positions.map(laid.toOffset) } });
    } else if (what === "ground" || what === "ticketArea") {
      if (shape.is !== "polygon") wrong();
      else if (areas[what]) refuse(`${path}properties.what`, "onlyOne", shownValue(what));
      else areas[what] = { ...error, corners: shape.positions.map(laid.toOffset) };
    } else if (THING_KINDS.some((kind) => kind === what)) {
      if (shape.is === "point" && !("radiusFt" in more)) wrong();
      else lists.things.push({ path, told: { ...common, ...error, kind: what, shape: shapeOf(shape, more.radiusFt, laid) } });
    } else refuse(`${path}properties.what`, "notKnown", shownValue(what));
  }
  const told = Object.fromEntries(Object.entries(lists).map(([list, all]) => [list, all.map((one) => one.told)]));
  return { input: { ...told, ...areas }, cameFrom };

  /** Where in the file that stands which `readSite` found wrong. */
  function cameFrom(path: string): string {
    const [list, at, ...rest] = path.split(".");
    const from = list === "buried" || list === "overhead" || list === "things" ? lists[list][Number(at)] : undefined;
    return from ? `${from.path}${rest.join(".")}` : path;
  }
}

function shapeOf(shape: GeoShape, radiusFt: unknown, { toOffset: lay }: Laid): unknown {
  if (shape.is === "point") return { is: "circle", middle: lay(shape.position), radiusFt };
  const points = shape.positions.map(lay);
  return shape.is === "polygon" ? { is: "polygon", corners: points } : { is: "path", points };
}

/** Decimals of the degrees as they were written. Zeros at the end cannot be seen, so it is the most of the whole file. */
const mostDecimals = (positions: readonly Position[]): number =>
  positions.reduce((most, [lon, lat]) => Math.max(most, decimalsOf(lon), decimalsOf(lat)), 0);
const MAX_DECIMALS = 12;
function decimalsOf(degrees: number): number {
  const [digits, exponent = "0"] = String(degrees).split("e");
  return Math.min(MAX_DECIMALS, Math.max(0, (digits!.split(".")[1]?.length ?? 0) - Number(exponent)));
}
