/** The sixteen points of the compass from north, clockwise. */
const POINTS = ["n", "nne", "ne", "ene", "e", "ese", "se", "sse", "s", "ssw", "sw", "wsw", "w", "wnw", "nw", "nnw"];
const NAMES: readonly (readonly [RegExp, string])[] = [
  [/north/g, "n"],
  [/south/g, "s"],
  [/east/g, "e"],
  [/west/g, "w"],
];

/**
 * A point of the compass in degrees; `null` if it is none.
 *
 * @example compassDeg("north-northwest") // 337.5
 */
export function compassDeg(said: string): number | null {
  const letters = NAMES.reduce((text, [name, letter]) => text.replaceAll(name, letter), said.toLowerCase()).replaceAll(/[\s.-]/g, "");
  const at = POINTS.indexOf(letters);
  return at < 0 ? null : (at * 360) / POINTS.length;
}
