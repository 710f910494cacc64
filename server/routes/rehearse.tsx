import { type Context, Hono } from "hono";
import type { LiveJob } from "../../machines/conversation/live-job.ts";
import { type Bounds, isWithin } from "../../machines/install/bounds.ts";
import { unknownIn } from "../../machines/install/facts.ts";
import { freezeOn } from "../../machines/install/freeze.ts";
import type { WallTime } from "../../machines/install/ids.ts";
import type { Practice } from "../../machines/install/practice.ts";
import { PHASES } from "../../machines/install/step.ts";
import { lookBack } from "../../machines/rehearsal/look-back.ts";
import { MADE_UP_CREW, madeUp } from "../../machines/rehearsal/made-up-job.ts";
import { lookBackState } from "../../views/pages/look-back/build-state.ts";
import { EndPage, LookBackPage } from "../../views/pages/look-back/view.tsx";
import { RehearsePage } from "../../views/pages/rehearse/view.tsx";
import type { Screen } from "../../views/parts/say-form.tsx";
import type { Parsed } from "../input/brief.ts";
import { readPractice, seedFrom } from "../input/practice.ts";
import { Problem } from "../input/problem.ts";
import type { Dependencies, LiveJobs } from "../jobs.ts";
import type { Names } from "../journal/journal.ts";
import type { LearnerId } from "../journal/learning.ts";
import { requestDigest } from "../next-entry.ts";
import { formBody } from "./body.ts";
import { page } from "./page.ts";
import { deviceOf, holderOf, speaksOf } from "./screen.ts";

/** So long can be waited at a press, in minutes. */
const WAIT_BOUNDS_MIN: Bounds = { from: 1, to: 120 };
/** So many are begun by one learner in a day. Common practice, no source. */
const MAX_A_DAY = 30;
const DAY_MS = 24 * 3600 * 1000;
/** Whose rehearsal it is where nobody said who they are. */
const NOBODY: LearnerId = "";
/** The job that one was made from, where nobody knows it any more: its row went with the name of who led it. */
const NOWHERE = "";

type ScreenOf = (c: Context, live: LiveJob) => Screen;

