import { type Context, Hono } from "hono";
import type { LiveJob } from "../../machines/conversation/live-job.ts";
import { freeze } from "../../machines/install/freeze.ts";
import { checkSpec } from "../../machines/tent/spec.ts";
import { DiscrepancyPage, ProposeDiscrepancyPage } from "../../views/pages/discrepancy/view.tsx";
import { effectText } from "../../views/parts/effect.ts";
import { hurtState } from "../../views/parts/hurt-state.ts";
import type { Words } from "../../views/text/words.ts";
import { refuseIfClosed } from "../input/amendment.ts";
import { briefFromForm } from "../input/brief-from-form.ts";
import { siteUnder } from "../input/brief-parts.ts";
import { briefToForm } from "../input/brief-to-form.ts";
import { DISCREPANCIES, fieldOfProblem, isDiscrepancy, specWithDiscrepancy } from "../input/discrepancy.ts";
import type { Fields } from "../input/form.ts";
import { inWords, Problem, type Sentence } from "../input/problem.ts";
import { noFields } from "../input/strict.ts";
import type { Dependencies, LiveJobs } from "../jobs.ts";
import { backTo } from "./back-to.ts";
import { formBody } from "./body.ts";
import { page } from "./page.ts";
import { sayTo } from "./say.ts";
import { deviceOf, holderOf, speaksOf } from "./screen.ts";

/**
 * What the cloth or the site says otherwise than the plan, one thing at a time: rings, a pole, a corner. First what it
 * would change is shown; then it is put forward, as every amendment, for a second person to agree to.
 */
export function discrepancyRoutes(liveJobs: LiveJobs, { newId }: Dependencies) {
  const app = new Hono();
  const shown = (c: Context, live: LiveJob, form: { values: Fields; problems: Fields; message: string | null; words: Words }) => {
    const id = c.req.param("id")!;
    const { brief, plan } = live.job.frozen;
    return page(c, <DiscrepancyPage job={id} title={brief.title} plan={plan} hurt={hurtState(live, form.words)} {...form} />);
  };

  app.get("/jobs/:id{[\\w-]+}/discrepancy", async (c) => {
    const form = { values: c.req.query(), problems: {}, message: null, words: c.get("words") };
    return c.html(shown(c, await liveJobs.load(c.req.param("id")), form));
  });
  app.post("/jobs/:id{[\\w-]+}/discrepancy", async (c) => {
    const id = c.req.param("id");
    const { key, seen, put, ...fields } = await formBody(c);
    const { what } = fields;
    const words = c.get("words");
    const notOne: Sentence = (w) => w.errors.oneOf(DISCREPANCIES);
    if (!isDiscrepancy(what)) throw new Problem(422, notOne, { what: notOne });
    const live = await liveJobs.load(id);
    const { job, names } = live;
    refuseIfClosed(job);
    const { brief, plan } = job.frozen;
    const because = fields.because?.trim() ?? "";
    const checked = checkSpec(specWithDiscrepancy(what, fields, plan));
    const problems = noFields<Sentence>();
    if (because === "") problems.because = (w) => w.errors.empty;
    if ("problems" in checked) for (const p of checked.problems) problems[fieldOfProblem(p)] ??= (w) => w.errors.tent(p);
    if ("problems" in checked || because === "")
      return c.html(shown(c, live, { values: fields, problems: inWords(problems, words), message: words.errors.bodyShape, words }), 422);
    if (put !== "yes") {
      const { siteModel } = brief;
      const site = siteModel ? { siteModel: siteUnder(siteModel, checked.spec) } : {};
      const to = freeze({ ...brief, tent: checked.spec, ...site });
      const effect = effectText(job, to, (person) => names[person] ?? person, words);
      const { revision } = job.snapshot.context;
      return c.html(
        page(
          c,
          <ProposeDiscrepancyPage
            words={words}
            job={id}
            title={brief.title}
            hurt={hurtState(live, words)}
            effect={effect}
            values={{ ...fields, key: newId(), seen: String(revision) }}
          />,
        ),
      );
    }
    const input = { ...briefFromForm(briefToForm(brief, names, words)), tent: checked.spec };
    const body = { as: holderOf(c, live) ?? "", key, seen: Number(seen), type: "amend", because, brief: input };
    const { reply } = await sayTo(liveJobs, id, body, { source: "press", device: deviceOf(c), speaks: speaksOf(c) }, words);
    return backTo(c, `/jobs/${id}`, reply.reply);
  });
  return app;
}
