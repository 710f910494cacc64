import { planTent } from "../../machines/tent/plan.ts";
import type { Values } from "../../views/parts/fields.tsx";
import type { Preview } from "../../views/parts/tent-part.tsx";
import type { Fields } from "./form.ts";
import { kitFromForm, readKit } from "./kit.ts";
import { readTentForm } from "./tent.ts";

/** The plan of a form's tent, and what is wrong with what was typed. Fields that are still empty are not called wrong. */
export function previewOf(f: Fields): { readonly preview: Preview; readonly problems: Values } {
  const tent = readTentForm(f);
  const kit = readKit(kitFromForm(f));
  const ofKit = "problems" in kit ? kit.problems : {};
  if ("spec" in tent) return { preview: { plan: planTent(tent.spec) }, problems: ofKit };
  const typed = Object.entries(tent.problems).filter(([field]) => !tent.missing.includes(field));
  return { preview: tent, problems: { ...Object.fromEntries(typed), ...ofKit } };
}
