import { type Context, Hono } from "hono";
import type { JobId } from "../../machines/record/entry.ts";
import { buildAtAGlance } from "../../views/pages/at-a-glance/build-state.ts";
import { buildFindings } from "../../views/pages/findings/build-state.ts";
import { cardId, type Found } from "../../views/pages/findings/card-state.ts";
import type { FindingsState } from "../../views/pages/findings/state.ts";
import { FindingsPage, queryOf } from "../../views/pages/findings/view.tsx";
import { createFollowUps } from "../follow-ups.ts";
import { cursorText, filterFields, readCursor, readFilter } from "../input/finding-filter.ts";
import { followUpFromForm, readFollowUp } from "../input/follow-up.ts";
import type { Dependencies } from "../jobs.ts";
import { ANY, type KeptFinding } from "../journal/oversight.ts";
import { requestDigest } from "../next-entry.ts";
import { formBody, jsonBody, wantsJson } from "./body.ts";
import { page } from "./page.ts";
import { atAGlanceParts } from "./record-parts.tsx";
import { streamed } from "./stream.ts";

const HTML = { "content-type": "text/html; charset=utf-8" };
/** Findings on a page. */
const MOST = 50;
/** What is written from a script without a screen of its own. */
const SCRIPT = "office";

/** What a manager looks at over all jobs, what was said of it, and the counts job by job. */
export function findingsRoutes({ journal, clock, newId }: Dependencies) {
  const app = new Hono();
  const { oversight } = journal;
  const followUps = createFollowUps(journal);

  /** With what their words need of their jobs: each job is asked for once. */
  const withJobs = async (kept: readonly KeptFinding[]): Promise<Found[]> => {
    const ids = [...new Set(kept.map(({ job }) => job))];
    const jobs = new Map(await Promise.all(ids.map(async (job) => [job, await jobOf(job)] as const)));
    return Promise.all(
      kept.map(async ({ job, finding, state }) => ({
        ...jobs.get(job)!,
        job,
        finding,
        state,
        followUps: await oversight.followUps({ job, kind: finding.kind, entry: finding.entry }),
      })),
    );
  };
  const jobOf = async (job: JobId) => {
    const [summary, names] = await Promise.all([journal.fold(job), journal.names(job)]);
    return { title: summary?.fold?.title ?? job, zone: summary?.fold?.zone ?? "UTC", names };
  };
  const stateOf = async (c: Context): Promise<FindingsState> => {
    const looked = filterFields((name) => c.req.query(name));
    const filter = readFilter(looked);
    const before = readCursor(c.req.query("before") ?? "");
    const [tallies, measures, sizes, kept] = await Promise.all([
      oversight.tallies(filter),
      oversight.measures(filter),
      oversight.measures(ANY),
      oversight.findings(filter, before, MOST + 1),
    ]);
    const shown = kept.slice(0, MOST);
    const last = kept.length > MOST ? shown.at(-1)! : null;
    const next = last && cursorText({ job: last.job, ...last.finding });
    const found = await withJobs(shown);
    return buildFindings({ looked, tallies, measures, sizes, found, before: before && cursorText(before), next }, c.get("words"));
  };

  app.get("/findings", async (c) => c.html(page(c, <FindingsPage state={await stateOf(c)} newKey={newId} words={c.get("words")} />)));
  app.get("/findings.json", async (c) => c.json(await stateOf(c)));
  app.post("/findings/followups", async (c) => {
    const isScript = wantsJson(c);
    const form = isScript ? {} : await formBody(c);
    const body = isScript ? await jsonBody(c) : followUpFromForm(form);
    const said = readFollowUp(body);
    const device = c.get("visitor").device ?? SCRIPT;
    const written = await followUps.say(said, { request: requestDigest(said), device, at: clock().wall });
    if (isScript) return c.json(written, 201);
    const { back = "" } = form;
    const query = new URLSearchParams(back);
    const looked = filterFields((name) => query.get(name) ?? undefined);
    const list = queryOf(looked, query.get("before"));
    return c.redirect(`/findings${list === "" ? "" : `?${list}`}#${cardId(said)}`, 303);
  });
  app.get("/findings/jobs", async (c) => {
    const state = buildAtAGlance(await journal.folds(), c.get("words"));
    return c.body(streamed(atAGlanceParts(c, state)), 200, HTML);
  });
  app.get("/findings/jobs.json", async (c) => c.json(buildAtAGlance(await journal.folds(), c.get("words"))));
  return app;
}
