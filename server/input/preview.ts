import { planTent } from "../../machines/tent/plan.ts";
import type { Values } from "../../views/parts/fields.tsx";
import type { Preview } from "../../views/parts/tent-part.tsx";
import type { Words } from "../../views/text/words.ts";
import type { Fields } from "./form.ts";
import { kitFromForm, readKit } from "./kit.ts";
import { inWords } from "./problem.ts";
import { readTentForm } from "./tent.ts";

/** The plan of a form's tent, and what is wrong with what was typed, in words. Fields that are still empty are not called wrong. */
export function previewOf(f: Fields, words: Words): { readonly preview: Preview; readonly problems: Values } {
  const tent = readTentForm(f);
  const kit = readKit(kitFromForm(f));
  const ofKit = inWords("problems" in kit ? kit.problems : {}, words);
  if ("spec" in tent) return { preview: { plan: planTent(tent.spec) }, problems: ofKit };
  const problems = inWords(tent.problems, words);
  const typed = Object.entries(problems).filter(([field]) => !tent.missing.includes(field));
  return { preview: { problems, missing: tent.missing }, problems: { ...Object.fromEntries(typed), ...ofKit } };
}
