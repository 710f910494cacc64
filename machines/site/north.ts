/**
 * Where north is from a site's baseline, degrees clockwise, by the compass bearing of a tent's A–B and how that turns from the
 * baseline.
 *
 * @example headingOfNorth(100, 30) // -70
 */
export const headingOfNorth = (bearingDeg: number, headingDeg: number): number => headingDeg - bearingDeg;

/**
 * The compass bearing of A–B once the tent is turned by some degrees, from 0 up to 360.
 *
 * @example turnedBearing(350, 20) // 10
 */
export const turnedBearing = (bearingDeg: number, turnDeg: number): number => (((bearingDeg + turnDeg) % 360) + 360) % 360;
