import { type Context, Hono } from "hono";
import type { LiveJob } from "../../machines/conversation/live-job.ts";
import { anchorsState } from "../../views/pages/anchors/state.ts";
import { AnchorsPage } from "../../views/pages/anchors/view.tsx";
import { effectText } from "../../views/parts/effect.ts";
import { hurtState } from "../../views/parts/hurt-state.ts";
import type { Words } from "../../views/text/words.ts";
import { readAmendment, refuseIfClosed, refuseIfWaiting } from "../input/amendment.ts";
import { readAnchorage } from "../input/anchorage.ts";
import { anchorageFromForm, anchorageToForm, closedUp } from "../input/anchorage-form.ts";
import { briefFromForm } from "../input/brief-from-form.ts";
import { briefToForm } from "../input/brief-to-form.ts";
import type { Fields } from "../input/form.ts";
import { inWords, Problem } from "../input/problem.ts";
import type { Dependencies, LiveJobs } from "../jobs.ts";
import { backTo } from "./back-to.ts";
import { formBody } from "./body.ts";
import { mayHere } from "./may-here.ts";
import { page } from "./page.ts";
import { sayTo } from "./say.ts";
import { deviceOf, holderOf, speaksOf } from "./screen.ts";

type Shown = { readonly values: Fields; readonly problem?: Problem; readonly effect?: ReturnType<typeof effectText> };

/** What the anchors of a job are screened by: shown with what that comes to, and put forward, as every amendment, for a second person. */
export function anchorRoutes(liveJobs: LiveJobs, { newId }: Dependencies) {
  const app = new Hono();
  const shown = (c: Context, live: LiveJob, { values, problem, effect }: Shown) => {
    const words = c.get("words");
    const form = { values, problems: inWords(problem?.fields ?? {}, words), key: newId() };
    return page(
      c,
      <AnchorsPage
        state={anchorsState(c.req.param("id")!, live.job.frozen)}
        words={words}
        form={mayHere(c, live, "amend") ? form : null}
        message={problem?.sentence(words) ?? null}
        effect={effect ?? null}
        hurt={hurtState(live, words)}
      />,
    );
  };

  app.get("/jobs/:id{[\\w-]+}/anchors", async (c) => {
    const live = await liveJobs.load(c.req.param("id"));
    return c.html(shown(c, live, { values: anchorageToForm(live.job.frozen.brief.anchorage) }));
  });
  app.post("/jobs/:id{[\\w-]+}/anchors", async (c) => {
    const id = c.req.param("id");
    const words = c.get("words");
    const { key, show, ...typed } = await formBody(c);
    const live = await liveJobs.load(id);
    const values = closedUp(typed);
    try {
      refuseIfClosed(live.job);
      const brief = amended(live, values, words);
      if (show === "changes") return c.html(shown(c, live, { values, effect: effectOf(live, brief, words) }));
      refuseIfWaiting(live, key);
      const seen = live.job.snapshot.context.revision;
      const body = { as: holderOf(c, live) ?? "", key, seen, type: "amend", because: words.anchors.because, brief };
      const { reply } = await sayTo(liveJobs, id, body, { source: "press", device: deviceOf(c), speaks: speaksOf(c) }, words);
      return backTo(c, `/jobs/${id}`, reply.reply);
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      return c.html(shown(c, live, { values, problem: error }), error.status);
    }
  });
  return app;
}

/** The brief as it stands with the anchors as typed; none where all is empty. Throws a Problem that names every field that is wrong. */
function amended({ job, names }: LiveJob, values: Fields, words: Words): object {
  const { brief } = job.frozen;
  const anchorage = anchorageFromForm(values);
  const read = anchorage && readAnchorage(anchorage, brief);
  if (read && "wrong" in read) throw new Problem(422, (w) => w.anchors.refused, read.wrong);
  return { ...briefFromForm(briefToForm(brief, names, words)), anchorage };
}

/** What a change would do to the job as it stands. */
function effectOf(live: LiveJob, brief: object, words: Words) {
  const { frozen, names } = readAmendment(live, brief);
  return effectText(live.job, frozen, (person) => ({ ...live.names, ...names })[person] ?? person, words);
}