/** A job opened once more as a rehearsal that answers back, time that goes by in it, and how it went. */
export function rehearseRoutes(liveJobs: LiveJobs, { journal, clock, newId }: Dependencies, screenOf: ScreenOf) {
  const app = new Hono();
  const { learning } = journal;

  app.get("/jobs/:id{[\\w-]+}/rehearse", async (c) => {
    const live = await liveJobs.load(c.req.param("id"));
    return c.html(page(c, <RehearsePage screen={screenOf(c, live)} phases={PHASES} seed={c.req.query("seed") ?? ""} />));
  });

  app.post("/jobs/:id{[\\w-]+}/rehearse", async (c) => {
    const id = c.req.param("id");
    const { key, ...fields } = await formBody(c);
    const live = await liveJobs.load(id);
    const { frozen } = live.job;
    const practice = readPractice(fields, frozen.script, seedFrom(key ?? newId()));
    // What nobody knows is asked at its call, and nothing leads past it.
    const facts = practice.from === frozen.script.steps[0]!.id ? [] : unknownIn(frozen.brief);
    if (facts.length > 0) throw new Problem(409, (w) => w.rehearsal.unknownYet(facts.map(w.factName).join(", ")));
    const names = Object.fromEntries(MADE_UP_CREW.map((person, i) => [person.id, c.get("words").rehearsal.names[i]!]));
    const learner = await learnerOf(c, live);
    // Not the wall of the job: where that is a rehearsal, its time is made up.
    const { wall: at } = clock();
    await refuseTooMany(learner, at);
    const opened = await liveJobs.open(
      rehearsalOf(live, { practice, names, at }),
      keyIn(key) ?? newId(),
      requestDigest({ rehearse: id, ...fields }),
    );
    if (!(await learning.rehearsalOf(opened)))
      await learning.startRehearsal({ job: opened, from: id, learner, ...practiceRow(practice), at, over: null });
    await liveJobs.beginRehearsal(opened);
    // Nothing is at stake there: who opened it leads.
    await c.get("access").letIn(c, opened, [MADE_UP_CREW[0]!.id]);
    return c.redirect(`/jobs/${opened}?as=${MADE_UP_CREW[0]!.id}`, 303);
  });

  app.post("/jobs/:id{[\\w-]+}/wait", async (c) => {
    const id = c.req.param("id");
    const { key, seen, as = "", minutes = "" } = await formBody(c);
    const n = /^\d{1,3}$/.test(minutes) ? Number(minutes) : Number.NaN;
    if (!isWithin(n, WAIT_BOUNDS_MIN)) throw new Problem(422, (w) => w.rehearsal.noMinutes(minutes, WAIT_BOUNDS_MIN));
    practiceIn(await liveJobs.load(id));
    const device = deviceOf(c);
    const said = {
      key: keyIn(key) ?? newId(),
      seen: Number(seen) || 0,
      as,
      device,
      request: requestDigest({ wait: n, as }),
      takesS: n * 60,
      admit: (live: LiveJob, person: string) => {
        if (speaksOf(c)(live, person) !== "anything") throw new Problem(403, (w) => w.join.notAs(live.names[person] ?? person));
      },
    };
    const text = c.get("words").rehearsal.timeGoesBy(n);
    await liveJobs.say<never>(id, said, () => ({ intent: { type: "note", text }, source: "press", heard: null }));
    return c.redirect(c.req.header("hx-request-type") === "partial" ? `/jobs/${id}/now` : `/jobs/${id}`, 303);
  });

  app.get("/jobs/:id{[\\w-]+}/look-back", async (c) => {
    const id = c.req.param("id");
    const live = await liveJobs.load(id);
    practiceIn(live);
    const row = await learning.rehearsalOf(id);
    const words = c.get("words");
    if (!row?.over) return c.html(page(c, <EndPage job={{ id, title: live.job.frozen.brief.title }} newKey={newId} words={words} />));
    const isKnown = row.from !== NOWHERE;
    const isThere = isKnown && (await exists(row.from));
    const state = lookBackState({ live, words }, isThere ? row.from : null, isKnown && !isThere);
    return c.html(page(c, <LookBackPage state={state} words={words} />));
  });

  app.post("/jobs/:id{[\\w-]+}/look-back", async (c) => {
    const id = c.req.param("id");
    const live = await liveJobs.load(id);
    const practice = practiceIn(live);
    const row = await learning.rehearsalOf(id);
    if (!row?.over) {
      const { wall: at } = clock();
      const { score, whole } = lookBack(live.entries);
      if (!row) await learning.startRehearsal({ job: id, from: NOWHERE, learner: NOBODY, ...practiceRow(practice), at, over: null });
      await learning.endRehearsal(id, { at, moments: score.of, unsafe: score.unsafe + score.untrue, whole });
    }
    return c.redirect(`/jobs/${id}/look-back`, 303);
  });
  return app;

  /** The learner whose name the holder of this screen has on a job; nobody where none holds it, or they play somebody. */
  async function learnerOf(c: Context, live: LiveJob): Promise<LearnerId> {
    const me = holderOf(c, live);
    const name = me === null || live.job.frozen.brief.rehearsal ? undefined : live.names[me];
    if (name !== undefined) return (await learning.learner(name, newId())).id;
    const from = await learning.rehearsalOf(live.entries.at(0)!.entry.job);
    return from?.learner ?? NOBODY;
  }

  /** Throws a Problem where somebody has begun so many in a day that something else is wrong: each of them is a whole record. */
  async function refuseTooMany(learner: LearnerId, now: WallTime): Promise<void> {
    if (learner === NOBODY) return;
    const lately = (await learning.rehearsalsOf(learner)).filter(({ at }) => now - at < DAY_MS);
    if (lately.length >= MAX_A_DAY) throw new Problem(429, (w) => w.rehearsal.tooMany(MAX_A_DAY));
  }

  async function exists(job: string): Promise<boolean> {
    try {
      await liveJobs.load(job);
      return true;
    } catch (error) {
      if (error instanceof Problem && error.status === 404) return false;
      throw error;
    }
  }
}

/** Today's procedure on the plan of a job. */
function rehearsalOf({ job: { frozen } }: LiveJob, { practice, names, at }: { practice: Practice; names: Names; at: WallTime }): Parsed {
  return { frozen: freezeOn(frozen.plan, madeUp(frozen.brief, practice, at)), names };
}

const practiceRow = ({ way, trouble, seed }: Practice) => ({ way, trouble, seed });

/** A key of a form; `null` where it sent none. Throws a Problem where it is none of ours. */
function keyIn(key: string | undefined): string | null {
  if (key !== undefined && !/^[\w.-]{8,80}$/.test(key)) throw new Problem(422, (w) => w.errors.keyShape);
  return key ?? null;
}

/** Throws a Problem where a job is no rehearsal that answers back. */
function practiceIn({ job }: LiveJob): Practice {
  const { practice } = job.frozen.brief;
  if (!practice) throw new Problem(409, (w) => w.rehearsal.notOne);
  return practice;
}
