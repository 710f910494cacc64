import type { Anchorage } from "../../machines/install/anchorage.ts";
import { demoBrief } from "../demo.ts";
import { anchorageFromForm, anchorageToForm } from "../input/anchorage-form.ts";
import { readBrief } from "../input/brief.ts";
import type { Fields } from "../input/form.ts";
import { Problem, type Wrong } from "../input/problem.ts";
import { anchorageTold } from "./anchorage-told.ts";

/** What is kept of a form of the anchors: its text as JSON, empty where nothing of it is typed; or what is wrong with it, by field. */
export function anchorageTyped(form: Fields): { readonly kept: string } | { readonly wrong: Wrong } {
  const anchorage = anchorageFromForm(form);
  if (anchorage === null) return { kept: "" };
  try {
    // Of a whole brief only this is looked at: what else it says is not told yet.
    readBrief({ ...demoBrief("2026-06-01", "2026-06-02"), anchorage });
    return { kept: JSON.stringify(anchorage) };
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    return { wrong: error.fields };
  }
}

/** What stands in that form for a draft. It was looked at before it was kept. */
export const anchorageShown = (f: Fields): Fields => anchorageToForm(anchorageTold(f).anchorage as Anchorage | undefined);
