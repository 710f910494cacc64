import type { Context } from "hono";
import { OpenJobPage, type OpenJobProps } from "../../views/pages/open-job/view.tsx";
import { tents } from "../../views/text/en/tents.ts";
import type { Fields } from "../input/form.ts";
import { previewOf } from "../input/preview.ts";
import { Problem } from "../input/problem.ts";
import { noFields } from "../input/strict.ts";
import { besideField, readTentForm } from "../input/tent.ts";
import { page } from "./page.ts";

type Form = Pick<OpenJobProps, "action" | "newKey" | "amending" | "effect">;

/** The form of a brief with the plan of its tent. */
export const briefPage = (c: Context, values: Fields, form: Form) =>
  c.html(page(<OpenJobPage values={values} problems={{}} preview={previewOf(values).preview} message={null} {...form} />));

/** Whether the form was sent only to see its plan. */
export const wantsPlan = (values: Fields): boolean => values.show === "plan";

/** The form again as it was typed, with the plan of its tent, or every reason why there is none. */
export function planPage(c: Context, values: Fields, form: Form) {
  const { preview, problems } = previewOf(values);
  const tent = readTentForm(values);
  const all = "problems" in tent ? { ...tent.problems, ...problems } : problems;
  const message = "plan" in preview ? "" : tents.notDrawn;
  return c.html(page(<OpenJobPage values={values} problems={all} preview={preview} message={message} {...form} />));
}

/** The form again as it was typed, with what was wrong beside each field. Throws on what is no Problem. */
export function refusedBrief(c: Context, values: Fields, error: unknown, form: Form) {
  if (!(error instanceof Problem)) throw error;
  const problems = noFields();
  for (const [field, why] of Object.entries(error.fields)) problems[besideField(field, values)] ??= why;
  const { preview } = previewOf(values);
  return c.html(
    page(<OpenJobPage values={values} problems={problems} preview={preview} message={error.message} {...form} />),
    error.status,
  );
}
