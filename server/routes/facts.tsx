import { type Context, Hono } from "hono";
import type { LiveJob } from "../../machines/conversation/live-job.ts";
import { type FactName, unknownIn } from "../../machines/install/facts.ts";
import { FactsPage } from "../../views/pages/facts/view.tsx";
import { hurtState } from "../../views/parts/hurt-state.ts";
import type { Words } from "../../views/text/words.ts";
import { stakeSizeWrong } from "../draft/check-draft.ts";
import { STAKE_SIZE, stakeSizeOf, withStakeFigures } from "../draft/stake-size.ts";
import { refuseIfClosed, refuseIfWaiting } from "../input/amendment.ts";
import { briefFromForm, saysOf, withParts } from "../input/brief-from-form.ts";
import { briefToForm } from "../input/brief-to-form.ts";
import type { Fields } from "../input/form.ts";
import { inWords, Problem } from "../input/problem.ts";
import { besideField } from "../input/tent.ts";
import type { Dependencies, LiveJobs } from "../jobs.ts";
import { backTo } from "./back-to.ts";
import { formBody } from "./body.ts";
import { page } from "./page.ts";
import { sayTo } from "./say.ts";
import { deviceOf, holderOf, speaksOf } from "./screen.ts";

/** What a job was opened without: filled in on a page of its own, and put forward as every amendment, for a second person to agree to. */
export function factRoutes(liveJobs: LiveJobs, { newId }: Dependencies) {
  const app = new Hono();
  /** What a call asks for, where one led here; else all that nobody knows. */
  const asked = (c: Context, { job }: LiveJob): FactName[] => {
    const of = (c.req.query("of") ?? "").split(/[ +]/);
    const unknown = unknownIn(job.frozen.brief);
    const these = unknown.filter((fact) => of.includes(fact));
    return these.length > 0 ? these : unknown;
  };
  const shown = (c: Context, live: LiveJob, typed: Fields, problem: Problem | null) => {
    const words = c.get("words");
    const beside = Object.entries(stakeSizeWrong(problem?.fields ?? {}, typed)).map(
      ([field, why]) => [besideField(field, typed), why] as const,
    );
    return page(
      c,
      <FactsPage
        words={words}
        job={c.req.param("id")!}
        unknown={asked(c, live)}
        values={{ ...typed, [STAKE_SIZE]: stakeSizeOf(typed) }}
        problems={inWords(Object.fromEntries(beside), words)}
        message={problem?.sentence(words) ?? null}
        hurt={hurtState(live, words)}
        newKey={newId}
      />,
    );
  };

  app.get("/jobs/:id{[\\w-]+}/facts", async (c) => c.html(shown(c, await liveJobs.load(c.req.param("id")), {}, null)));
  app.post("/jobs/:id{[\\w-]+}/facts", async (c) => {
    const id = c.req.param("id");
    const words = c.get("words");
    const { key, ...form } = await formBody(c);
    const typed = form[STAKE_SIZE]?.trim() ? withStakeFigures(form) : form;
    const live = await liveJobs.load(id);
    try {
      refuseIfClosed(live.job);
      refuseIfWaiting(live, key);
      const seen = live.job.snapshot.context.revision;
      const brief = briefFromForm(withParts(withTyped(live, typed, words)));
      const body = { as: holderOf(c, live) ?? "", key, seen, type: "amend", because: words.facts.because, brief };
      const { reply } = await sayTo(liveJobs, id, body, { source: "press", device: deviceOf(c), speaks: speaksOf(c) }, words);
      return backTo(c, `/jobs/${id}`, reply.reply);
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      return c.html(shown(c, live, typed, error), error.status);
    }
  });
  return app;
}

/** The brief as it stands, with what was typed of what nobody knew. Throws a Problem where nothing was typed. */
function withTyped({ job, names }: LiveJob, typed: Fields, words: Words): Fields {
  const { brief } = job.frozen;
  const unknown = unknownIn(brief);
  const fields: Fields = Object.fromEntries(
    Object.entries(typed).filter(([name]) => unknown.some((fact) => name.startsWith(`${fact}.`) || name === `site.${fact}`)),
  );
  const isSaid = (fact: FactName) =>
    fact === "sheet" || fact === "ticket" ? saysOf(fields, fact) : (fields[`site.${fact}`] ?? "").trim() !== "";
  if (!unknown.some(isSaid)) throw new Problem(422, (w) => w.facts.nothingTyped);
  return { ...briefToForm(brief, names, words), ...fields };
}
