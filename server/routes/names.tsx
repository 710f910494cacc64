import { type Context, Hono } from "hono";
import type { LiveJob } from "../../machines/conversation/live-job.ts";
import { currentStep } from "../../machines/install/job.ts";
import { NamesPage } from "../../views/pages/office/names.tsx";
import { Problem } from "../input/problem.ts";
import type { LiveJobs } from "../jobs.ts";
import type { Journal } from "../journal/journal.ts";
import { formBody } from "./body.ts";
import { page } from "./page.ts";

/** The names of one job, erased one by one once it is closed; what somebody learned under theirs goes with it. */
export function nameRoutes(liveJobs: LiveJobs, { learning }: Pick<Journal, "learning">) {
  const app = new Hono();
  const namesPage = (c: Context, { job, names }: LiveJob, problem: string | null, status: Problem["status"] | 200 = 200) => {
    const words = c.get("words");
    const { brief } = job.frozen;
    const roles = new Map(brief.crew.map(({ id, role }) => [id, words.roleName(role)]));
    // Who was on the job once has a name too.
    const people = [...new Set([...roles.keys(), ...Object.keys(names)])].map((id) => ({
      id,
      name: names[id] ?? null,
      roleName: roles.get(id) ?? "",
    }));
    const shown = { job: { id: c.req.param("id")!, title: brief.title }, people, problem, words };
    return c.html(page(c, <NamesPage {...shown} />), status);
  };
  app.get("/jobs/:id{[\\w-]+}/names", async (c) => namesPage(c, await liveJobs.load(c.req.param("id")), null));
  app.post("/jobs/:id{[\\w-]+}/names", async (c) => {
    const id = c.req.param("id");
    const { person = "" } = await formBody(c);
    const live = await liveJobs.load(id);
    if (currentStep(live.job) !== null && live.job.frozen.brief.rehearsal !== true)
      return namesPage(c, live, c.get("words").office.namesOpen, 409);
    if (!Object.hasOwn(live.names, person)) throw new Problem(422, (w) => w.errors.who(person, Object.values(live.names).join(", ")));
    await learning.forget(live.names[person]!);
    await liveJobs.eraseName(id, person);
    return c.redirect(`/jobs/${id}/names`, 303);
  });
  return app;
}
