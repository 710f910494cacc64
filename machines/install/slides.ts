import type { SiteModel } from "../site/model.ts";
import { planTent } from "../tent/plan.ts";
import { withSlides } from "../tent/slid.ts";
import type { TentPlan } from "../tent/types.ts";
import type { Brief } from "./brief.ts";
import { replacedIn, withReplaced } from "./replaced.ts";

/** How far the plates of each station slide, ft, by its id. */
export const slidesOf = ({ fixes = [] }: Pick<SiteModel, "fixes">): ReadonlyMap<string, number> =>
  new Map(fixes.flatMap((fix) => (fix.is === "slide" ? [[fix.station, fix.byFt] as const] : [])));

/** The plan of a brief: its tent, with the plates where they slid to, and without the stakes that anchors take the place of. */
export const planOf = ({ tent, siteModel }: Pick<Brief, "tent" | "siteModel">): TentPlan =>
  withReplaced(withSlides(planTent(tent), slidesOf(siteModel ?? {})), replacedIn(siteModel ?? {}));
