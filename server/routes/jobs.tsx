import { Hono } from "hono";
import { HomePage } from "../../views/pages/home/view.tsx";
import { PlanPage } from "../../views/pages/plan/view.tsx";
import { placeName } from "../../views/pages/record/lines.ts";
import { record } from "../../views/text/en/record.ts";
import { readBrief, readOpening } from "../input/brief.ts";
import { briefFromForm } from "../input/brief-from-form.ts";
import { usualTent } from "../input/tent.ts";
import { type Dependencies, type LiveJobs, requestDigest } from "../jobs.ts";
import { createTentCatalog } from "../tent-catalog.ts";
import { formBody, jsonBody, wantsJson } from "./body.ts";
import { briefPage, planPage, refusedBrief, wantsPlan } from "./brief-page.tsx";
import { page } from "./page.ts";

/** The list of jobs, opening one, and its plan. Each page has its facts as JSON on the same path with `.json`. */
export function jobRoutes(desks: LiveJobs, world: Dependencies) {
  const { journal, newId } = world;
  const shelf = createTentCatalog(world);
  const app = new Hono();
  // From what is kept of each: to read every opening would keep a hold waiting.
  const listed = () =>
    journal.folds().flatMap(({ job, entries, fold }) =>
      fold
        ? [
            {
              id: job,
              title: fold.title,
              size: record.size(fold.widthFt, fold.lengthFt),
              phase: fold.phase,
              phaseName: placeName(fold.phase),
              entries,
              rehearsal: fold.rehearsal,
            },
          ]
        : [],
    );
  const plan = (id: string) => {
    const { job } = desks.load(id);
    return { job: { id, title: job.frozen.brief.title, rehearsal: job.frozen.brief.rehearsal === true }, plan: job.frozen.plan };
  };

  app.get("/", (c) => c.html(page(<HomePage jobs={listed()} />)));
  app.get("/jobs.json", (c) => c.json({ jobs: listed() }));
  const opening = { action: "/jobs", newKey: newId };
  app.get("/jobs/new", (c) => {
    const { tent, width, length } = c.req.query();
    return briefPage(c, tent === undefined ? usualTent(width, length) : shelf.form(tent), opening);
  });
  app.get("/jobs/:id{[\\w-]+}/plan.json", (c) => c.json(plan(c.req.param("id"))));
  app.get("/jobs/:id{[\\w-]+}/plan", (c) => c.html(page(<PlanPage {...plan(c.req.param("id"))} />)));
  app.post("/jobs", async (c) => {
    if (wantsJson(c)) {
      const body = await jsonBody(c);
      const { key = newId(), brief } = readOpening(body);
      const id = desks.open(readBrief(brief), key, requestDigest(brief));
      const { job } = desks.load(id);
      return c.json({ job: id, title: job.frozen.brief.title, people: desks.load(id).names, entry: 1 }, 201);
    }
    const fields = await formBody(c);
    if (wantsPlan(fields)) return planPage(c, fields, opening);
    try {
      const { key, ...rest } = fields;
      const id = desks.open(readBrief(briefFromForm(fields)), key ?? newId(), requestDigest(rest));
      return c.redirect(`/jobs/${id}`, 303);
    } catch (error) {
      return refusedBrief(c, fields, error, opening);
    }
  });
  return app;
}
