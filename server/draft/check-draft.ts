import type { WallTime } from "../../machines/install/ids.ts";
import { DRAFT_STEPS, type DraftStep } from "../../views/pages/draft/steps.ts";
import type { Words } from "../../views/text/words.ts";
import { demoBrief } from "../demo.ts";
import { readBrief } from "../input/brief.ts";
import type { Fields } from "../input/form.ts";
import { Problem, type Sentence, type Wrong } from "../input/problem.ts";
import { noFields } from "../input/strict.ts";
import { besideField } from "../input/tent.ts";
import { crewRows } from "./crew-rows.ts";
import { briefFromDraft } from "./draft-brief.ts";

type Input = ReturnType<typeof briefFromDraft>;
/** What each step says of a brief, and which fields of it. */
const PARTS: Readonly<Record<DraftStep, { readonly of: (b: Input) => object; readonly fields: RegExp }>> = {
  tent: { of: ({ title, tent, kit }) => ({ title, tent, kit }), fields: /^(?:title|tent|kit)\b/ },
  sheet: { of: ({ sheet }) => ({ sheet }), fields: /^sheet\.(?!soil)/ },
  site: {
    of: ({ zone, site, sheet }) => ({
      zone,
      site,
      sheet: { ...WHOLE.sheet, ...(sheet ? { soil: (sheet as { soil?: unknown }).soil } : {}) },
    }),
    fields: /^(?:zone|site\b|sheet\.soil)/,
  },
  ticket: { of: ({ ticket }) => ({ ticket }), fields: /^ticket\b/ },
  crew: { of: ({ crew }) => ({ crew }), fields: /^crew\b/ },
};
/** A whole brief. Of a step only what it says itself is looked at, in the place of what this one says there. */
const WHOLE = demoBrief("2026-06-01", "2026-06-02");

/** What is wrong with what a step says, each beside the field where it was typed; empty where nothing is. */
export function problemsAt(step: DraftStep, f: Fields, now: WallTime, words: Words): Wrong {
  const { of, fields } = PARTS[step];
  try {
    readBrief({ ...WHOLE, ...of(briefFromDraft(f, now, words)) });
    return {};
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    const problems = noFields<Sentence>();
    for (const [field, why] of Object.entries(error.fields)) if (fields.test(field)) problems[besideStep(field, f)] ??= why;
    return problems;
  }
}

/** The first step with something wrong in it; `null` where the job can be opened. */
export const firstWrong = (f: Fields, now: WallTime, words: Words): DraftStep | null =>
  DRAFT_STEPS.find((step) => Object.keys(problemsAt(step, f, now, words)).length > 0) ?? null;

function besideStep(field: string, f: Fields): string {
  if (field === "sheet.soil") return "site.soil";
  const person = /^crew\.(\d+)\./.exec(field);
  const row = person && crewRows(f).filter(({ on }) => on)[Number(person[1])]?.row;
  if (row) return `crew.${row}.name`;
  // One gust is asked for, and means both.
  return field === "sheet.stopGustMph" ? "sheet.raiseGustMph" : besideField(field, f);
}
