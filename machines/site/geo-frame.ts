import geographiclib from "geographiclib-geodesic";
import { METERS_PER_FOOT } from "../figures/units.ts";
import { toGrid } from "../tent/grid.ts";
import type { Offset } from "./model.ts";

/** Where the baseline begins on WGS 84, and which way it runs: degrees clockwise from true north. */
export type GeoFrame = { readonly lonDeg: number; readonly latDeg: number; readonly baselineBearingDeg: number };

/**
 * Most that a distance between two places of a site is off through being laid flat, in feet, if both are within a mile along
 * and off the baseline. Computed: tangential scale 1 + d²/6R² at a distance d of 7,467 ft gives 0.0003 ft over the whole site.
 */
export const PROJECTION_ERROR_FT = 0.001;
/** Longest degree on WGS 84 in feet, for rounding: of longitude at the equator, 111,320 m. Computed from its axis, 6,378,137 m. */
const MAX_DEGREE_FT = 365_222;

const { Geodesic } = geographiclib;
const DISTANCE_AND_AZIMUTH = Geodesic.DISTANCE | Geodesic.AZIMUTH;

/**
 * A place on WGS 84 in feet of the baseline: its geodesic's length and direction from where the baseline begins (azimuthal
 * equidistant). Method: Karney, Algorithms for geodesics, J. Geodesy 87 (2013).
 *
 * @example toOffset({ lonDeg: -105, latDeg: 40, baselineBearingDeg: 0 }, [-105, 40]) // { alongFt: 0, offFt: 0 }
 */
export function toOffset({ lonDeg, latDeg, baselineBearingDeg }: GeoFrame, [lon, lat]: readonly [number, number]): Offset {
  const { s12 = 0, azi1 = 0 } = Geodesic.WGS84.Inverse(latDeg, lonDeg, lat, lon, DISTANCE_AND_AZIMUTH);
  const ft = s12 / METERS_PER_FOOT;
  const angle = ((azi1 - baselineBearingDeg) * Math.PI) / 180;
  return { alongFt: toGrid(ft * Math.cos(angle)), offFt: toGrid(ft * Math.sin(angle)) };
}

/**
 * Most that a place is off in feet because its degrees were written with so many decimals.
 *
 * @example roundingErrorFt(6) < 0.26 // true
 */
export const roundingErrorFt = (decimals: number): number => Math.SQRT1_2 * MAX_DEGREE_FT * 10 ** -decimals;
