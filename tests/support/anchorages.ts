import { type Anchorage, NOTHING_TOLD } from "../../machines/install/anchorage.ts";
import type { Brief } from "../../machines/install/brief.ts";
import { briefOf, type Changed, SMALL } from "../proof/fixtures.ts";
import { alongStrap } from "./loads.ts";

/** Pulls along the strap, the last of them at the softest spot. */
export const pulls = (...lbf: readonly number[]): Anchorage["pulls"] => lbf.map((n, i) => alongStrap(n, i === lbf.length - 1));

/** Wind and roof of which everything is told, and nothing of the ground. */
export const WINDY: Partial<Anchorage> = { gustMph: 60, exposure: "C", underRoof: "clear" };

/** Pulls that are short of what its stakes have to hold, and pulls that are not. */
export const SHORT_BY_PULLS: Partial<Anchorage> = { ...WINDY, pulls: pulls(1120, 980, 640), rainSincePulls: false };
export const HELD_BY_PULLS: Partial<Anchorage> = { ...WINDY, pulls: pulls(2000, 1500, 900), rainSincePulls: false };

/** The small tent without walls, screened by what was told. The worst of its stakes have 490 lb to hold. */
export const screenedBrief = (told: Partial<Anchorage>, { use, ...changed }: Changed = {}): Brief => ({
  ...briefOf(SMALL, { ...changed, use: { walls: false, ...use } }),
  anchorage: { ...NOTHING_TOLD, ...told },
});
