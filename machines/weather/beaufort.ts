import type { Published } from "../figures/source.ts";

/**
 * The scale in mph and m/s: several public tables agree, quest.arc.nasa.gov and delta-s.org among them. That it is of the mean wind at 10 m
 * is from memory (WMO), and only makes a word count for more: a mean has its gusts on top.
 */
export const BEAUFORT: Published = { title: "Beaufort wind scale", section: "bands in mph and m/s", seen: "read" };

/** What the forces are called, from 0. Sentences and signs on land are the views'. */
export const BEAUFORT_NAMES = [
  "calm", "lightAir", "lightBreeze", "gentleBreeze", "moderateBreeze", "freshBreeze", "strongBreeze",
  "nearGale", "gale", "strongGale", "storm", "violentStorm", "hurricane",
] as const; // biome-ignore format: the scale in two lines
export type BeaufortName = (typeof BEAUFORT_NAMES)[number];

/** Top of each band but the last, which has none. Both columns are rounded from knots, so their edges differ by up to 0.9 mph. */
const TOP_MPH = [0, 3, 7, 12, 18, 24, 31, 38, 46, 54, 63, 72] as const;
const TOP_MPS = [0.2, 1.5, 3.3, 5.4, 7.9, 10.7, 13.8, 17.1, 20.7, 24.4, 28.4, 32.6] as const;

const forceOf = (tops: readonly number[], speed: number): number => {
  const force = tops.findIndex((top) => speed <= top);
  return force < 0 ? tops.length : force;
};

/**
 * Force of a mean wind in mph. Between two bands, such as 24.5 mph, it is the higher one. Under 1 mph is calm.
 *
 * @example beaufortOfMph(24) // 5
 */
export const beaufortOfMph = (mph: number): number => (mph < 1 ? 0 : forceOf(TOP_MPH, mph));

/** The same in m/s, by its own column: never through the other. */
export const beaufortOfMps = (mps: number): number => forceOf(TOP_MPS, mps);

/** A wind that was told by the look of things. `topMph`: of its band, which is what counts; `null`: the last one has no top. */
export type WindByLook = {
  readonly force: number;
  readonly name: BeaufortName;
  readonly topMph: number | null;
  readonly source: Published;
};

/**
 * The wind that a word of the scale stands for: the top of its band, as the word says no more. It is a mean at 10 m in the open; what it
 * gusts to is for the gust factor. Calm is under 1 mph, and counts as that.
 *
 * @example windByLook("freshBreeze").topMph // 24
 */
export function windByLook(name: BeaufortName): WindByLook {
  const force = BEAUFORT_NAMES.indexOf(name);
  return { force, name, topMph: force === 0 ? 1 : (TOP_MPH[force] ?? null), source: BEAUFORT };
}

/** From where the last band begins, mph: it has no top. */
const HURRICANE_MPH = 73;

/** The mean that a word of the scale counts as, mph: the top of its band; of the last one, which stops everything, its beginning. */
export const meanByLook = (name: BeaufortName): number => windByLook(name).topMph ?? HURRICANE_MPH;
