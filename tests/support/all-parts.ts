import type { Brief } from "../../machines/install/brief.ts";
import { SHORT_BY_PULLS, screenedBrief } from "./anchorages.ts";
import { WITH_AN_ANCHOR } from "./site-briefs.ts";
import { FORECAST, WEATHER_PLAN } from "./weather-plan.ts";

/** The parts that a brief may have beside what every one has: a site with an engineer's anchor, anchors short by pulls, a forecast over the limit with its hour, a weather plan. */
export const ALL_PARTS: Pick<Brief, "siteModel" | "anchorage" | "forecast" | "weatherPlan"> = {
  siteModel: WITH_AN_ANCHOR.siteModel!,
  anchorage: screenedBrief(SHORT_BY_PULLS).anchorage!,
  forecast: { ...FORECAST, clearBy: FORECAST.from },
  weatherPlan: WEATHER_PLAN,
};
/** The small tent with all of them. */
export const withAllParts = (): Brief => ({ ...screenedBrief(SHORT_BY_PULLS), ...ALL_PARTS });
