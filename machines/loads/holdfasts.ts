import type { Published } from "../figures/source.ts";

/** Pickets in line, tied one to the next: how many in each row, from the pull back. */
export const HOLDFASTS = ["1", "1-1", "2-1", "1-1-1", "3-2-1"] as const;
export type HoldfastKind = (typeof HOLDFASTS)[number];
export const WET_EARTHS = ["loam", "clayAndGravel", "riverClayAndSand"] as const;
export type WetEarth = (typeof WET_EARTHS)[number];

const NAVY: Published = {
  title: "NAVEDTRA 14251, picket holdfasts",
  section: "undisturbed loam, pickets 3 to 4 ft in the ground",
  seen: "read",
};
const ARMY: Published = { title: "FM 5-125", section: "chapter 4, picket holdfasts and wet earth", seen: "memory" };

/** What a holdfast of wooden pickets stands in undisturbed loam, lbf. */
const IN_LOAM: Readonly<Record<HoldfastKind, { readonly lbf: number; readonly source: Published }>> = {
  "1": { lbf: 700, source: NAVY },
  "1-1": { lbf: 1400, source: ARMY },
  "2-1": { lbf: 2000, source: ARMY },
  "1-1-1": { lbf: 1800, source: NAVY },
  "3-2-1": { lbf: 4000, source: NAVY },
};
const WET_SHARE: Readonly<Record<WetEarth, number>> = { loam: 1, clayAndGravel: 0.9, riverClayAndSand: 0.5 };

/** A holdfast to think of where single stakes are short. A figure from memory only shows what is not enough. */
export type Holdfast = { readonly lbf: number; readonly source: Published; readonly seen: Published["seen"] };

/**
 * What a holdfast stands, lbf. In wet earth the share is from memory, whatever the rest is.
 *
 * @example holdfast("3-2-1", "loam").lbf // 4000
 */
export function holdfast(kind: HoldfastKind, earth: WetEarth): Holdfast {
  const { lbf, source } = IN_LOAM[kind];
  return { lbf: lbf * WET_SHARE[earth], source, seen: earth === "loam" ? source.seen : "memory" };
}

/** Steel pickets of 1.5 m by 25 mm in good ground: Australian Emergency Manual, Disaster Rescue, 8.3 (read): 350 kg each, 2 tonnes at most. */
const PICKET_KG = 350;
const MAX_PICKETS_KG = 2000;

/**
 * The safe load in kg of so many steel pickets in one holdfast.
 *
 * @example steelPicketsKg(6) // 2000
 */
export const steelPicketsKg = (pickets: number): number => Math.min(MAX_PICKETS_KG, pickets * PICKET_KG);
