import type { WallTime } from "../../machines/install/ids.ts";
import { own } from "../../machines/lookup/own.ts";
import { DRAFT_STEPS, type DraftStep, stepShowing } from "../../views/pages/draft/steps.ts";
import type { Words } from "../../views/text/words.ts";
import { demoBrief } from "../demo.ts";
import { readBrief } from "../input/brief.ts";
import type { Fields } from "../input/form.ts";
import { Problem, type Sentence, type Wrong } from "../input/problem.ts";
import { noFields } from "../input/strict.ts";
import { besideField } from "../input/tent.ts";
import { crewRows } from "./crew-rows.ts";
import { briefFromDraft } from "./draft-brief.ts";
import { endsAsked } from "./drawn.ts";
import { isStakeFigure, isStakeSize, STAKE_SIZE, stakeSizeOf } from "./stake-size.ts";

type Input = ReturnType<typeof briefFromDraft>;
/** What each step says of a brief. */
const PARTS: Readonly<Record<DraftStep, (b: Input) => object>> = {
  tent: ({ title, tent, kit }) => ({ title, tent, kit }),
  sheet: ({ sheet, anchorage }) => ({
    sheet: sheet && { ...sheet, soil: WHOLE.sheet.soil },
    ...(anchorage === undefined ? {} : { anchorage }),
  }),
  site: ({ site, sheet, siteModel, tent }) => ({
    site,
    // What is done about stakes is about those of its own tent.
    ...(siteModel === undefined ? {} : { siteModel, tent }),
    sheet: sheet && { ...WHOLE.sheet, soil: (sheet as { soil?: unknown }).soil },
  }),
  ticket: ({ zone, ticket, weatherPlan, forecast }) => ({
    zone,
    ticket,
    ...(weatherPlan === undefined ? {} : { weatherPlan }),
    ...(forecast === undefined ? {} : { forecast }),
  }),
  crew: ({ crew }) => ({ crew }),
};
/** The step that says a group of fields, where none shows the field itself. */
const GROUPS: Readonly<Record<string, DraftStep>> = {
  tent: "tent",
  kit: "tent",
  sheet: "sheet",
  anchorage: "sheet",
  site: "site",
  siteModel: "site",
  ticket: "ticket",
  // Their times are local to the zone, which is told with the ticket.
  weatherPlan: "ticket",
  forecast: "ticket",
  crew: "crew",
};
const stepSaying = (field: string): DraftStep | null => stepShowing(field) ?? own(GROUPS, field.split(/[.[]/)[0]!) ?? null;

/** A whole brief. Of a step only what it says itself is looked at, in the place of what this one says there. */
const WHOLE = demoBrief("2026-06-01", "2026-06-02");

/** What is wrong with what a step says, each beside the field where it was typed; empty where nothing is. */
export function problemsAt(step: DraftStep, f: Fields, now: WallTime, words: Words): Wrong {
  try {
    readBrief({ ...WHOLE, ...PARTS[step](briefFromDraft(f, now, words)) });
    return {};
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    const problems = noFields<Sentence>();
    for (const [field, why] of Object.entries(stakeSizeWrong(error.fields, f)))
      if (stepSaying(field) === step) problems[besideStep(field, f)] ??= why;
    return problems;
  }
}

/** The first step with something wrong in it, or with a tent whose ends nobody looked at; `null` where the job can be opened. */
export const firstWrong = (f: Fields, now: WallTime, words: Words): DraftStep | null =>
  endsAsked(f) ? "tent" : (DRAFT_STEPS.find((step) => Object.keys(problemsAt(step, f, now, words)).length > 0) ?? null);

function besideStep(field: string, f: Fields): string {
  const person = /^crew\.(\d+)\./.exec(field);
  const row = person && crewRows(f).filter(({ on }) => on)[Number(person[1])]?.row;
  if (row) return `crew.${row}.name`;
  return besideField(field, f);
}

/** What is wrong, with that of a stake's two figures beside the one field in which both are typed. */
export function stakeSizeWrong(wrong: Wrong, f: Fields): Wrong {
  const size = stakeSizeOf(f);
  const said: Sentence = (w) => (size === "" ? w.errors.empty : w.draft.noStakeSize(size));
  const problems = noFields<Sentence>();
  for (const [field, why] of Object.entries(wrong))
    if (isStakeFigure(field)) problems[STAKE_SIZE] ??= isStakeSize(f) ? why : said;
    else problems[field] = why;
  return problems;
}
