import { type Context, Hono } from "hono";
import { getCookie } from "hono/cookie";
import { buildGuideState } from "../../views/pages/guide/build-state.ts";
import { GuidePage, Live } from "../../views/pages/guide/view.tsx";
import { MorePage } from "../../views/pages/more/view.tsx";
import { effectText } from "../../views/parts/effect.ts";
import { briefFromForm } from "../input/brief-from-form.ts";
import { briefToForm } from "../input/brief-to-form.ts";
import { type Fields, sayFromForm } from "../input/form.ts";
import type { Dependencies, LiveJobs } from "../jobs.ts";
import { amendment, type LiveJob } from "../live-job.ts";
import { formBody, jsonBody, wantsJson } from "./body.ts";
import { briefPage, planPage, refusedBrief, wantsPlan } from "./brief-page.tsx";
import { follow } from "./follow.ts";
import { page } from "./page.ts";
import { sayTo } from "./say.ts";
import { deviceOf, holderOf } from "./screen.ts";

/** The guide of one job: page, JSON, commands, and the stream that keeps a second screen up to date. */
export function guideRoutes(desks: LiveJobs, { hub, now, newId }: Dependencies) {
  const app = new Hono();
  const guide = (live: LiveJob, on: string | null = null) => buildGuideState(live, now(), on);
  const device = (c: Context) => deviceOf(c, newId);

  app.get("/jobs/:file{[\\w-]+\\.json}", async (c) =>
    c.json(guide(await desks.load(c.req.param("file").slice(0, -".json".length)), getCookie(c, "device") ?? null)),
  );
  app.get("/jobs/:id{[\\w-]+}", async (c) => {
    const live = await desks.load(c.req.param("id"));
    const screen = { guide: guide(live, device(c)), me: holderOf(c, live), newKey: newId };
    return c.html(page(<GuidePage {...screen} notice={c.req.query("reply") ?? null} />));
  });
  app.get("/jobs/:id{[\\w-]+}/more", async (c) => {
    const live = await desks.load(c.req.param("id"));
    return c.html(page(<MorePage guide={guide(live)} me={holderOf(c, live)} newKey={newId} wakeWord={desks.wakeWord} />));
  });
  const amending = (id: string) => ({ action: `/jobs/${id}/amend`, newKey: newId, amending: true });
  /** What a form would change of the job as it stands. Throws a Problem where it cannot be read. */
  const effectOf = (live: LiveJob, fields: Fields) => {
    const to = amendment(live, briefFromForm(fields));
    return effectText(live.job, to.frozen, (person) => ({ ...live.names, ...to.names })[person] ?? person);
  };
  app.get("/jobs/:id{[\\w-]+}/amend", async (c) => {
    const id = c.req.param("id");
    const { job, names } = await desks.load(id);
    return briefPage(c, briefToForm(job.frozen.brief, names), amending(id));
  });
  app.post("/jobs/:id{[\\w-]+}/amend", async (c) => {
    const id = c.req.param("id");
    const fields = await formBody(c);
    if (wantsPlan(fields)) return planPage(c, fields, amending(id));
    try {
      const live = await desks.load(id);
      if (fields.show === "changes") return briefPage(c, fields, { ...amending(id), effect: effectOf(live, fields) });
      const { key, because } = fields;
      const seen = live.job.snapshot.context.revision;
      const body = { as: holderOf(c, live) ?? "", key, seen, type: "amend", because, brief: briefFromForm(fields) };
      const { reply } = await sayTo(desks, id, body, { source: "press", device: device(c) });
      return c.redirect(`/jobs/${id}?reply=${encodeURIComponent(reply.reply)}`, 303);
    } catch (error) {
      return refusedBrief(c, fields, error, amending(id));
    }
  });
  // A swap gets the three regions as partials; a script its JSON; a page without scripts is sent back to the guide.
  app.post("/jobs/:id{[\\w-]+}/say", async (c) => {
    const id = c.req.param("id");
    if (wantsJson(c)) {
      const from = { source: "office", device: getCookie(c, "device") ?? "office" } as const;
      return c.json((await sayTo(desks, id, await jsonBody(c), from)).reply);
    }
    const fields = await formBody(c);
    const { reply, live } = await sayTo(desks, id, sayFromForm(fields), { source: "press", device: device(c) });
    if (c.req.header("hx-request-type") === "partial")
      return c.html(
        await (
          <Live
            guide={guide(live, device(c))}
            me={holderOf(c, live)}
            newKey={newId}
            notice={reply.reply}
            cue={{ went: reply.went, heard: reply.heard, no: newId() }}
          />
        ).toString(),
      );
    return c.redirect(`/jobs/${id}?reply=${encodeURIComponent([...reply.reply].slice(0, 500).join(""))}`, 303);
  });
  app.get("/jobs/:id{[\\w-]+}/now", async (c) => {
    const live = await desks.load(c.req.param("id"));
    return c.html(await (<Live guide={guide(live, device(c))} me={holderOf(c, live)} newKey={newId} notice={null} />).toString());
  });
  app.get("/jobs/:id{[\\w-]+}/live", async (c) => {
    const id = c.req.param("id");
    const me = holderOf(c, await desks.load(id));
    const on = device(c);
    return follow(c, hub, id, async () => {
      const state = guide(await desks.load(id), on);
      return { entry: state.entry, html: await (<Live guide={state} me={me} newKey={newId} notice={null} />).toString() };
    });
  });
  return app;
}
