import { type Context, Hono } from "hono";
import type { LiveJob } from "../../machines/conversation/live-job.ts";
import { foldAll } from "../../machines/record/findings.ts";
import { verifyChain } from "../../machines/record/verify-chain.ts";
import { buildFindings } from "../../views/pages/findings/build-state.ts";
import { buildRecordState, kitOf } from "../../views/pages/record/build-state.ts";
import { rowsOf } from "../../views/pages/record/csv.ts";
import { csv } from "../../views/parts/csv.ts";
import { hurtState } from "../../views/parts/hurt-state.ts";
import { Problem } from "../input/problem.ts";
import type { Dependencies, LiveJobs } from "../jobs.ts";
import { findingsParts, recordParts, shownBy } from "./record-parts.tsx";
import { streamed, yieldTurn } from "./stream.ts";

const HTML = { "content-type": "text/html; charset=utf-8" };

/** The record of one job, to be read, as a table, and as data that can be verified elsewhere; and the findings of all jobs. */
export function recordRoutes(liveJobs: LiveJobs, { journal }: Dependencies) {
  const app = new Hono();
  const idOf = (c: Context) => c.req.param("id")!;

  /** A job with what can be vouched for as it lies in the file now, not as it is remembered. */
  const vouched = async (id: string): Promise<LiveJob> => {
    const live = await liveJobs.load(id);
    // Of a lost file memory is all there is, and was checked when it was loaded; the page says which.
    if (live.readOnly?.why === "lost") return live;
    const chain = verifyChain(await journal.read(id));
    const fit = [...live.entries].findIndex((e, i) => e.hash !== chain.entries[i]?.hash);
    if (fit === 0) throw new Problem(409, (w) => w.errors.noOpening(id));
    return fit < 0 ? live : { ...live, entries: live.entries.slice(0, fit), readOnly: { no: fit + 1, why: "changed" } };
  };

  app.get("/jobs/:id{[\\w-]+}/record", async (c) => {
    const live = await vouched(idOf(c));
    await yieldTurn();
    const state = buildRecordState(live, c.get("words"));
    return c.body(streamed(recordParts(c, state, shownBy(c.req.queries("show") ?? []), hurtState(live, c.get("words")))), 200, HTML);
  });
  app.get("/jobs/:id{[\\w-]+}/record.json", async (c) => {
    const live = await vouched(idOf(c));
    const { entries, readOnly } = live;
    const { fold, each } = foldAll(entries);
    return c.json({
      job: idOf(c),
      // With their salts, so that they can be compared with the chain; where it is lost, what is remembered has none.
      people: readOnly?.why === "lost" ? {} : await journal.people(idOf(c)),
      problem: readOnly && c.get("words").notRecordedText(readOnly),
      findings: fold.counts,
      kit: kitOf(live),
      entries: [...entries].map((e, i) => ({ hash: e.hash, marks: each[i], ...e.entry })),
    });
  });
  app.get("/jobs/:id{[\\w-]+}/record.csv", async (c) => {
    const words = c.get("words");
    const rows = rowsOf(buildRecordState(await vouched(idOf(c)), words), words);
    return c.body(csv(rows), 200, {
      "content-type": "text/csv; charset=utf-8; header=present",
      "content-disposition": `attachment; filename="record-${idOf(c)}.csv"`,
    });
  });
  app.get("/findings", async (c) => {
    const state = buildFindings(await journal.folds(), c.get("words"));
    return c.body(streamed(findingsParts(c, state)), 200, HTML);
  });
  app.get("/findings.json", async (c) => c.json(buildFindings(await journal.folds(), c.get("words"))));
  return app;
}
