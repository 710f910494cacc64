import { type Context, Hono } from "hono";
import { houseEntryOf } from "../../machines/record/house.ts";
import { PAPERS, type Paper } from "../../views/pages/layout/state.ts";
import type { Digests } from "../../views/pages/proof/state.ts";
import { buildReport } from "../../views/pages/report/build-state.ts";
import { hurtState } from "../../views/parts/hurt-state.ts";
import { Problem } from "../input/problem.ts";
import type { Dependencies, LiveJobs } from "../jobs.ts";
import type { Journal } from "../journal/journal.ts";
import { vouched } from "../vouched.ts";
import { reportParts } from "./report-parts.tsx";
import { streamed, yieldTurn } from "./stream.ts";

const HTML = { "content-type": "text/html; charset=utf-8" };

/** A whole job on paper. */
export function reportRoutes(liveJobs: LiveJobs, { journal }: Dependencies) {
  const app = new Hono();
  app.get("/jobs/:id{[\\w-]+}/report", async (c) => {
    const paper = paperIn(c);
    const live = await vouched(liveJobs, journal, c.req.param("id"));
    const house = await lastOf(journal);
    await yieldTurn();
    const words = c.get("words");
    const state = buildReport(live, house, words);
    return c.body(streamed(reportParts(c, { state, paper, hurt: hurtState(live, words), words })), 200, HTML);
  });
  return app;
}

/** The last entry of the house stream, for its digest. Whether the stream holds is looked at where that is asked. */
export async function lastOf({ house }: Pick<Journal, "house">): Promise<Digests["house"]> {
  const last = await house.last();
  const entry = last && houseEntryOf(last);
  return entry && { day: entry.day, hash: last.hash };
}

function paperIn(c: Context): Paper {
  const given = c.req.query("paper") ?? "a4";
  const paper = PAPERS.find((one) => one === given);
  if (!paper) throw new Problem(400, (w) => w.layout.badLook, { paper: (w) => w.layout.badPaper(given) });
  return paper;
}
