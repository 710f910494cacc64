import { type Context, Hono } from "hono";
import type { LiveJob } from "../../machines/conversation/live-job.ts";
import type { PersonId } from "../../machines/install/ids.ts";
import type { JobId } from "../../machines/record/entry.ts";
import { drawnOf } from "../../views/drawing/call/drawn.ts";
import { buildGuideState } from "../../views/pages/guide/build-state.ts";
import { Desk } from "../../views/pages/guide/desk.tsx";
import { GuidePage, Live } from "../../views/pages/guide/view.tsx";
import { hurtState } from "../../views/parts/hurt-state.ts";
import { lightningFacts } from "../../views/parts/lightning-state.ts";
import { HurtLive } from "../../views/parts/page.tsx";
import { HereLive, PresentLive } from "../../views/parts/present.tsx";
import type { Screen } from "../../views/parts/say-form.tsx";
import { seesGuide } from "../access/door-check.tsx";
import { sayFromForm } from "../input/form.ts";
import type { Dependencies, LiveJobs } from "../jobs.ts";
import type { Asides } from "../learning/asides.ts";
import type { Presence } from "../presence.ts";
import { backTo, repliedIn } from "./back-to.ts";
import { besideGuide } from "./beside-guide.tsx";
import { formBody, jsonBody, wantsJson } from "./body.ts";
import { type Followed, follow, followedJob } from "./follow.ts";
import { page } from "./page.ts";
import { sayTo } from "./say.ts";
import { accessOf, deviceOf, holderOf, knownDevice, quartersOf, speaksOf } from "./screen.ts";
import { createSharedScreens } from "./shared-screens.ts";

/** A screen of a job, on a device or on none: what its pages show, and to whom. */
export const screenOn =
  ({ newId, presence, asides }: Pick<Dependencies, "newId"> & { readonly presence: Presence; readonly asides?: Asides }) =>
  (c: Context, live: LiveJob, on: string | null = null): Screen => ({
    guide: buildGuideState(live, on, c.get("words")),
    drawn: drawnOf(live, quartersOf(c, live)),
    me: holderOf(c, live),
    aside: asides?.for(live, holderOf(c, live), c.get("words")) ?? null,
    access: accessOf(c, live, presence),
    newKey: newId,
    words: c.get("words"),
    pick: c.req.query("pick") ?? null,
  });

/** The guide of one job: page, JSON, commands, and the stream that keeps a second screen up to date. */
export function guideRoutes(liveJobs: LiveJobs, { hub, newId }: Dependencies, presence: Presence, asides: Asides) {
  const app = new Hono();
  const guide = (c: Context, live: LiveJob, on: string | null) => buildGuideState(live, on, c.get("words"));
  const device = deviceOf;
  const screen = screenOn({ newId, presence, asides });
  const shared = createSharedScreens(newId);

  app.get("/jobs/:file{[\\w-]+\\.json}", async (c) =>
    c.json(guide(c, await liveJobs.load(c.req.param("file").slice(0, -".json".length)), knownDevice(c))),
  );
  app.get("/jobs/:id{[\\w-]+}", async (c) => {
    const live = await liveJobs.load(c.req.param("id"));
    return c.html(page(c, <GuidePage {...screen(c, live, device(c))} notice={repliedIn(c)} />));
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
    // Who only stops the work here is told so, and shown no call.
    if (!seesGuide(c, live)) return backTo(c, `/jobs/${id}`, reply.reply);
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
    const quarters = quartersOf(c, await liveJobs.load(id));
    // A screen that slept is told once how much it missed; what that was stands above the call.
    let seen: number | null = seenBefore(c);
    const guideItself = followedJob(hub, id, async () => {
      const live = await liveJobs.load(id);
      const access = accessOf(c, live, presence);
      const { me, pick, words } = first;
      const entry = live.entries.at(-1)!.entry.no;
      const notice = seen !== null && seen < entry ? words.guide.missed(entry - seen) : null;
      seen = null;
      const aside = asides.for(live, me, words);
      // What was heard on a device waits there alone.
      const alike = JSON.stringify([
        me,
        access,
        pick,
        words.lang,
        quarters,
        notice,
        aside?.id ?? null,
        Object.hasOwn(live.job.readBacks, on) ? on : null,
      ]);
      const render = async (newKey: () => string) =>
        (
          <Live
            {...first}
            aside={aside}
            access={access}
            newKey={newKey}
            guide={guide(c, live, on)}
            drawn={drawnOf(live, quarters)}
            notice={notice}
          />
        ).toString();
      return { entry, html: await shared(live, alike, render) };
    });
    const there = async () => (<PresentLive present={presence.here(id)} words={first.words} />).toString();
    return follow(c, guideItself, whoIsHere(id, first.me, there));
  });
  // For the pages that stay as they are otherwise: somebody hurt stands on each of them at once.
  app.get("/jobs/:id{[\\w-]+}/hurt/live", async (c) => {
    const id = c.req.param("id");
    const words = c.get("words");
    await liveJobs.load(id);
    const whoIsHurt = followedJob(hub, id, async () => {
      const live = await liveJobs.load(id);
      const alarms = { hurt: hurtState(live, words), lightning: lightningFacts(live.job, live.now.at, words) };
      return { entry: live.entries.at(-1)!.entry.no, html: await (<HurtLive {...alarms} words={words} />).toString() };
    });
    return follow(c, whoIsHurt);
  });
  app.get("/jobs/:id{[\\w-]+}/people/live", async (c) => {
    const id = c.req.param("id");
    const first = screen(c, await liveJobs.load(id), null);
    const there = async () => {
      const { guide: state, ...rest } = first;
      return (<HereLive people={state.people} present={presence.here(id)} words={rest.words} />).toString();
    };
    return follow(c, whoIsHere(id, first.me, there));
  });
  return app;

  /** Who is on a job with a screen: this one is among them for as long as it follows. */
  function whoIsHere(id: JobId, me: PersonId | null, html: () => Promise<string>): Followed {
    return {
      listen: (wake) => {
        const leave = [presence.listen(id, wake), presence.arrive(id, me)];
        return () => {
          for (const go of leave) go();
        };
      },
      shown: async () => ({ entry: null, html: await html() }),
    };
  }
}

/** The entry that a screen last saw, where it follows again. */
function seenBefore(c: Context): number | null {
  const id = c.req.header("last-event-id");
  return id !== undefined && /^\d{1,9}$/.test(id) ? Number(id) : null;
}
