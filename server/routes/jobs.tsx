import { type Context, Hono } from "hono";
import { buildHome } from "../../views/pages/home/build-state.ts";
import { HomePage } from "../../views/pages/home/view.tsx";
import { PlanPage } from "../../views/pages/plan/view.tsx";
import type { Words } from "../../views/text/words.ts";
import { isOffice } from "../access/visitor.ts";
import { DEMO_KEY } from "../demo.ts";
import { draftsLeftOff } from "../draft/draft.ts";
import { titleOf } from "../draft/draft-brief.ts";
import { keepForNext } from "../draft/keep-for-next.ts";
import { readBrief, readOpening } from "../input/brief.ts";
import { briefFromForm } from "../input/brief-from-form.ts";
import type { Dependencies, LiveJobs } from "../jobs.ts";
import { requestDigest } from "../next-entry.ts";
import { formBody, jsonBody, wantsJson } from "./body.ts";
import { planPage, refusedBrief, wantsPlan } from "./brief-page.tsx";
import { hurtOn } from "./hurt-on.ts";
import { page } from "./page.ts";

/** So many drafts are offered to go on with. */
const LEFT_OFF = 3;

/** The list of jobs, opening one, and its plan. Each page has its facts as JSON on the same path with `.json`. */
export function jobRoutes(liveJobs: LiveJobs, world: Dependencies) {
  const { journal, newId } = world;
  const app = new Hono();
  // From what is kept of each: to read every opening would keep a hold waiting.
  const listed = async (c: Context) => {
    const [folds, names] = await Promise.all([journal.folds(), journal.allNames()]);
    const mine = await jobsFor(c);
    const kept = mine === null ? folds : folds.filter(({ job, fold }) => mine.jobs.has(job) || (mine.rehearsals && fold?.rehearsal));
    return buildHome({ kept, names, wall: world.clock().wall }, c.req.query("q") ?? "", c.get("words"));
  };
  /** The jobs that a visitor hears of, and whether of rehearsals too; `null` is all of them. */
  const jobsFor = async (c: Context) => {
    const visitor = c.get("visitor");
    if (isOffice(visitor) || visitor.token) return null;
    const jobs = new Set(visitor.passes.filter(({ until }) => until > visitor.now).map(({ job }) => job));
    const demo = visitor.mode === "thisMachine" ? await journal.openedWith(DEMO_KEY) : null;
    return { jobs: demo ? jobs.add(demo.entry.job) : jobs, rehearsals: visitor.mode === "thisMachine" };
  };
  const plan = async (id: string) => {
    const { job } = await liveJobs.load(id);
    return { job: { id, title: job.frozen.brief.title, rehearsal: job.frozen.brief.rehearsal === true }, plan: job.frozen.plan };
  };

  const leftOff = async (words: Words) =>
    (await draftsLeftOff(journal.drafts, LEFT_OFF)).map(({ id, fields }) => ({ id, title: titleOf(fields, words) }));

  app.get("/", async (c) => {
    const words = c.get("words");
    return c.html(
      page(
        c,
        <HomePage state={await listed(c)} office={isOffice(c.get("visitor")) ? { drafts: await leftOff(words) } : null} words={words} />,
      ),
    );
  });
  app.get("/jobs.json", async (c) => c.json(await listed(c)));
  const opening = { action: "/jobs", newKey: newId };
  app.get("/jobs/new", (c) => {
    const { tent } = c.req.query();
    return c.redirect(tent === undefined ? "/drafts/new" : `/drafts/new?${new URLSearchParams({ tent })}`, 303);
  });
  /** Opens a job with a brief from outside; `request` is the body that it came with. */
  const opened = async (brief: unknown, key: string, request: unknown) => {
    const parsed = readBrief(brief);
    const id = await liveJobs.open(parsed, key, requestDigest(request));
    const live = await liveJobs.load(id);
    await keepForNext(journal.firm, parsed, null, live.entries.at(0)!.entry.at);
    return { id, live };
  };
  app.get("/jobs/:id{[\\w-]+}/plan.json", async (c) => c.json(await plan(c.req.param("id"))));
  app.get("/jobs/:id{[\\w-]+}/plan", async (c) =>
    c.html(page(c, <PlanPage {...(await plan(c.req.param("id")))} hurt={await hurtOn(c, liveJobs)} words={c.get("words")} />)),
  );
  app.post("/jobs", async (c) => {
    if (wantsJson(c)) {
      const body = await jsonBody(c);
      const { key = newId(), brief } = readOpening(body);
      const { id, live } = await opened(brief, key, brief);
      return c.json({ job: id, title: live.job.frozen.brief.title, people: live.names, entry: 1 }, 201);
    }
    const fields = await formBody(c);
    if (wantsPlan(fields)) return planPage(c, fields, opening);
    try {
      const { key, ...rest } = fields;
      const { id } = await opened(briefFromForm(fields), key ?? newId(), rest);
      return c.redirect(`/jobs/${id}`, 303);
    } catch (error) {
      return refusedBrief(c, fields, error, opening);
    }
  });
  return app;
}
