import { type Context, Hono } from "hono";
import type { LiveJob } from "../../machines/conversation/live-job.ts";
import type { Brief } from "../../machines/install/brief.ts";
import { weatherPlanState } from "../../views/pages/weather-plan/build-state.ts";
import { WeatherPlanPage } from "../../views/pages/weather-plan/view.tsx";
import { hurtState } from "../../views/parts/hurt-state.ts";
import { refuseIfClosed, refuseIfWaiting } from "../input/amendment.ts";
import { briefFromForm } from "../input/brief-from-form.ts";
import { briefToForm } from "../input/brief-to-form.ts";
import type { Fields } from "../input/form.ts";
import { inWords, Problem } from "../input/problem.ts";
import { weatherFromForm, weatherToForm } from "../input/weather-form.ts";
import type { Dependencies, LiveJobs } from "../jobs.ts";
import { backTo } from "./back-to.ts";
import { formBody } from "./body.ts";
import { mayHere } from "./may-here.ts";
import { page } from "./page.ts";
import { sayTo } from "./say.ts";
import { deviceOf, holderOf, speaksOf } from "./screen.ts";

/** The weather plan and the forecast of a job: shown to all who are on it, and put forward, as every amendment, for a second person to agree to. */
export function weatherPlanRoutes(liveJobs: LiveJobs, { newId }: Dependencies) {
  const app = new Hono();
  const shown = (c: Context, live: LiveJob, values: Fields, problem: Problem | null) => {
    const words = c.get("words");
    return page(
      c,
      <WeatherPlanPage
        state={weatherPlanState(live)}
        words={words}
        form={mayHere(c, live, "amend") ? { values, problems: inWords(problem?.fields ?? {}, words), newKey: newId } : null}
        message={problem && (Object.keys(problem.fields).length > 0 ? words.draft.wrong : problem.sentence(words))}
        hurt={hurtState(live, words)}
      />,
    );
  };

  app.get("/jobs/:id{[\\w-]+}/weather-plan", async (c) => {
    const live = await liveJobs.load(c.req.param("id"));
    return c.html(shown(c, live, weatherToForm(live.job.frozen.brief), null));
  });
  app.post("/jobs/:id{[\\w-]+}/weather-plan", async (c) => {
    const id = c.req.param("id");
    const words = c.get("words");
    const { key, ...typed } = await formBody(c);
    const live = await liveJobs.load(id);
    try {
      refuseIfClosed(live.job);
      refuseIfWaiting(live, key);
      const { brief } = live.job.frozen;
      const to = { ...briefFromForm(briefToForm(brief, live.names, words)), ...toldIn(typed, brief) };
      const seen = live.job.snapshot.context.revision;
      const body = { as: holderOf(c, live) ?? "", key, seen, type: "amend", because: words.weatherPlan.because, brief: to };
      const { reply } = await sayTo(liveJobs, id, body, { source: "press", device: deviceOf(c), speaks: speaksOf(c) }, words);
      return backTo(c, `/jobs/${id}`, reply.reply);
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      return c.html(shown(c, live, typed, error), error.status);
    }
  });
  return app;
}

/** Both parts as typed; what is left empty goes. Throws a Problem where nothing was there and nothing was typed. */
function toldIn(typed: Fields, { weatherPlan, forecast }: Brief) {
  const told = weatherFromForm(typed);
  if (!told.weatherPlan && !told.forecast && !weatherPlan && !forecast) throw new Problem(422, (w) => w.weatherPlan.nothingTyped);
  return told;
}
