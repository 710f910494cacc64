import type { Published } from "../figures/source.ts";

const DURST: Published = { title: "Durst 1960, as in ASCE 7 commentary", section: "figure C26.5-1, open country", seen: "secondHand" };

/** Peak 3-second gust over the hourly mean in open country: Durst 1960, as in ASCE 7 commentary, figure C26.5-1. */
export const GUST_FACTOR = 1.52;

/**
 * The hourly mean that a 3-second gust goes with in open country, mph.
 *
 * @example hourlyMeanMph(38) // 25
 */
export const hourlyMeanMph = (gustMph: number): number => gustMph / GUST_FACTOR;

/** How gusty a wind is. `turbulent`: more than open country makes of it, so that something near breaks it up, or the mean was read in a lee. */
export type Gustiness = { readonly factor: number; readonly turbulent: boolean; readonly usual: number; readonly source: Published };

/**
 * The gust factor of a reading: its gust over its mean, in any one unit. `null` in a calm, or where the gust is under the mean, which no
 * wind is. The usual factor is for an hour's mean: a shorter one gives less, so that a factor over it is gusty for certain.
 *
 * @example gustiness({ mph: 12, gustMph: 24 }).factor // 2
 */
export function gustiness({ mph, gustMph }: { readonly mph: number; readonly gustMph: number }): Gustiness | null {
  if (mph <= 0 || gustMph < mph) return null;
  const factor = gustMph / mph;
  return { factor, turbulent: factor > GUST_FACTOR, usual: GUST_FACTOR, source: DURST };
}
