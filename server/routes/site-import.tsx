import { type Context, Hono } from "hono";
import { type Imported, ImportPage } from "../../views/pages/site/import.tsx";
import { siteState } from "../../views/pages/site/state.ts";
import type { Fields } from "../input/form.ts";
import { shownAgain } from "../input/geo-again.ts";
import { MEANINGS, readGeoForm, withRead } from "../input/geo-form.ts";
import { inWords, Problem } from "../input/problem.ts";
import { readSiteModel } from "../input/site-model.ts";
import type { Dependencies } from "../jobs.ts";
import { formWithFile } from "./body.ts";
import { page } from "./page.ts";
import type { DeskOf, SiteDesk } from "./site-desk.ts";
import { yieldTurn } from "./stream.ts";

type Shown = { readonly values: Fields; readonly problem?: Problem; readonly imported?: Imported };

/** A site read from a GeoJSON file: shown as it was read with how far off it may be, and put forward or kept with a second press. */
export function siteImportRoutes(prefix: string, deskOf: DeskOf, { newId }: Pick<Dependencies, "newId">) {
  const app = new Hono();
  const shown = (c: Context, { state, hurt }: SiteDesk, { values, problem, imported }: Shown) => {
    const words = c.get("words");
    const form = {
      values,
      problems: inWords(problem?.fields ?? {}, words),
      formKey: newId(),
      meanings: MEANINGS,
      imported: imported ?? null,
    };
    return page(c, <ImportPage state={state} hurt={hurt} words={words} message={problem?.sentence(words) ?? null} {...form} />);
  };

  app.get(`${prefix}/import`, async (c) => c.html(shown(c, await deskOf(c), { values: {} })));
  app.post(`${prefix}/import`, async (c) => {
    const { fields, file } = await formWithFile(c, "file");
    const { key, go, ...typed } = fields;
    // A long file is taken in parts: whoever holds meanwhile does not wait for all of it.
    await yieldTurn();
    const desk = await deskOf(c);
    const text = file ? await file.text() : (typed.text ?? "");
    // What was read stays in the form: the second press sends the same again.
    const values = { ...typed, text: shownAgain(text, (typed.as ?? "") !== "") };
    try {
      const read = readGeoForm(typed, text);
      await yieldTurn();
      const input = withRead(desk.state.site, read.site, typed.replace === "instead");
      const whole = readSiteModel(input);
      if ("wrong" in whole) throw new Problem(422, (w) => w.siteForms.wrong, whole.wrong);
      if (go === "take" && !file) return await desk.put(input, { because: c.get("words").siteForms.because.imported, key });
      return c.html(shown(c, desk, { values, imported: { read, state: siteState({ ...desk.state, siteModel: whole.siteModel }) } }));
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      return c.html(shown(c, desk, { values, problem: error }), error.status);
    }
  });
  return app;
}

/** Whether a request sends a file that is longer than a slip. */
export const takesGeoJson = ({ req }: Context): boolean =>
  req.method === "POST" && /^\/(?:jobs\/[\w-]+\/site|drafts\/[\w-]+\/ground-plan)\/import$/.test(req.path);
