import { Hono } from "hono";
import type { LiveJob } from "../../machines/conversation/live-job.ts";
import { freezeOn } from "../../machines/install/freeze.ts";
import type { Parsed } from "../input/brief.ts";
import { Problem } from "../input/problem.ts";
import type { Dependencies, LiveJobs } from "../jobs.ts";
import { requestDigest } from "../next-entry.ts";
import { formBody } from "./body.ts";

const DAY_MS = 24 * 3600 * 1000;

/** A job opened once more as a rehearsal: the same tent and crew, today's procedure, nothing at stake. */
export function rehearseRoutes(liveJobs: LiveJobs, { newId }: Dependencies) {
  return new Hono().post("/jobs/:id{[\\w-]+}/rehearse", async (c) => {
    const id = c.req.param("id");
    const { key } = await formBody(c);
    if (key !== undefined && !/^[\w.-]{8,80}$/.test(key)) throw new Problem(422, (w) => w.errors.keyShape);
    const opened = await liveJobs.open(rehearsalOf(await liveJobs.load(id)), key ?? newId(), requestDigest({ rehearse: id }));
    // Nothing is at stake there: who opened it plays everybody.
    const { crew } = (await liveJobs.load(opened)).job.frozen.brief;
    await c.get("access").letIn(
      c,
      opened,
      crew.map((person) => person.id),
    );
    return c.redirect(`/jobs/${opened}`, 303);
  });
}

/** The ticket is taken to be in force, so that a job of next month can be rehearsed today; its number is asked as always. */
function rehearsalOf({ job, names, now: { wall } }: LiveJob): Parsed {
  const { brief, plan } = job.frozen;
  const ticket = brief.ticket && { ...brief.ticket, validFrom: wall - DAY_MS, validTo: wall + 14 * DAY_MS };
  const practiced = { ...brief, ticket, rehearsal: true as const };
  return { frozen: freezeOn(plan, practiced), names };
}
