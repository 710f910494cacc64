import { type Context, Hono } from "hono";
import { TentFormPage, type TentFormProps } from "../../views/pages/tents/form.tsx";
import { TentPage } from "../../views/pages/tents/one.tsx";
import { RemoveTentPage } from "../../views/pages/tents/remove.tsx";
import { TentsPage } from "../../views/pages/tents/view.tsx";
import { TentPreview } from "../../views/parts/tent-part.tsx";
import type { Fields } from "../input/form.ts";
import { previewOf } from "../input/preview.ts";
import { inWords, Problem, type Sentence, type Wrong } from "../input/problem.ts";
import { namedTentFromForm, noTentGiven, pastedTent, readNamedTent } from "../input/saved-tent.ts";
import { besideField, readTentForm, usualTent } from "../input/tent.ts";
import type { Dependencies } from "../jobs.ts";
import type { Write } from "../journal/catalog.ts";
import { requestDigest } from "../next-entry.ts";
import { createTentCatalog, type ListedTent } from "../tent-catalog.ts";
import { formBody, jsonBody, wantsJson } from "./body.ts";
import { page } from "./page.ts";

const ID = ":id{[\\w-]+}";
const keyShape: Sentence = (w) => w.errors.keyShape;
const versionShape: Sentence = (w) => w.errors.versionShape;

