import type { Context } from "hono";
import { OpenJobPage, type OpenJobProps } from "../../views/pages/open-job/view.tsx";
import type { Fields } from "../input/form.ts";
import { previewOf } from "../input/preview.ts";
import { inWords, Problem } from "../input/problem.ts";
import { noFields } from "../input/strict.ts";
import { besideField, readTentForm } from "../input/tent.ts";
import { page } from "./page.ts";

type Form = Pick<OpenJobProps, "action" | "newKey" | "amending" | "only" | "effect" | "hurt">;

/** The form of a brief with the plan of its tent. */
export const briefPage = (c: Context, values: Fields, form: Form) =>
  c.html(
    page(
      c,
      <OpenJobPage
        words={c.get("words")}
        values={values}
        problems={{}}
        preview={previewOf(values, c.get("words")).preview}
        message={null}
        {...form}
      />,
    ),
  );

/** Whether the form was sent only to see its plan. */
export const wantsPlan = (values: Fields): boolean => values.show === "plan";

/** The form again as it was typed, with the plan of its tent, or every reason why there is none. */
export function planPage(c: Context, values: Fields, form: Form) {
  const words = c.get("words");
  const { preview, problems } = previewOf(values, words);
  const tent = readTentForm(values);
  const all = "problems" in tent ? { ...inWords(tent.problems, words), ...problems } : problems;
  const message = "plan" in preview ? "" : words.tents.notDrawn;
  return c.html(page(c, <OpenJobPage words={words} values={values} problems={all} preview={preview} message={message} {...form} />));
}

/** The form again as it was typed, with what was wrong beside each field. Throws on what is no Problem. */
export function refusedBrief(c: Context, values: Fields, error: unknown, form: Form) {
  if (!(error instanceof Problem)) throw error;
  const words = c.get("words");
  const problems = noFields<string>();
  for (const [field, why] of Object.entries(error.fields)) problems[besideField(field, values)] ??= why(words);
  const { preview } = previewOf(values, words);
  return c.html(
    page(c, <OpenJobPage words={words} values={values} problems={problems} preview={preview} message={error.sentence(words)} {...form} />),
    error.status,
  );
}
