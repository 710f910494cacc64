import { polesOf } from "./poles.ts";
import { type FieldReader, fieldsOf } from "./reading.ts";
import { seamsOf } from "./seams.ts";
import { piecesOf } from "./sections.ts";
import type { SpecInput } from "./spec-input.ts";
import { stretchesBetweenFixed } from "./stations.ts";
import { CORNERS, type Corner, EDGES, type EdgeName, type Point, type TentSpec } from "./types.ts";

/** Bays that cloth is made with, in feet. Common practice, no source. */
const BAY = { leastFt: 1, mostFt: 20 } as const;
/** How far a corner mark may stand from its place, in feet: cloth gives little. Common practice, no source. */
export const MAX_SHIFT_FT = 2;

/** What the cloth or the site said otherwise than the plan: rings counted along an edge, a corner that stands elsewhere. */
export function readOnSite(input: SpecInput, spec: TentSpec, read: FieldReader): Pick<TentSpec, "rings" | "shifted"> {
  const rings = readRingCounts(input, spec, read);
  const shifted = readShifted(input, read);
  return { ...(rings ? { rings } : {}), ...(shifted ? { shifted } : {}) };
}

function readRingCounts(input: SpecInput, spec: TentSpec, read: FieldReader): TentSpec["rings"] {
  const given = fieldsOf(input.rings);
  const stretches = stretchesBetweenFixed(spec, seamsOf(spec, piecesOf(spec), polesOf(spec).poles));
  const bays = (edge: EdgeName, bay: number, round: (n: number) => number) =>
    stretches[edge].reduce((sum, ft) => sum + Math.max(1, round(ft / bay)), 1);
  return some(EDGES, (edge) => {
    const value = given[edge];
    if (value === undefined || value === null) return undefined;
    const from = bays(edge, BAY.mostFt, (n) => Math.ceil(n - 1e-6));
    const to = bays(edge, BAY.leastFt, (n) => Math.floor(n + 1e-6));
    return read.withinRange(`rings.${edge}`, "ringCount", value, { from, to, whole: true });
  });
}

function readShifted(input: SpecInput, read: FieldReader): TentSpec["shifted"] {
  const given = fieldsOf(input.shifted);
  return some(CORNERS, (corner: Corner): Point | undefined => {
    const value = given[corner];
    if (value === undefined || value === null) return undefined;
    const { xFt, yFt } = fieldsOf(value);
    const by = (axis: string, ft: unknown) =>
      read.withinRange(`shifted.${corner}.${axis}`, "cornerShift", ft ?? 0, { from: -MAX_SHIFT_FT, to: MAX_SHIFT_FT });
    const [across, along] = [by("xFt", xFt), by("yFt", yFt)];
    return across === undefined || along === undefined || (across === 0 && along === 0) ? undefined : { xFt: across, yFt: along };
  });
}

/** The values that are given, by key; `undefined` if none is. */
function some<K extends string, V>(keys: readonly K[], of: (key: K) => V | undefined): Partial<Record<K, V>> | undefined {
  const found = keys.flatMap((key) => {
    const value = of(key);
    return value === undefined ? [] : [[key, value] as const];
  });
  return found.length > 0 ? (Object.fromEntries(found) as Partial<Record<K, V>>) : undefined;
}
