import { type Context, Hono } from "hono";
import { foldAll } from "../../machines/record/findings.ts";
import { findingsOf } from "../../views/findings-of.ts";
import { recordOf } from "../../views/record-of.ts";
import { rowsOf } from "../../views/record-rows.ts";
import type { Desks, World } from "../command.ts";
import { csv } from "../edge/csv.ts";
import { findingsParts, recordParts, shownBy } from "./record-parts.tsx";
import { streamed } from "./stream.ts";

const HTML = { "content-type": "text/html; charset=utf-8" };

/** The record of one job, to be read, as a table, and as data that can be verified elsewhere; and the findings of all jobs. */
export function recordRoutes(desks: Desks, { journal }: World) {
  const app = new Hono();
  const idOf = (c: Context) => c.req.param("id")!;

  app.get("/jobs/:id{[\\w-]+}/record", (c) => {
    const state = recordOf(desks.load(idOf(c)));
    return c.body(streamed(recordParts(state, shownBy(c.req.queries("show") ?? []))), 200, HTML);
  });
  app.get("/jobs/:id{[\\w-]+}/record.json", (c) => {
    const { entries, names, readOnly } = desks.load(idOf(c));
    const { fold, each } = foldAll(entries);
    return c.json({
      job: idOf(c),
      names,
      problem: readOnly,
      findings: fold.counts,
      entries: entries.map((e, i) => ({ hash: e.hash, marks: each[i], ...e.entry })),
    });
  });
  app.get("/jobs/:id{[\\w-]+}/record.csv", (c) => {
    const rows = rowsOf(recordOf(desks.load(idOf(c))));
    return c.body(csv(rows), 200, {
      "content-type": "text/csv; charset=utf-8; header=present",
      "content-disposition": `attachment; filename="record-${idOf(c)}.csv"`,
    });
  });
  app.get("/findings", (c) => c.body(streamed(findingsParts(findingsOf(journal.folds()))), 200, HTML));
  app.get("/findings.json", (c) => c.json(findingsOf(journal.folds())));
  return app;
}
