import { MIN_TOLERANCE_IN } from "../../machines/install/limits.ts";
import type { SiteModel } from "../../machines/site/model.ts";
import { problemsOfFixes } from "../../machines/site/read-fixes.ts";
import { readSite } from "../../machines/site/read-site.ts";
import type { SiteProblem } from "../../machines/site/site-limits.ts";
import { planTent } from "../../machines/tent/plan.ts";
import type { TentSpec } from "../../machines/tent/types.ts";
import type { Sentence, Wrong } from "./problem.ts";
import { noFields } from "./strict.ts";

/**
 * A site as a page or an office script sends it (offsets from the baseline), or what is wrong with it, by field. With a tent, what is
 * done about its stakes is held against its plan.
 */
export function readSiteModel(input: unknown, tent?: TentSpec): { readonly siteModel: SiteModel } | { readonly wrong: Wrong } {
  const read = readSite(input, MIN_TOLERANCE_IN);
  if (!("site" in read)) return { wrong: siteWrong(read.problems) };
  const bad = tent && read.site.fixes ? problemsOfFixes(planTent(tent), read.site.fixes) : [];
  return bad.length > 0 ? { wrong: siteWrong(bad) } : { siteModel: read.site };
}

/** What is wrong with a site, by where in it that stands. */
export function siteWrong(problems: readonly SiteProblem[]): Wrong {
  const fields = noFields<Sentence>();
  for (const problem of problems)
    fields[problem.path === "" ? "siteModel" : `siteModel.${problem.path}`] ??= ({ figures }) => figures.site(problem);
  return fields;
}
