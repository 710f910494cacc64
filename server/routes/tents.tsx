import { type Context, Hono } from "hono";
import { TentFormPage, type TentFormProps } from "../../views/pages/tents/form.tsx";
import { TentPage } from "../../views/pages/tents/one.tsx";
import { RemoveTentPage } from "../../views/pages/tents/remove.tsx";
import { TentsPage } from "../../views/pages/tents/view.tsx";
import { TentPreview } from "../../views/parts/tent-part.tsx";
import { errors } from "../../views/text/en/errors.ts";
import { tents as words } from "../../views/text/en/tents.ts";
import type { Fields } from "../input/form.ts";
import { previewOf } from "../input/preview.ts";
import { Problem } from "../input/problem.ts";
import { namedTentFromForm, pastedTent, readNamedTent } from "../input/saved-tent.ts";
import { besideField, readTentForm, usualTent } from "../input/tent.ts";
import type { Dependencies } from "../jobs.ts";
import type { Write } from "../journal/catalog.ts";
import { requestDigest } from "../next-entry.ts";
import { createTentCatalog, type ListedTent } from "../tent-catalog.ts";
import { formBody, jsonBody, wantsJson } from "./body.ts";
import { page } from "./page.ts";

const ID = ":id{[\\w-]+}";

/** The list of tents: saved ones and examples, with their plans, and the forms that add, change and take out. */
export function tentRoutes(world: Dependencies) {
  const app = new Hono();
  const shelf = createTentCatalog(world);
  const { newId } = world;
  const list = async () => ({ saved: await shelf.saved(), examples: shelf.examples() });
  const write = (c: Context, key: unknown, body: unknown): Write => {
    if (key !== undefined && (typeof key !== "string" || !/^[\w.-]{8,80}$/.test(key)))
      throw new Problem(422, errors.keyShape, { key: errors.keyShape });
    return { key: key ?? newId(), request: requestDigest({ path: c.req.path, body: body as object }) };
  };
  const notAnExample = async (id: string) => {
    if ((await shelf.find(id))?.version === null) throw new Problem(409, errors.exampleStays);
  };
  /** The saved tent that is to be changed. */
  const savedOne = async (id: string): Promise<ListedTent & { version: number }> => {
    const tent = await shelf.get(id);
    if (tent.version === null) throw new Problem(409, errors.exampleStays);
    return { ...tent, version: tent.version };
  };

  type Form = Omit<TentFormProps, "values" | "problems" | "preview" | "newKey" | "message"> & { message?: string | null };
  const formPage = (c: Context, values: Fields, form: Form, problems: Fields = {}, status: Problem["status"] | 200 = 200) =>
    c.html(
      page(<TentFormPage message={null} {...form} {...{ values, problems, newKey: newId }} preview={previewOf(values).preview} />),
      status,
    );
  const planned = (c: Context, values: Fields, form: Form) => {
    const { preview, problems } = previewOf(values);
    const tent = readTentForm(values);
    const message = "plan" in preview ? null : words.notDrawn;
    return formPage(c, values, { ...form, message }, "problems" in tent ? { ...tent.problems, ...problems } : problems);
  };
  const refused = (c: Context, values: Fields, error: Problem, form: Form) =>
    formPage(c, values, { ...form, message: error.message }, besideForm(error.fields, values), error.status);

  app.get("/tents", async (c) => c.html(page(<TentsPage {...(await list())} newKey={newId} pasted={null} />)));
  app.get("/tents.json", async (c) => c.json({ tents: [...(await shelf.saved()), ...shelf.examples()].map(asData) }));
  app.get("/tents/new", async (c) => {
    const { from, width, length } = c.req.query();
    if (from === undefined) return formPage(c, usualTent(width, length), { action: "/tents", title: words.addTitle, sizes: true });
    const { name, version } = await shelf.get(from);
    return formPage(
      c,
      { ...(await shelf.form(from)), name: version === null ? "" : words.copyOf(name) },
      { action: "/tents", title: words.addTitle },
    );
  });
  app.post("/tents/preview", async (c) => {
    const values = await formBody(c);
    if (c.req.header("hx-request-type") !== "partial") return planned(c, values, { action: "/tents", title: words.addTitle });
    return c.html(await (<TentPreview values={values} {...previewOf(values)} />).toString());
  });
  app.get("/tents/:file{[\\w-]+\\.json}", async (c) => c.json(asData(await shelf.get(c.req.param("file").slice(0, -".json".length)))));
  app.get(`/tents/${ID}`, async (c) => c.html(page(<TentPage tent={await shelf.get(c.req.param("id"))} />)));
  app.get(`/tents/${ID}/edit`, async (c) => {
    const id = c.req.param("id");
    const { name, version } = await savedOne(id);
    return formPage(c, { ...(await shelf.form(id)), name }, { action: `/tents/${id}`, title: words.editTitle(name), version });
  });
  app.get(`/tents/${ID}/remove`, async (c) => c.html(page(<RemoveTentPage tent={await savedOne(c.req.param("id"))} newKey={newId} />)));

  app.post("/tents", async (c) => {
    if (wantsJson(c)) {
      const { key, ...body } = objectOf(await jsonBody(c));
      const id = await shelf.add(readNamedTent(body), write(c, key, body));
      return c.json(asData(await shelf.get(id)), 201);
    }
    const { key, ...fields } = await formBody(c);
    const pasting = fields.json !== undefined;
    if (!pasting && fields.show === "plan") return planned(c, fields, { action: "/tents", title: words.addTitle });
    try {
      const input = pasting ? pastedTent(fields.json!, fields.name ?? "") : namedTentFromForm(fields);
      const id = await shelf.add(readNamedTent(input), write(c, key, fields));
      return c.redirect(`/tents/${id}`, 303);
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      if (!pasting) return refused(c, fields, error, { action: "/tents", title: words.addTitle });
      return c.html(page(<TentsPage {...(await list())} newKey={newId} pasted={{ values: fields, error }} />), error.status);
    }
  });

  app.post(`/tents/${ID}`, async (c) => {
    const id = c.req.param("id");
    if (wantsJson(c)) {
      const { key, version, ...body } = objectOf(await jsonBody(c));
      if (!Number.isSafeInteger(version)) throw new Problem(422, errors.versionShape, { version: errors.versionShape });
      await notAnExample(id);
      try {
        await shelf.change(id, version as number, readNamedTent(body), write(c, key, { ...body, version }));
      } catch (error) {
        const stored = await shelf.find(id);
        if (!(error instanceof Problem) || error.status !== 409) throw error;
        if (!stored) throw new Problem(404, errors.noTent(id));
        return c.json({ problem: error.message, fields: error.fields, stored: asData(stored) }, 409);
      }
      return c.json(asData(await shelf.get(id)));
    }
    const { key, ...fields } = await formBody(c);
    await notAnExample(id);
    const version = Number(fields.version);
    const form: Form = { action: `/tents/${id}`, title: words.editTitle(fields.name ?? ""), version };
    if (fields.show === "plan") return planned(c, fields, form);
    try {
      await shelf.change(id, version, readNamedTent(namedTentFromForm(fields)), write(c, key, fields));
      return c.redirect(`/tents/${id}`, 303);
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      const stored = await shelf.find(id);
      // Gone meanwhile: what was typed can still be added anew.
      if (!stored) return refused(c, fields, new Problem(409, errors.tentGone), { action: "/tents", title: words.addTitle });
      if (error.status !== 409 || stored.version === version) return refused(c, fields, error, form);
      const now = stored.plan ? { ...(await shelf.form(id)), name: stored.name } : { name: stored.name };
      return refused(c, fields, error, { ...form, version: stored.version ?? version, storedNow: now });
    }
  });

  app.post(`/tents/${ID}/remove`, async (c) => {
    const id = c.req.param("id");
    const { key, ...fields } = await formBody(c);
    await notAnExample(id);
    await shelf.remove(id, Number(fields.version), write(c, key, fields));
    return c.redirect("/tents", 303);
  });
  return app;
}

/** Problems of `{ name, spec, kit }` beside the fields of the form that it came from. */
const besideForm = (problems: Fields, values: Fields): Fields =>
  Object.fromEntries(Object.entries(problems).map(([field, why]) => [besideField(field.replace(/^spec\./, "tent."), values), why]));

const objectOf = (body: unknown): Record<string, unknown> => {
  if (typeof body !== "object" || body === null || Array.isArray(body))
    throw new Problem(422, errors.noTentGiven, { spec: errors.noTentGiven });
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
