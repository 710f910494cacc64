import { type Context, Hono } from "hono";
import { buildHome } from "../../views/pages/home/build-state.ts";
import { HomePage } from "../../views/pages/home/view.tsx";
import { PlanPage } from "../../views/pages/plan/view.tsx";
import { readBrief, readOpening } from "../input/brief.ts";
import { briefFromForm } from "../input/brief-from-form.ts";
import { usualTent } from "../input/tent.ts";
import type { Dependencies, LiveJobs } from "../jobs.ts";
import { requestDigest } from "../next-entry.ts";
import { createTentCatalog } from "../tent-catalog.ts";
import { formBody, jsonBody, wantsJson } from "./body.ts";
import { briefPage, planPage, refusedBrief, wantsPlan } from "./brief-page.tsx";
import { hurtOn } from "./hurt-on.ts";
import { page } from "./page.ts";

/** The list of jobs, opening one, and its plan. Each page has its facts as JSON on the same path with `.json`. */
export function jobRoutes(liveJobs: LiveJobs, world: Dependencies) {
  const { journal, newId } = world;
  const app = new Hono();
  // From what is kept of each: to read every opening would keep a hold waiting.
  const listed = async (c: Context) => {
    const [kept, names] = await Promise.all([journal.folds(), journal.allNames()]);
    return buildHome({ kept, names, wall: world.clock().wall }, c.req.query("q") ?? "", c.get("words"));
  };
  const plan = async (id: string) => {
    const { job } = await liveJobs.load(id);
    return { job: { id, title: job.frozen.brief.title, rehearsal: job.frozen.brief.rehearsal === true }, plan: job.frozen.plan };
  };

  app.get("/", async (c) => c.html(page(c, <HomePage state={await listed(c)} words={c.get("words")} />)));
  app.get("/jobs.json", async (c) => c.json(await listed(c)));
  const opening = { action: "/jobs", newKey: newId };
  app.get("/jobs/new", async (c) => {
    const { tent, width, length } = c.req.query();
    return briefPage(c, tent === undefined ? usualTent(width, length) : await createTentCatalog(world, c.get("words")).form(tent), opening);
  });
  app.get("/jobs/:id{[\\w-]+}/plan.json", async (c) => c.json(await plan(c.req.param("id"))));
  app.get("/jobs/:id{[\\w-]+}/plan", async (c) =>
    c.html(page(c, <PlanPage {...(await plan(c.req.param("id")))} hurt={await hurtOn(c, liveJobs)} words={c.get("words")} />)),
  );
  app.post("/jobs", async (c) => {
    if (wantsJson(c)) {
      const body = await jsonBody(c);
      const { key = newId(), brief } = readOpening(body);
      const id = await liveJobs.open(readBrief(brief), key, requestDigest(brief));
      const { job, names } = await liveJobs.load(id);
      return c.json({ job: id, title: job.frozen.brief.title, people: names, entry: 1 }, 201);
    }
    const fields = await formBody(c);
    if (wantsPlan(fields)) return planPage(c, fields, opening);
    try {
      const { key, ...rest } = fields;
      const id = await liveJobs.open(readBrief(briefFromForm(fields)), key ?? newId(), requestDigest(rest));
      return c.redirect(`/jobs/${id}`, 303);
    } catch (error) {
      return refusedBrief(c, fields, error, opening);
    }
  });
  return app;
}
