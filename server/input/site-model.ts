import { MIN_TOLERANCE_IN } from "../../machines/install/limits.ts";
import type { SiteModel } from "../../machines/site/model.ts";
import { readSite } from "../../machines/site/read-site.ts";
import type { SiteProblem } from "../../machines/site/site-limits.ts";
import type { Sentence, Wrong } from "./problem.ts";
import { noFields } from "./strict.ts";

/** A site as a page or an office script sends it (offsets from the baseline), or what is wrong with it, by field. */
export function readSiteModel(input: unknown): { readonly siteModel: SiteModel } | { readonly wrong: Wrong } {
  const read = readSite(input, MIN_TOLERANCE_IN);
  return "site" in read ? { siteModel: read.site } : { wrong: siteWrong(read.problems) };
}

/** What is wrong with a site, by where in it that stands. */
export function siteWrong(problems: readonly SiteProblem[]): Wrong {
  const fields = noFields<Sentence>();
  for (const problem of problems)
    fields[problem.path === "" ? "siteModel" : `siteModel.${problem.path}`] ??= ({ figures }) => figures.site(problem);
  return fields;
}
