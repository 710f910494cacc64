import { type Context, Hono } from "hono";
import type { LiveJob } from "../../machines/conversation/live-job.ts";
import { AMENDED_PARTS, type AmendedPart } from "../../views/pages/open-job/view.tsx";
import { effectText } from "../../views/parts/effect.ts";
import type { Words } from "../../views/text/words.ts";
import { readAmendment, refuseIfClosed, refuseIfWaiting } from "../input/amendment.ts";
import { briefFromForm, withParts } from "../input/brief-from-form.ts";
import { briefToForm } from "../input/brief-to-form.ts";
import type { Fields } from "../input/form.ts";
import type { Dependencies, LiveJobs } from "../jobs.ts";
import { backTo } from "./back-to.ts";
import { formBody } from "./body.ts";
import { briefPage, planPage, refusedBrief, wantsPlan } from "./brief-page.tsx";
import { hurtOn } from "./hurt-on.ts";
import { sayTo } from "./say.ts";
import { deviceOf, holderOf, speaksOf } from "./screen.ts";

/**
 * A change of a job's brief, put forward for a second person to agree to: the whole form, or only the part that a call refused
 * over (`?only=crew`), which leaves the rest as it stands.
 */
export function amendRoutes(liveJobs: LiveJobs, { newId }: Dependencies) {
  const app = new Hono();
  const onlyOf = (c: Context): AmendedPart | null => AMENDED_PARTS.find((part) => part === c.req.query("only")) ?? null;
  const form = async (c: Context) => {
    const only = onlyOf(c);
    return {
      action: `/jobs/${c.req.param("id")}/amend${only ? `?only=${only}` : ""}`,
      newKey: newId,
      amending: c.req.param("id")!,
      only,
      hurt: await hurtOn(c, liveJobs),
    };
  };
  /** What a form would change of the job as it stands. Throws a Problem where it cannot be read. */
  const effectOf = (live: LiveJob, fields: Fields, words: Words) => {
    const { job, names } = live;
    refuseIfClosed(job);
    const to = readAmendment(live, briefFromForm(withParts(fields)));
    return effectText(job, to.frozen, (person) => ({ ...names, ...to.names })[person] ?? person, words);
  };

  app.get("/jobs/:id{[\\w-]+}/amend", async (c) => {
    const words = c.get("words");
    const { job, names } = await liveJobs.load(c.req.param("id"));
    const only = onlyOf(c);
    const because = only ? words.openJob.becauseOf[only] : "";
    return briefPage(c, { ...briefToForm(job.frozen.brief, names, words), because }, await form(c));
  });
  app.post("/jobs/:id{[\\w-]+}/amend", async (c) => {
    const id = c.req.param("id");
    const words = c.get("words");
    const typed = await formBody(c);
    const live = await liveJobs.load(id);
    const fields = withRest(live, typed, onlyOf(c), words);
    if (wantsPlan(fields)) return planPage(c, fields, await form(c));
    try {
      if (fields.show === "changes") return briefPage(c, fields, { ...(await form(c)), effect: effectOf(live, fields, words) });
      const { key, because } = fields;
      refuseIfWaiting(live, key);
      const seen = live.job.snapshot.context.revision;
      const body = { as: holderOf(c, live) ?? "", key, seen, type: "amend", because, brief: briefFromForm(withParts(fields)) };
      const { reply } = await sayTo(liveJobs, id, body, { source: "press", device: deviceOf(c), speaks: speaksOf(c) }, words);
      return backTo(c, `/jobs/${id}`, reply.reply);
    } catch (error) {
      return refusedBrief(c, fields, error, await form(c));
    }
  });
  return app;
}

/** What was typed of a part, with the rest of the brief as it stands; the whole form is all of it. */
function withRest({ job, names }: LiveJob, typed: Fields, only: AmendedPart | null, words: Words): Fields {
  if (!only) return typed;
  const stands = Object.entries(briefToForm(job.frozen.brief, names, words)).filter(([name]) => !name.startsWith(`${only}.`));
  return { ...Object.fromEntries(stands), ...typed };
}
