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
import { without, withoutSheet } from "./belongs.ts";
import { namedSoil } from "./soil.ts";

/** What of a tent of the list a job takes: it has changed where this is another. */
export const tentDigest = ({ plan, kit }: Pick<ListedTent, "plan" | "kit">): Hash => digest.of({ spec: plan?.spec ?? null, kit });

/** A draft with a tent of the list in it. Throws a Problem where the tent cannot be read. */
export function withListedTent(fields: Fields, { plan, kit }: ListedTent, words: Words): Fields {
  if (!plan) throw new Problem(409, (w) => w.errors.tentUnreadable);
  return { ...without(fields, (name) => /^(?:tent|kit)\./.test(name)), ...tentToForm(plan.spec, words), ...kitToForm(kit) };
}

/** A draft of another tent, with the sheet that the firm keeps of that one; without any where it keeps none. */
export function withKeptSheet(fields: Fields, kept: unknown, languages: readonly Words[]): Fields {
  const bare = withoutSheet(fields);
  return isSheet(kept) ? { ...bare, ...sheetToForm(kept), "sheet.soil": namedSoil(kept.soil, languages) } : bare;
}

/** It was checked when it was kept, and is again when the job is opened. */
const isSheet = (kept: unknown): kept is Sheet =>
  typeof kept === "object" && kept !== null && "document" in kept && "soil" in kept && typeof kept.soil === "string";

/**
 * What a copy takes of an earlier job: its tent and kit, its sheet, its site, and how near a stake may come to a mark there.
 * What steps do not show of sheet and site goes as soon as that is another one (`typedOver`); all else is asked for again.
 */
const COPIED = /^(?:(?:tent|kit|sheet|site)\.|zone$|ticket\.toleranceIn$|unknown\.sheet$)/;

/** An earlier job as the fields of a draft, and who was on it. */
export function copyOf({ job, names }: LiveJob, words: Words, languages: readonly Words[]) {
  const { brief } = job.frozen;
  const copied = without(briefToForm(brief, names, words), (name) => !COPIED.test(name));
  return {
    fields: { ...copied, "sheet.soil": namedSoil(copied["sheet.soil"], languages) },
    people: brief.crew.map(({ id, role }) => ({ name: names[id] ?? id, role })),
  };
}
