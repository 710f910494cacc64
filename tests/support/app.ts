import { createApp } from "../../server/app.tsx";
import { createHub } from "../../server/hub.ts";
import type { Journal } from "../../server/journal/journal.ts";
import { sqliteJournal } from "../../server/journal/sqlite.ts";
import { LANGUAGES, type Languages } from "../../views/text/languages.ts";

/** A morning in June, in UTC. */
export const MORNING = Date.UTC(2026, 5, 2, 12, 0, 0);

/** The application on a clock of the test's own. Each command takes a second. */
export function testApp(journal: Journal = sqliteJournal(":memory:"), first = MORNING, languages: Languages = LANGUAGES) {
  let at = first;
  let ids = 0;
  const clock = {
    pass: (seconds: number) => {
      at += seconds * 1000;
    },
  };
  const hub = createHub();
  const { app, liveJobs } = createApp({
    journal,
    hub,
    now: () => (at += 1000),
    newId: () => `id-${String(++ids).padStart(8, "0")}`,
    wakeWord: "albatross",
    languages,
  });
  const post = (path: string, body: unknown, raw = false) =>
    app.request(path, { method: "POST", headers: { "content-type": "application/json" }, body: raw ? String(body) : JSON.stringify(body) });
  return { app, liveJobs, hub, clock, post, journal };
}

export { brief } from "./briefs.ts";
