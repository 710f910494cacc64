import { type Context, Hono } from "hono";
import type { LiveJob } from "../../machines/conversation/live-job.ts";
import { drawnOf } from "../../views/drawing/call/drawn.ts";
import { buildGuideState } from "../../views/pages/guide/build-state.ts";
import { Desk } from "../../views/pages/guide/desk.tsx";
import { GuidePage, Live } from "../../views/pages/guide/view.tsx";
import { effectText } from "../../views/parts/effect.ts";
import { hurtState } from "../../views/parts/hurt-state.ts";
import { HurtLive } from "../../views/parts/page.tsx";
import type { Screen } from "../../views/parts/say-form.tsx";
import type { Words } from "../../views/text/words.ts";
import { readAmendment, refuseIfClosed } from "../input/amendment.ts";
import { briefFromForm, withParts } from "../input/brief-from-form.ts";
import { briefToForm } from "../input/brief-to-form.ts";
import { type Fields, sayFromForm } from "../input/form.ts";
import type { Dependencies, LiveJobs } from "../jobs.ts";
import { backTo } from "./back-to.ts";
import { besideGuide } from "./beside-guide.tsx";
import { formBody, jsonBody, wantsJson } from "./body.ts";
import { briefPage, planPage, refusedBrief, wantsPlan } from "./brief-page.tsx";
import { follow } from "./follow.ts";
import { hurtOn } from "./hurt-on.ts";
import { page } from "./page.ts";
import { sayTo } from "./say.ts";
import { deviceOf, holderOf, knownDevice, quartersOf } from "./screen.ts";

/** The guide of one job: page, JSON, commands, and the stream that keeps a second screen up to date. */
export function guideRoutes(liveJobs: LiveJobs, { hub, newId }: Dependencies) {
  const app = new Hono();
  const guide = (c: Context, live: LiveJob, on: string | null) => buildGuideState(live, on, c.get("words"));
  const device = (c: Context) => deviceOf(c, newId);
  const screen = (c: Context, live: LiveJob, on: string | null): Screen => ({
    guide: guide(c, live, on),
    drawn: drawnOf(live, quartersOf(c, live)),
    me: holderOf(c, live),
    newKey: newId,
    words: c.get("words"),
    pick: c.req.query("pick") ?? null,
  });

  app.get("/jobs/:file{[\\w-]+\\.json}", async (c) =>
    c.json(guide(c, await liveJobs.load(c.req.param("file").slice(0, -".json".length)), knownDevice(c))),
  );
  app.get("/jobs/:id{[\\w-]+}", async (c) => {
    const live = await liveJobs.load(c.req.param("id"));
    return c.html(page(c, <GuidePage {...screen(c, live, device(c))} notice={c.req.query("reply") ?? null} />));
  });
  app.get("/jobs/:id{[\\w-]+}/drawing", async (c) => {
    const live = await liveJobs.load(c.req.param("id"));
    return c.html(<Desk {...screen(c, live, null)} />);
  });
  besideGuide(app, liveJobs, (c, live) => screen(c, live, null));
  const amending = async (c: Context) => ({
    action: `/jobs/${c.req.param("id")}/amend`,
    newKey: newId,
    amending: c.req.param("id")!,
    hurt: await hurtOn(c, liveJobs),
  });
  /** What a form would change of the job as it stands. Throws a Problem where it cannot be read. */
  const effectOf = (live: LiveJob, fields: Fields, words: Words) => {
    const { job, names } = live;
    refuseIfClosed(job);
    const to = readAmendment(live, briefFromForm(withParts(fields)));
    return effectText(job, to.frozen, (person) => ({ ...names, ...to.names })[person] ?? person, words);
  };
  app.get("/jobs/:id{[\\w-]+}/amend", async (c) => {
    const id = c.req.param("id");
    const { job, names } = await liveJobs.load(id);
    return briefPage(c, briefToForm(job.frozen.brief, names, c.get("words")), await amending(c));
  });
  app.post("/jobs/:id{[\\w-]+}/amend", async (c) => {
    const id = c.req.param("id");
    const fields = await formBody(c);
    if (wantsPlan(fields)) return planPage(c, fields, await amending(c));
    try {
      const live = await liveJobs.load(id);
      if (fields.show === "changes")
        return briefPage(c, fields, { ...(await amending(c)), effect: effectOf(live, fields, c.get("words")) });
      const { key, because } = fields;
      const seen = live.job.snapshot.context.revision;
      const body = { as: holderOf(c, live) ?? "", key, seen, type: "amend", because, brief: briefFromForm(withParts(fields)) };
      const { reply } = await sayTo(liveJobs, id, body, { source: "press", device: device(c) }, c.get("words"));
      return backTo(c, `/jobs/${id}`, reply.reply);
    } catch (error) {
      return refusedBrief(c, fields, error, await amending(c));
    }
  });
  // A swap gets the regions as partials; a script its JSON; a page without scripts is sent back to the guide.
  app.post("/jobs/:id{[\\w-]+}/say", async (c) => {
    const id = c.req.param("id");
    const words = c.get("words");
    if (wantsJson(c)) {
      const from = { source: "office", device: knownDevice(c) ?? "office" } as const;
      return c.json((await sayTo(liveJobs, id, await jsonBody(c), from, words)).reply);
    }
    const fields = await formBody(c);
    const { reply, live } = await sayTo(liveJobs, id, sayFromForm(fields), { source: "press", device: device(c) }, words);
    if (c.req.header("hx-request-type") === "partial")
      return c.html(
        await (
          <Live {...screen(c, live, device(c))} notice={reply.reply} cue={{ went: reply.went, heard: reply.heard, no: newId() }} />
        ).toString(),
      );
    return backTo(c, `/jobs/${id}`, reply.reply);
  });
  app.get("/jobs/:id{[\\w-]+}/now", async (c) => {
    const live = await liveJobs.load(c.req.param("id"));
    return c.html(await (<Live {...screen(c, live, device(c))} notice={null} />).toString());
  });
  app.get("/jobs/:id{[\\w-]+}/live", async (c) => {
    const id = c.req.param("id");
    const on = device(c);
    const first = screen(c, await liveJobs.load(id), on);
    return follow(c, hub, id, async () => {
      const live = await liveJobs.load(id);
      const state = guide(c, live, on);
      return {
        entry: state.entry,
        html: await (<Live {...first} guide={state} drawn={drawnOf(live, quartersOf(c, live))} notice={null} />).toString(),
      };
    });
  });
  // For the pages that stay as they are otherwise: somebody hurt stands on each of them at once.
  app.get("/jobs/:id{[\\w-]+}/hurt/live", async (c) => {
    const id = c.req.param("id");
    const words = c.get("words");
    await liveJobs.load(id);
    return follow(c, hub, id, async () => {
      const live = await liveJobs.load(id);
      return { entry: live.entries.at(-1)!.entry.no, html: await (<HurtLive hurt={hurtState(live, words)} words={words} />).toString() };
    });
  });
  return app;
}
