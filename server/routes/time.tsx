import { type Context, Hono } from "hono";
import type { LiveJob } from "../../machines/conversation/live-job.ts";
import { foldAll } from "../../machines/record/findings.ts";
import { startWorkTime } from "../../machines/record/work-time.ts";
import { type Forecast, forecast } from "../../machines/time/forecast.ts";
import type { JobProgress } from "../../machines/time/job-stage.ts";
import { factorsFrom, type JobHistory } from "../../machines/time/learning.ts";
import { buildTimeState } from "../../views/pages/time/build-state.ts";
import { TimePage } from "../../views/pages/time/view.tsx";
import { Problem, type Sentence } from "../input/problem.ts";
import type { Dependencies, LiveJobs } from "../jobs.ts";
import { hurtOn } from "./hurt-on.ts";
import { page } from "./page.ts";
import { yieldTurn } from "./stream.ts";

/** Crew and time of one job: the page, and the same as data. Another crew is asked for with `?people=`. */
export function timeRoutes(liveJobs: LiveJobs, { journal }: Dependencies) {
  const app = new Hono();
  const stateOf = async (c: Context, people: number | undefined) => {
    const id = c.req.param("id")!;
    const live = await liveJobs.load(id);
    const { title, zone, rehearsal } = live.job.frozen.brief;
    const taught = (await journal.folds()).flatMap(({ fold }): JobHistory[] => (fold ? [fold] : []));
    // Ten thousand jobs take a moment to read and another to learn from: a hold does not wait for both.
    await yieldTurn();
    const factors = factorsFrom(taught, id);
    await yieldTurn();
    const now = live.now.wall;
    const told = { job: id, title, zone, rehearsal: rehearsal === true, readOnly: live.readOnly, now };
    return buildTimeState({ ...told, forecast: forecastOf(live, factors, people) }, c.get("words"));
  };

  app.get("/jobs/:id{[\\w-]+}/time", async (c) => {
    const said = c.req.query("people")?.trim() ?? "";
    const people = peopleIn(said);
    const problem = people === null ? c.get("words").time.badPeople(said) : null;
    const state = await stateOf(c, people ?? undefined);
    return c.html(
      page(c, <TimePage state={state} asked={{ said, problem }} hurt={await hurtOn(c, liveJobs)} words={c.get("words")} />),
      problem ? 422 : 200,
    );
  });
  app.get("/jobs/:id{[\\w-]+}/time.json", async (c) => {
    const said = c.req.query("people")?.trim() ?? "";
    const people = peopleIn(said);
    const bad: Sentence = (w) => w.time.badPeople(said);
    if (people === null) throw new Problem(422, bad, { people: bad });
    return c.json(await stateOf(c, people));
  });
  return app;
}

/** Told by the wall clock. A rehearsal takes no real time: for it, what the real job would take from its first call. */
function forecastOf({ job, entries, now }: LiveJob, factors: ReturnType<typeof factorsFrom>, people?: number): Forecast | null {
  const { fold } = foldAll(entries);
  const opening = entries.at(0)!.entry;
  const at: JobProgress =
    fold.rehearsal && opening.kind === "opening"
      ? { phase: opening.phase, lastAt: now.wall, no: 1, worked: startWorkTime(opening) }
      : { ...fold, lastAt: now.wall - (now.at - now.doubtMs - fold.lastAt) };
  return forecast(job.frozen, at, factors, now.wall, people);
}

/** A crew of 1 to 60; `undefined` where none was asked for, `null` where it is no such number. */
function peopleIn(said: string): number | null | undefined {
  if (said === "") return undefined;
  const n = /^\d{1,2}$/.test(said) ? Number(said) : 0;
  return n >= 1 && n <= 60 ? n : null;
}
