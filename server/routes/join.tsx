import { type Context, Hono } from "hono";
import type { LiveJob } from "../../machines/conversation/live-job.ts";
import { readLetters, shownLetters } from "../../machines/digest/letters.ts";
import type { Role } from "../../machines/install/brief.ts";
import { COMPETENT } from "../../machines/install/gates.ts";
import { currentStep } from "../../machines/install/job.ts";
import { type JoinedWith, JoinPage } from "../../views/pages/join/view.tsx";
import type { Entrance } from "../access/entrance.ts";
import { Problem } from "../input/problem.ts";
import type { LiveJobs } from "../jobs.ts";
import type { JoinCode } from "../journal/access.ts";
import { formBody } from "./body.ts";
import { page } from "./page.ts";

/** Who gets on with the code of those who lead alone: who drives, answers for it, or reads what was skipped. */
const WITH_LEADS_CODE: readonly Role[] = [...COMPETENT, "manager"];
const MAX_CODE = 40;

/** Getting on a job with a code and a name. */
export function joinRoutes(liveJobs: LiveJobs, entrance: Entrance) {
  const app = new Hono();
  const jobAsked = (job: string | undefined): string | null => (job !== undefined && /^[\w-]{1,80}$/.test(job) ? job : null);

  const into = (c: Context, live: LiveJob, { code, job, leads }: JoinCode): JoinedWith => {
    const { brief } = live.job.frozen;
    const words = c.get("words");
    const people = brief.crew.filter(({ role }) => leads || !WITH_LEADS_CODE.includes(role));
    return {
      job,
      title: brief.title,
      code: shownLetters(code),
      leads,
      people: people.map(({ id, role }) => ({ id, name: live.names[id] ?? id, roleName: words.roleName(role) })),
    };
  };
  type Asked = { readonly job: string | null; readonly typed: string; readonly problem: string | null; readonly into: JoinedWith | null };
  const joinPage = (c: Context, asked: Asked) => page(c, <JoinPage {...asked} words={c.get("words")} />);
  const refused = (c: Context, error: unknown, asked: Pick<Asked, "job" | "typed">) => {
    if (!(error instanceof Problem)) throw error;
    return c.html(joinPage(c, { ...asked, problem: error.sentence(c.get("words")), into: null }), error.status);
  };

  /** The job of a code. Throws a Problem where it is closed: its codes let nobody on any more. */
  const openJobOf = async ({ job }: JoinCode): Promise<LiveJob> => {
    const live = await liveJobs.load(job);
    if (currentStep(live.job) === null) throw new Problem(403, (w) => w.join.closed);
    return live;
  };

  app.get("/join", async (c) => {
    const job = jobAsked(c.req.query("job"));
    const typed = (c.req.query("code") ?? "").slice(0, MAX_CODE);
    const { isForged } = c.get("visitor");
    if (readLetters(typed) === "")
      return c.html(joinPage(c, { job, typed, problem: isForged ? c.get("words").join.forged : null, into: null }));
    try {
      const code = await entrance.tryCode(c.get("visitor"), typed, job);
      const live = await openJobOf(code);
      return c.html(joinPage(c, { job: code.job, typed, problem: null, into: into(c, live, code) }));
    } catch (error) {
      return refused(c, error, { job, typed });
    }
  });

  app.post("/join", async (c) => {
    const { code: sent = "", job: asked, person = "" } = await formBody(c);
    const job = jobAsked(asked);
    const typed = sent.slice(0, MAX_CODE);
    try {
      const code = await entrance.tryCode(c.get("visitor"), typed, job);
      const live = await openJobOf(code);
      const { people } = into(c, live, code);
      const known = live.job.frozen.brief.crew.find(({ id }) => id === person);
      if (!people.some(({ id }) => id === person))
        throw new Problem(403, (w) => (known ? w.join.notWithThis(live.names[known.id] ?? known.id) : w.join.notListed));
      await c.get("access").letIn(c, code.job, [person]);
      return c.redirect(`/jobs/${code.job}?as=${encodeURIComponent(person)}`, 303);
    } catch (error) {
      return refused(c, error, { job, typed });
    }
  });
  return app;
}
