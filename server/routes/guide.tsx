import { type Context, Hono } from "hono";
import type { LiveJob } from "../../machines/conversation/live-job.ts";
import { drawnOf } from "../../views/drawing/call/drawn.ts";
import { buildGuideState } from "../../views/pages/guide/build-state.ts";
import { Desk } from "../../views/pages/guide/desk.tsx";
import { GuidePage, Live } from "../../views/pages/guide/view.tsx";
import { hurtState } from "../../views/parts/hurt-state.ts";
import { HurtLive } from "../../views/parts/page.tsx";
import type { Screen } from "../../views/parts/say-form.tsx";
import { sayFromForm } from "../input/form.ts";
import type { Dependencies, LiveJobs } from "../jobs.ts";
import { backTo } from "./back-to.ts";
import { besideGuide } from "./beside-guide.tsx";
import { formBody, jsonBody, wantsJson } from "./body.ts";
import { follow } from "./follow.ts";
import { page } from "./page.ts";
import { sayTo } from "./say.ts";
import { accessOf, deviceOf, holderOf, knownDevice, quartersOf, speaksOf } from "./screen.ts";

/** A screen of a job, on a device or on none: what its pages show, and to whom. */
export const screenOn =
  ({ newId }: Pick<Dependencies, "newId">) =>
  (c: Context, live: LiveJob, on: string | null = null): Screen => ({
    guide: buildGuideState(live, on, c.get("words")),
    drawn: drawnOf(live, quartersOf(c, live)),
    me: holderOf(c, live),
    access: accessOf(c, live),
    newKey: newId,
    words: c.get("words"),
    pick: c.req.query("pick") ?? null,
  });

/** The guide of one job: page, JSON, commands, and the stream that keeps a second screen up to date. */
export function guideRoutes(liveJobs: LiveJobs, { hub, newId }: Dependencies) {
  const app = new Hono();
  const guide = (c: Context, live: LiveJob, on: string | null) => buildGuideState(live, on, c.get("words"));
  const device = deviceOf;
  const screen = screenOn({ newId });

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
  // A swap gets the regions as partials; a script its JSON; a page without scripts is sent back to the guide.
  app.post("/jobs/:id{[\\w-]+}/say", async (c) => {
    const id = c.req.param("id");
    const words = c.get("words");
    if (wantsJson(c)) {
      const from = { source: "office", device: knownDevice(c) ?? "office", speaks: speaksOf(c) } as const;
      return c.json((await sayTo(liveJobs, id, await jsonBody(c), from, words)).reply);
    }
    const fields = await formBody(c);
    const { reply, live } = await sayTo(
      liveJobs,
      id,
      sayFromForm(fields),
      { source: "press", device: device(c), speaks: speaksOf(c) },
      words,
    );
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
