import { EDGES, type EdgeName } from "../tent/types.ts";

/** From the bearing of the baseline, A to B, to the outward normal of each edge: corners A B C D are clockwise seen from above. */
const OUT_DEG: Readonly<Record<EdgeName, number>> = { AB: -90, BC: 0, CD: 90, DA: 180 };
/** Two edges this close, in degrees, are hit alike. */
const ALIKE_DEG = 1e-6;

/**
 * The edge that faces the wind: the one whose outward normal is nearest to where the wind comes from. Both edges of a corner that
 * it blows straight at.
 *
 * @example windward(90, 0) // ["AB"]
 */
export function windward(baselineBearingDeg: number, fromDeg: number): readonly EdgeName[] {
  const off = (edge: EdgeName) => apartDeg(baselineBearingDeg + OUT_DEG[edge], fromDeg);
  const least = Math.min(...EDGES.map(off));
  return EDGES.filter((edge) => off(edge) - least < ALIKE_DEG);
}

/** The angle between two bearings, 0 to 180. */
function apartDeg(one: number, other: number): number {
  const turn = (((one - other) % 360) + 360) % 360;
  return Math.min(turn, 360 - turn);
}