/** The list of tents: saved ones and examples, with their plans, and the forms that add, change and take out. */
export function tentRoutes(world: Dependencies) {
  const app = new Hono();
  const shelf = (c: Context) => createTentCatalog(world, c.get("words"));
  const { newId } = world;
  const list = async (c: Context) => ({ saved: await shelf(c).saved(), examples: shelf(c).examples() });
  const write = (c: Context, key: unknown, body: unknown): Write => {
    if (key !== undefined && (typeof key !== "string" || !/^[\w.-]{8,80}$/.test(key))) throw new Problem(422, keyShape, { key: keyShape });
    return { key: key ?? newId(), request: requestDigest({ path: c.req.path, body: body as object }) };
  };
  const notAnExample = async (c: Context, id: string) => {
    if ((await shelf(c).find(id))?.version === null) throw new Problem(409, (w) => w.errors.exampleStays);
  };
  /** The saved tent that is to be changed. */
  const savedOne = async (c: Context, id: string): Promise<ListedTent & { version: number }> => {
    const tent = await shelf(c).get(id);
    if (tent.version === null) throw new Problem(409, (w) => w.errors.exampleStays);
    return { ...tent, version: tent.version };
  };

  type Form = Omit<TentFormProps, "values" | "problems" | "words" | "preview" | "newKey" | "message"> & { message?: string | null };
  const adding = (c: Context): Form => ({ action: "/tents", title: c.get("words").tents.addTitle });
  const formPage = (c: Context, values: Fields, form: Form, problems: Fields = {}, status: Problem["status"] | 200 = 200) => {
    const words = c.get("words");
    return c.html(
      page(
        c,
        <TentFormPage
          message={null}
          {...form}
          {...{ words, values, problems, newKey: newId }}
          preview={previewOf(values, words).preview}
        />,
      ),
      status,
    );
  };
  const planned = (c: Context, values: Fields, form: Form) => {
    const { preview, problems } = previewOf(values, c.get("words"));
    const tent = readTentForm(values);
    const message = "plan" in preview ? null : c.get("words").tents.notDrawn;
    return formPage(
      c,
      values,
      { ...form, message },
      "problems" in tent ? { ...inWords(tent.problems, c.get("words")), ...problems } : problems,
    );
  };
  const refused = (c: Context, values: Fields, error: Problem, form: Form) => {
    const words = c.get("words");
    const beside = inWords(besideForm(error.fields, values), words);
    return formPage(c, values, { ...form, message: error.sentence(words) }, beside, error.status);
  };

  app.get("/tents", async (c) => c.html(page(c, <TentsPage words={c.get("words")} {...(await list(c))} newKey={newId} pasted={null} />)));
  app.get("/tents.json", async (c) => c.json({ tents: [...(await shelf(c).saved()), ...shelf(c).examples()].map(asData) }));
  app.get("/tents/new", async (c) => {
    const { from, width, length } = c.req.query();
    if (from === undefined) return formPage(c, usualTent(width, length), { ...adding(c), sizes: true });
    const { name, version } = await shelf(c).get(from);
    return formPage(c, { ...(await shelf(c).form(from)), name: version === null ? "" : c.get("words").tents.copyOf(name) }, adding(c));
  });
  app.post("/tents/preview", async (c) => {
    const values = await formBody(c);
    if (c.req.header("hx-request-type") !== "partial") return planned(c, values, adding(c));
    return c.html(await (<TentPreview words={c.get("words")} values={values} {...previewOf(values, c.get("words"))} />).toString());
  });
  app.get("/tents/:file{[\\w-]+\\.json}", async (c) => c.json(asData(await shelf(c).get(c.req.param("file").slice(0, -".json".length)))));
  app.get(`/tents/${ID}`, async (c) => c.html(page(c, <TentPage words={c.get("words")} tent={await shelf(c).get(c.req.param("id"))} />)));
  app.get(`/tents/${ID}/edit`, async (c) => {
    const id = c.req.param("id");
    const { name, version } = await savedOne(c, id);
    return formPage(
      c,
      { ...(await shelf(c).form(id)), name },
      { action: `/tents/${id}`, title: c.get("words").tents.editTitle(name), version },
    );
  });
  app.get(`/tents/${ID}/remove`, async (c) =>
    c.html(page(c, <RemoveTentPage words={c.get("words")} tent={await savedOne(c, c.req.param("id"))} newKey={newId} />)),
  );

  app.post("/tents", async (c) => {
    if (wantsJson(c)) {
      const { key, ...body } = objectOf(await jsonBody(c));
      const id = await shelf(c).add(readNamedTent(body), write(c, key, body));
      return c.json(asData(await shelf(c).get(id)), 201);
    }
    const { key, ...fields } = await formBody(c);
    const pasting = fields.json !== undefined;
    if (!pasting && fields.show === "plan") return planned(c, fields, adding(c));
    try {
      const input = pasting ? pastedTent(fields.json!, fields.name ?? "") : namedTentFromForm(fields);
      const id = await shelf(c).add(readNamedTent(input), write(c, key, fields));
      return c.redirect(`/tents/${id}`, 303);
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      if (!pasting) return refused(c, fields, error, adding(c));
      const words = c.get("words");
      const told = { message: error.sentence(words), fields: inWords(error.fields, words) };
      const pasted = { values: fields, error: told };
      return c.html(page(c, <TentsPage words={words} {...(await list(c))} newKey={newId} pasted={pasted} />), error.status);
    }
  });

  app.post(`/tents/${ID}`, async (c) => {
    const id = c.req.param("id");
    if (wantsJson(c)) {
      const { key, version, ...body } = objectOf(await jsonBody(c));
      if (!Number.isSafeInteger(version)) throw new Problem(422, versionShape, { version: versionShape });
      await notAnExample(c, id);
      try {
        await shelf(c).change(id, version as number, readNamedTent(body), write(c, key, { ...body, version }));
      } catch (error) {
        const stored = await shelf(c).find(id);
        if (!(error instanceof Problem) || error.status !== 409) throw error;
        if (!stored) throw new Problem(404, (w) => w.errors.noTent(id));
        const words = c.get("words");
        return c.json({ problem: error.sentence(words), fields: inWords(error.fields, words), stored: asData(stored) }, 409);
      }
      return c.json(asData(await shelf(c).get(id)));
    }
    const { key, ...fields } = await formBody(c);
    await notAnExample(c, id);
    const version = Number(fields.version);
    const form: Form = { action: `/tents/${id}`, title: c.get("words").tents.editTitle(fields.name ?? ""), version };
    if (fields.show === "plan") return planned(c, fields, form);
    try {
      await shelf(c).change(id, version, readNamedTent(namedTentFromForm(fields)), write(c, key, fields));
      return c.redirect(`/tents/${id}`, 303);
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      const stored = await shelf(c).find(id);
      // Gone meanwhile: what was typed can still be added again.
      if (!stored) return refused(c, fields, new Problem(409, (w) => w.errors.tentGone), adding(c));
      if (error.status !== 409 || stored.version === version) return refused(c, fields, error, form);
      const now = stored.plan ? { ...(await shelf(c).form(id)), name: stored.name } : { name: stored.name };
      return refused(c, fields, error, { ...form, version: stored.version ?? version, storedNow: now });
    }
  });

  app.post(`/tents/${ID}/remove`, async (c) => {
    const id = c.req.param("id");
    const { key, ...fields } = await formBody(c);
    await notAnExample(c, id);
    await shelf(c).remove(id, Number(fields.version), write(c, key, fields));
    return c.redirect("/tents", 303);
  });
  return app;
}

/** Problems of `{ name, spec, kit }` beside the fields of the form that it came from. */
const besideForm = (problems: Wrong, values: Fields): Wrong =>
  Object.fromEntries(Object.entries(problems).map(([field, why]) => [besideField(field.replace(/^spec\./, "tent."), values), why]));

const objectOf = (body: unknown): Record<string, unknown> => {
  if (typeof body !== "object" || body === null || Array.isArray(body)) throw new Problem(422, noTentGiven, { spec: noTentGiven });
  return body as Record<string, unknown>;
};

/** A tent to take along: what `POST /tents` takes, and what its plan counts. */
function asData({ id, name, version, plan, kit }: ListedTent) {
  return {
    id,
    name,
    example: version === null,
    ...(version === null ? {} : { version }),
    spec: plan?.spec ?? null,
    ...(kit ? { kit } : {}),
    counts: plan && Object.fromEntries(plan.kit.map((k) => [k.item, k.count])),
  };
}
