import { type Context, Hono } from "hono";
import { buildGuideState } from "../../views/pages/guide/build-state.ts";
import { GuidePage, Live } from "../../views/pages/guide/view.tsx";
import { MorePage } from "../../views/pages/more/view.tsx";
import { effectText } from "../../views/parts/effect.ts";
import { readAmendment } from "../input/amendment.ts";
import { briefFromForm } from "../input/brief-from-form.ts";
import { briefToForm } from "../input/brief-to-form.ts";
import { type Fields, sayFromForm } from "../input/form.ts";
import type { Dependencies, LiveJobs } from "../jobs.ts";
import { formBody, jsonBody, wantsJson } from "./body.ts";
import { briefPage, planPage, refusedBrief, wantsPlan } from "./brief-page.tsx";
import { follow } from "./follow.ts";
import { page } from "./page.ts";
import { sayTo } from "./say.ts";
import { deviceOf, holderOf, knownDevice } from "./screen.ts";

/** The guide of one job: page, JSON, commands, and the stream that keeps a second screen up to date. */
export function guideRoutes(desks: LiveJobs, { hub, now, newId }: Dependencies) {
  const app = new Hono();
  const guide = (id: string, on: string | null = null) => buildGuideState(desks.load(id), now(), on);
  const device = (c: Context) => deviceOf(c, newId);
  const holder = (c: Context, id: string) => holderOf(c, id, desks);

  app.get("/jobs/:file{[\\w-]+\\.json}", (c) => c.json(guide(c.req.param("file").slice(0, -".json".length), knownDevice(c))));
  app.get("/jobs/:id{[\\w-]+}", (c) => {
    const id = c.req.param("id");
    return c.html(page(<GuidePage guide={guide(id, device(c))} me={holder(c, id)} newKey={newId} notice={c.req.query("reply") ?? null} />));
  });
  app.get("/jobs/:id{[\\w-]+}/more", (c) => {
    const id = c.req.param("id");
    return c.html(page(<MorePage guide={guide(id)} me={holder(c, id)} newKey={newId} wakeWord={desks.wakeWord} />));
  });
  const amending = (id: string) => ({ action: `/jobs/${id}/amend`, newKey: newId, amending: true });
  /** What a form would change of the job as it stands. Throws a Problem where it cannot be read. */
  const effectOf = (id: string, fields: Fields) => {
    const live = desks.load(id);
    const { job, names } = live;
    const to = readAmendment(live, briefFromForm(fields));
    return effectText(job, to.frozen, (person) => ({ ...names, ...to.names })[person] ?? person);
  };
  app.get("/jobs/:id{[\\w-]+}/amend", (c) => {
    const id = c.req.param("id");
    const { job, names } = desks.load(id);
    return briefPage(c, briefToForm(job.frozen.brief, names), amending(id));
  });
  app.post("/jobs/:id{[\\w-]+}/amend", async (c) => {
    const id = c.req.param("id");
    const fields = await formBody(c);
    if (wantsPlan(fields)) return planPage(c, fields, amending(id));
    try {
      if (fields.show === "changes") return briefPage(c, fields, { ...amending(id), effect: effectOf(id, fields) });
      const { key, because } = fields;
      const body = { as: holder(c, id) ?? "", key, seen: guide(id).revision, type: "amend", because, brief: briefFromForm(fields) };
      const reply = sayTo(desks, id, body, { source: "press", device: device(c) });
      return c.redirect(`/jobs/${id}?reply=${encodeURIComponent(reply.reply)}`, 303);
    } catch (error) {
      return refusedBrief(c, fields, error, amending(id));
    }
  });
  // A swap gets the three regions as partials; a script its JSON; a page without scripts is sent back to the guide.
  app.post("/jobs/:id{[\\w-]+}/say", async (c) => {
    const id = c.req.param("id");
    if (wantsJson(c)) return c.json(sayTo(desks, id, await jsonBody(c), { source: "office", device: knownDevice(c) ?? "office" }));
    const fields = await formBody(c);
    const reply = sayTo(desks, id, sayFromForm(fields), { source: "press", device: device(c) });
    if (c.req.header("hx-request-type") === "partial")
      return c.html(
        await (
          <Live
            guide={guide(id, device(c))}
            me={holder(c, id)}
            newKey={newId}
            notice={reply.reply}
            cue={{ went: reply.went, heard: reply.heard, no: newId() }}
          />
        ).toString(),
      );
    return c.redirect(`/jobs/${id}?reply=${encodeURIComponent([...reply.reply].slice(0, 500).join(""))}`, 303);
  });
  app.get("/jobs/:id{[\\w-]+}/now", async (c) => {
    const id = c.req.param("id");
    return c.html(await (<Live guide={guide(id, device(c))} me={holder(c, id)} newKey={newId} notice={null} />).toString());
  });
  app.get("/jobs/:id{[\\w-]+}/live", (c) => {
    const id = c.req.param("id");
    const me = holder(c, id);
    const on = device(c);
    desks.load(id);
    return follow(c, hub, id, async () => {
      const state = guide(id, on);
      return { entry: state.entry, html: await (<Live guide={state} me={me} newKey={newId} notice={null} />).toString() };
    });
  });
  return app;
}
