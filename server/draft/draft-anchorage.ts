import type { Anchorage } from "../../machines/install/anchorage.ts";
import { demoBrief } from "../demo.ts";
import { anchorageFromForm, anchorageToForm } from "../input/anchorage-form.ts";
import { readBrief } from "../input/brief.ts";
import type { Fields } from "../input/form.ts";
import { Problem, type Wrong } from "../input/problem.ts";
import { type PartFields, partField, partsEntered } from "./draft-parts.ts";

/** What a draft keeps of a form of the anchors; or what is wrong with it, by field. */
export function anchorageTyped(form: Fields): { readonly fields: PartFields } | { readonly wrong: Wrong } {
  const anchorage = anchorageFromForm(form);
  try {
    // Of a whole brief only this is looked at: what else it says is not told yet.
    if (anchorage !== null) readBrief({ ...demoBrief("2026-06-01", "2026-06-02"), anchorage });
    return { fields: { anchorage: partField(anchorage) } };
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    return { wrong: error.fields };
  }
}

/** What stands in that form for a draft. It was looked at before it was kept. */
export const anchorageShown = (f: Fields): Fields => anchorageToForm(partsEntered(f).anchorage as Anchorage | undefined);
