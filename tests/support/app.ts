import type { Hono } from "hono";
import { createApp } from "../../server/app.tsx";
import { createHub } from "../../server/hub.ts";
import type { Journal } from "../../server/journal/journal.ts";
import { sqliteJournal } from "../../server/journal/sqlite.ts";
import { LANGUAGES, type Languages } from "../../views/text/languages.ts";
import { forTrials } from "./access.ts";

/** A morning in June, in UTC. */
export const MORNING = Date.UTC(2026, 5, 2, 12, 0, 0);

/** The application on clocks of the test's own. Whatever reads them takes a second. `files` is what its pages load, where a test loads it. */
export function testApp(journal: Journal = sqliteJournal(":memory:"), first = MORNING, languages: Languages = LANGUAGES, files?: Hono) {
  let wall = first;
  let elapsedMs = 0;
  let ids = 0;
  const clock = {
    pass: (seconds: number) => {
      wall += seconds * 1000;
      elapsedMs += seconds * 1000;
    },
    /** Somebody sets the wall clock ahead by so much, or back. */
    setWall: (seconds: number) => {
      wall += seconds * 1000;
    },
  };
  /** The application started again over the same journal, when the wall clock shows so much more, or less. */
  const restart = (seconds: number) => testApp(journal, wall + seconds * 1000, languages, files);
  const hub = createHub();
  const { app, liveJobs } = createApp(
    {
      journal,
      hub,
      clock: () => {
        clock.pass(1);
        return { wall, elapsedMs };
      },
      newId: () => `id-${String(++ids).padStart(8, "0")}`,
      wakeWord: "albatross",
      access: forTrials(),
      languages,
    },
    files ? { files } : {},
  );
  const post = (path: string, body: unknown, raw = false) =>
    app.request(path, { method: "POST", headers: { "content-type": "application/json" }, body: raw ? String(body) : JSON.stringify(body) });
  /** What the wall clock shows; a job's own time is the same, until somebody sets the clock. */
  const now = () => {
    clock.pass(1);
    return wall;
  };
  return { app, liveJobs, hub, clock, now, restart, post, journal };
}

export { brief } from "./briefs.ts";
