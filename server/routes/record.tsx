import { type Context, Hono } from "hono";
import { foldAll } from "../../machines/record/findings.ts";
import { buildRecordState, kitOf } from "../../views/pages/record/build-state.ts";
import { rowsOf } from "../../views/pages/record/csv.ts";
import { csv } from "../../views/parts/csv.ts";
import { hurtState } from "../../views/parts/hurt-state.ts";
import type { Dependencies, LiveJobs } from "../jobs.ts";
import { vouched } from "../vouched.ts";
import { recordParts, shownBy } from "./record-parts.tsx";
import { streamed, yieldTurn } from "./stream.ts";

const HTML = { "content-type": "text/html; charset=utf-8" };

/** The record of one job, to be read, as a table, and as data that can be verified elsewhere. */
export function recordRoutes(liveJobs: LiveJobs, { journal }: Dependencies) {
  const app = new Hono();
  const idOf = (c: Context) => c.req.param("id")!;

  app.get("/jobs/:id{[\\w-]+}/record", async (c) => {
    const live = await vouched(liveJobs, journal, idOf(c));
    await yieldTurn();
    const state = buildRecordState(live, c.get("words"));
    return c.body(streamed(recordParts(c, state, shownBy(c.req.queries("show") ?? []), hurtState(live, c.get("words")))), 200, HTML);
  });
  app.get("/jobs/:id{[\\w-]+}/record.json", async (c) => {
    const live = await vouched(liveJobs, journal, idOf(c));
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
    const rows = rowsOf(buildRecordState(await vouched(liveJobs, journal, idOf(c)), words), words);
    return c.body(csv(rows), 200, {
      "content-type": "text/csv; charset=utf-8; header=present",
      "content-disposition": `attachment; filename="record-${idOf(c)}.csv"`,
    });
  });
  return app;
}
