import type { Brief } from "../../machines/install/brief.ts";
import { own } from "../../machines/lookup/own.ts";
import type { SiteModel } from "../../machines/site/model.ts";
import { problemsOfFixes } from "../../machines/site/read-fixes.ts";
import { planTent } from "../../machines/tent/plan.ts";
import type { TentSpec } from "../../machines/tent/types.ts";
import { readAnchorage } from "./anchorage.ts";
import { readForecast } from "./forecast.ts";
import { Problem, type Wrong } from "./problem.ts";
import { readSiteModel } from "./site-model.ts";
import { readWeatherPlan } from "./weather-plan.ts";

/** Parts of a brief that no form of it has: each has a page of its own, and stays as it stands where another page changes the rest. */
export const BRIEF_PARTS = ["siteModel", "anchorage", "forecast", "weatherPlan"] as const satisfies readonly (keyof Brief)[];
export type PartName = (typeof BRIEF_PARTS)[number];
type Parts = Pick<Brief, PartName>;
type Given = { readonly [P in PartName]?: unknown };

/** The parts that came with a brief. Throws a Problem that names every field that is wrong. */
export function partsOf(given: Given, brief: Pick<Brief, "tent" | "sheet" | "use" | "zone">): Parts {
  const read = [
    ...(isGiven(given.siteModel) ? [readSiteModel(given.siteModel, brief.tent)] : []),
    ...(isGiven(given.anchorage) ? [readAnchorage(given.anchorage, brief)] : []),
    ...(isGiven(given.forecast) ? [readForecast(given.forecast, brief.zone)] : []),
    ...(isGiven(given.weatherPlan) ? [readWeatherPlan(given.weatherPlan)] : []),
  ];
  const wrong: Wrong = Object.assign({}, ...read.map((part) => ("wrong" in part ? part.wrong : {})));
  if (Object.keys(wrong).length > 0) throw new Problem(422, (w) => w.errors.briefRefused, wrong);
  return Object.assign({}, ...read) as Parts;
}

const isGiven = (part: unknown): boolean => part !== undefined && part !== null;

/**
 * A site under another tent: what was done about stakes that it does not have, or that would slide too far, is gone, and each such
 * stake is worked out again where it stands.
 */
export function siteUnder(site: SiteModel, tent: TentSpec): SiteModel {
  const bad = new Set(problemsOfFixes(planTent(tent), site.fixes ?? []).map(({ path }) => path));
  return bad.size === 0 ? site : { ...site, fixes: site.fixes!.filter((_, i) => !bad.has(`fixes.${i}`)) };
}

/** The parts of a brief that an amendment of it says nothing of. One that is told as `null` goes. */
export function keptParts(brief: Brief, amended: unknown): Parts {
  const told = typeof amended === "object" && amended !== null ? (amended as Given) : {};
  return Object.fromEntries(BRIEF_PARTS.flatMap((part) => (own(told, part) === undefined && brief[part] ? [[part, brief[part]]] : [])));
}
