import type { Published } from "../figures/source.ts";

/** The publications that the loads are worked out by, each figure beside its use. `seen` says which of them are from memory. */
export const ASCE_PRESSURE: Published = { title: "ASCE 7-16", section: "equation 26.10-1, q = 0.00256 Kz Kzt Kd Ke V²", seen: "read" };
export const ASCE_KZ: Published = { title: "ASCE 7-16", section: "table 26.10-1, note 1, and table 26.11-1", seen: "secondHand" };
export const ASCE_KE: Published = { title: "ASCE 7", section: "table 26.9-1, Ke = exp(−0.0000362 z)", seen: "secondHand" };
export const ASCE_KD: Published = { title: "ASCE 7", section: "table 26.6-1, 0.85 for buildings", seen: "read" };
export const ASCE_FREE_ROOF: Published = { title: "ASCE 7-16", section: "figure 27.3-5, pitched free roof", seen: "secondHand" };
export const ASCE_GUST_EFFECT: Published = { title: "ASCE 7", section: "26.11, G = 0.85 for a rigid structure", seen: "memory" };
export const EN_PRESSURE: Published = { title: "EN 13782:2005", section: "simplified pressure by height, wind clause", seen: "memory" };
export const EN_CANOPY: Published = { title: "EN 1991-1-4:2005+A1", section: "table 7.7, duopitch canopy, overall", seen: "secondHand" };
/** Written for the anchors of manufactured homes; the best published yardstick for a stake that was pulled. */
export const ANCHOR_FACTOR: Published = {
  title: "Ill. Adm. Code 77-870.200; Minn. R. 1350.2900",
  section: "an anchor holds 4,725 lb for 3,150 lb of working load, 1.5 times",
  seen: "read",
};
export const WET_HALF: Published = {
  title: "Tent trade association's stake study, as its magazine tells it (2009)",
  section: "saturated ground holds about half of the same ground dry",
  seen: "read",
};
export const LOAM_PICKET: Published = {
  title: "NAVEDTRA 14251, picket holdfasts",
  section: "single picket in undisturbed loam, 700 lb",
  seen: "read",
};
export const PINS: Published = {
  title: "USACE US&R Structures Specialist FOG, 5th ed. 2006, from FHWA-IP-84-11",
  section: "design load of pickets (pins) in soils, sideways, about half of ultimate",
  seen: "secondHand",
};
