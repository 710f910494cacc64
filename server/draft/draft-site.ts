import type { SiteModel } from "../../machines/site/model.ts";
import type { Fields } from "../input/form.ts";
import { readSiteModel } from "../input/site-model.ts";
import { partField, partsEntered } from "./draft-parts.ts";

/** A draft whose tent is another by now: what was to be done about the stakes of the one before goes, and those in a zone are short again. */
export function withoutFixes(f: Fields): Fields {
  const { siteModel } = partsEntered(f);
  if (typeof siteModel !== "object" || siteModel === null || !("fixes" in siteModel)) return f;
  const { fixes: _, ...rest } = siteModel;
  return { ...f, siteModel: partField(rest) };
}

/** The site of a draft; `null` where nobody has entered one, or it can no longer be read. */
export function siteOfDraft(f: Fields): SiteModel | null {
  const { siteModel } = partsEntered(f);
  if (siteModel === undefined) return null;
  const read = readSiteModel(siteModel);
  return "siteModel" in read ? read.siteModel : null;
}
