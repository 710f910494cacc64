import { type Context, Hono } from "hono";
import { type DraftStep, draftStep, stepFrom } from "../../views/pages/draft/steps.ts";
import { TentStepPreview } from "../../views/pages/draft/tent.tsx";
import { without } from "../draft/belongs.ts";
import { problemsAt } from "../draft/check-draft.ts";
import type { Draft } from "../draft/draft.ts";
import { createLiveDrafts } from "../draft/drafts.ts";
import { drawnOf, endsAsked, isToBeSeen } from "../draft/drawn.ts";
import { tentDigest, withListedTent } from "../draft/fill.ts";
import { leftBehind, placesOf, withTyped } from "../draft/typed-in.ts";
import type { Fields } from "../input/form.ts";
import { previewOf } from "../input/preview.ts";
import { Problem } from "../input/problem.ts";
import type { Dependencies, LiveJobs } from "../jobs.ts";
import { createTentCatalog } from "../tent-catalog.ts";
import { formBody } from "./body.ts";
import { draftListRoutes } from "./draft-list.tsx";
import { draftPages } from "./draft-page.tsx";
import { firmRoutes } from "./firm.tsx";
import { deviceOf } from "./screen.ts";

/** What a form that begins a draft names it: sent twice, it is one. */
const KEY = /^[\w-]{8,64}$/;
const ID = ":id{[\\w-]+}";
/** The address of a draft at a step. */
const pathOf = ({ id }: Pick<Draft, "id">, step: DraftStep): string => `/drafts/${id}/${step}`;

