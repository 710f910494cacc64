import type { LiveJob } from "../../machines/conversation/live-job.ts";
import { digest, type Hash } from "../../machines/digest/digest.ts";
import type { Sheet } from "../../machines/install/brief.ts";
import type { Words } from "../../views/text/words.ts";
import { briefToForm, sheetToForm } from "../input/brief-to-form.ts";
import type { Fields } from "../input/form.ts";
import { kitToForm } from "../input/kit.ts";
import { Problem } from "../input/problem.ts";
import { tentToForm } from "../input/tent.ts";
import type { ListedTent } from "../tent-catalog.ts";

/** What of a tent of the list a job takes: it has changed where this is another. */
export const tentDigest = ({ plan, kit }: Pick<ListedTent, "plan" | "kit">): Hash => digest.of({ spec: plan?.spec ?? null, kit });

const without = (fields: Fields, groups: RegExp): Fields =>
  Object.fromEntries(Object.entries(fields).filter(([name]) => !groups.test(name)));

/** A draft with a tent of the list in it. Throws a Problem where the tent cannot be read. */
export function withListedTent(fields: Fields, { plan, kit }: ListedTent, words: Words): Fields {
  if (!plan) throw new Problem(409, (w) => w.errors.tentUnreadable);
  return { ...without(fields, /^(?:tent|kit)\./), ...tentToForm(plan.spec, words), ...kitToForm(kit) };
}

/** A draft with the sheet that its tent had on the last job. One that belongs to the tent picked before goes with that. */
export function withKeptSheet(fields: Fields, kept: unknown, before: unknown): Fields {
  if (isSheet(kept)) return { ...without(fields, /^sheet\./), ...sheetToForm(kept) };
  const isBefore = isSheet(before) && fields["sheet.document"] === before.document;
  return isBefore ? without(fields, /^sheet\./) : fields;
}

/** It was checked when it was kept, and is again when the job is opened. */
const isSheet = (kept: unknown): kept is Sheet => typeof kept === "object" && kept !== null && "document" in kept;

/** What each job is asked for again: its name, and the ticket with every answer to it. */
const ASKED_AGAIN = /^(?:title|rehearsal|crew\.|ticket\.(?!toleranceIn))/;

/** The tent, sheet, site, kit and use of an earlier job as the fields of a draft, and who was on it. */
export function copyOf({ job, names }: LiveJob, words: Words) {
  const { brief } = job.frozen;
  const soil = (brief.site.soilKnown && brief.sheet?.soil) || "";
  return {
    fields: { ...without(briefToForm(brief, names, words), ASKED_AGAIN), "site.soil": soil },
    people: brief.crew.map(({ id, role }) => ({ name: names[id] ?? id, role })),
  };
}
