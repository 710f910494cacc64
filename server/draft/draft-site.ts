import type { SiteModel } from "../../machines/site/model.ts";
import type { Fields } from "../input/form.ts";
import { parseJson } from "../input/json.ts";
import { readSiteModel } from "../input/site-model.ts";

/** The field of a draft that has its site, as JSON: no form of a step shows it. */
export const SITE_FIELD = "siteModel";

/** The site of a draft as it was told, not checked; absent where nobody told one. */
export function siteTold(f: Fields): { readonly siteModel?: unknown } {
  const text = f[SITE_FIELD];
  return text === undefined || text === "" ? {} : { siteModel: parseJson(text) };
}

/** A draft whose tent is another by now: what was to be done about the stakes of the one before goes, and those in a zone are short again. */
export function withoutFixes(f: Fields): Fields {
  const { siteModel } = siteTold(f);
  if (typeof siteModel !== "object" || siteModel === null || !("fixes" in siteModel)) return f;
  const { fixes: _, ...rest } = siteModel;
  return { ...f, [SITE_FIELD]: JSON.stringify(rest) };
}

/** The same as it is read; `null` where there is none, or it cannot be read any more. */
export function siteOfDraft(f: Fields): SiteModel | null {
  const { siteModel } = siteTold(f);
  if (siteModel === undefined) return null;
  const read = readSiteModel(siteModel);
  return "siteModel" in read ? read.siteModel : null;
}