/** A job told in five steps, kept as it is typed, and opened with the last. */
export function draftRoutes(liveJobs: LiveJobs, world: Dependencies) {
  const app = new Hono();
  const drafts = createLiveDrafts(world, liveJobs);
  const show = draftPages(world, drafts, liveJobs);
  const wrongAt = (c: Context, draft: Draft, step: DraftStep) =>
    Object.keys(problemsAt(step, draft.fields, drafts.now(), c.get("words"))).length > 0;

  /** Takes a tent of the list as it was shown. Gives `null` where it is another by now; what was typed beside it is kept. */
  async function taken(c: Context, id: string, form: Fields): Promise<Draft | null> {
    const { tent = "", digest } = form;
    const is = await createTentCatalog(world, c.get("words")).get(tent);
    if (digest === undefined || digest === tentDigest(is)) return drafts.pick(id, tent, c.get("words"));
    await drafts.type(id, "tent", besideTent(form));
    return null;
  }

  /** The tent that stood on the page before somebody typed: one of the list that was looked at, or the draft's. */
  async function drawnBefore(c: Context, tent: string | undefined): Promise<Fields> {
    const words = c.get("words");
    if (tent !== undefined) return withListedTent({}, await createTentCatalog(world, words).get(tent), words);
    const { draft } = c.req.query();
    return draft === undefined ? {} : (await drafts.get(draft)).fields;
  }

  app.route("/", draftListRoutes(drafts));
  app.route("/", firmRoutes(world, drafts));
  app.get("/drafts/new", (c) => show.step(c, null, "tent", { tent: c.req.query("tent") }));
  app.post("/drafts/preview", async (c) => {
    const words = c.get("words");
    const form = await formBody(c);
    const told = withTyped(await drawnBefore(c, form.tent), "tent", form);
    const { preview, problems } = previewOf(told, words);
    const on = { drawn: drawnOf(told), ends: endsAsked(told) };
    return c.html(await (<TentStepPreview preview={preview} {...on} problems={problems} words={words} />).toString());
  });
  app.post("/drafts", async (c) => {
    const form = await formBody(c);
    const { copy, key = "", go = "on" } = form;
    if (go === "back" && saysNothing(form)) return c.redirect("/", 303);
    if (form.tent !== undefined) await createTentCatalog(world, c.get("words")).get(form.tent);
    const draft = await drafts.begin(KEY.test(key) ? key : world.newId(), copy ?? null, c.get("words"));
    if (draft.opened) return toldOpened(c, draft);
    if (form.tent !== undefined && !(await taken(c, draft.id, form))) return c.redirect(`${pathOf(draft, "tent")}?tent=${form.tent}`, 303);
    const told = await drafts.type(draft.id, "tent", form);
    if (go === "back") return c.redirect("/", 303);
    const isRight = copy === undefined && go === "on" && !wrongAt(c, told, "tent");
    if (isRight) return c.redirect(pathOf(draft, isToBeSeen(told.fields, form) ? "tent" : "sheet"), 303);
    const nothing = form.tent === undefined && !form["tent.widthFt"] && !form["tent.lengthFt"];
    return c.redirect(`${pathOf(draft, "tent")}${copy || nothing ? "" : "?wrong=yes"}`, 303);
  });

  app.get(`/drafts/${ID}`, (c) => c.redirect(`/drafts/${c.req.param("id")}/tent`, 303));
  app.get(`/drafts/${ID}/:step`, async (c) => {
    const draft = await drafts.get(c.req.param("id"));
    const step = stepOf(c);
    if (draft.opened) return show.opened(c, draft.opened);
    return show.step(c, draft, step, { wrong: c.req.query("wrong") !== undefined, tent: c.req.query("tent") });
  });
  app.post(`/drafts/${ID}/:step`, async (c) => {
    const id = c.req.param("id");
    const step = stepOf(c);
    const words = c.get("words");
    const form = await formBody(c);
    const { go = "on" } = form;
    const before = await drafts.get(id);
    const takes = !before.opened && step === "tent" && form.tent !== undefined && !["back", "stay"].includes(go);
    if (takes && !(await taken(c, id, form))) return show.step(c, await drafts.get(id), step, { tent: form.tent, status: 409 });
    if (go === "keep") await drafts.keepDrawn(id);
    // Of a tent that is only looked at nothing is typed.
    const looks = step === "tent" && form.tent !== undefined && !takes;
    const draft = await drafts.type(id, step, looks ? besideTent(form) : form);
    if (draft.opened) return toldOpened(c, draft);
    if (go === "back") return c.redirect(stepFrom(step, -1) === null ? "/" : pathOf(draft, stepFrom(step, -1)!), 303);
    if (go === "look") return c.redirect(`${pathOf(draft, step)}?wrong=yes`, 303);
    if (go === "more") return c.redirect(`${pathOf(draft, step)}?more=1`, 303);
    if (go === "ground") return c.redirect(`/drafts/${draft.id}/ground-plan`, 303);
    if (go === "people") return c.redirect(`/firm/people?draft=${draft.id}`, 303);
    if (go === "anchors") return c.redirect(`/drafts/${draft.id}/anchors`, 303);
    if (go === "weather") return c.redirect(`/drafts/${draft.id}/weather-plan`, 303);
    if (go === "stay" || go === "soil") return c.redirect(pathOf(draft, step), 303);
    if (step === "tent" && (await drafts.stale(draft, words))) return show.step(c, draft, step, { status: 409 });
    const left = leftBehind(draft.fields, step, form);
    if (Object.keys(left).length > 0) return show.step(c, draft, step, { left: placesOf(left), status: 422 });
    if (step === "tent" && go === "on" && !wrongAt(c, draft, step) && isToBeSeen(draft.fields, form))
      return c.redirect(pathOf(draft, step), 303);
    if (wrongAt(c, draft, step)) return show.step(c, draft, step, { wrong: true, status: 422 });
    const next = stepFrom(step, 1);
    return next === null ? opened(c, draft) : c.redirect(pathOf(draft, next), 303);
  });

  /** Opens it, or leads to where something is still wrong. */
  async function opened(c: Context, draft: Draft) {
    const went = await drafts.open(draft.id, deviceOf(c), c.get("words"));
    if ("step" in went) return c.redirect(`${pathOf(draft, went.step)}?wrong=yes`, 303);
    return went.before ? toldOpened(c, await drafts.get(draft.id)) : c.redirect(`/jobs/${went.as.job}`, 303);
  }
  /** The phone that opened it is led on, and any other told who did. */
  function toldOpened(c: Context, draft: Draft) {
    const as = draft.opened!;
    return as.device === deviceOf(c) ? c.redirect(`/jobs/${as.job}`, 303) : show.opened(c, as, 409);
  }
  return app;
}

/** What of a tent's form is no tent. */
const besideTent = (form: Fields): Fields => without(form, (name) => /^(?:was\.)?tent\./.test(name));
/** Whether nobody has typed anything in a form that would begin a draft. */
const saysNothing = (form: Fields): boolean => Object.values(withTyped({}, "tent", form)).every((value) => value.trim() === "");

function stepOf(c: Context): DraftStep {
  const name = c.req.param("step") ?? "";
  const step = draftStep(name);
  if (step === null) throw new Problem(404, (w) => w.draft.noStep(name));
  return step;
}
