import { randomUUID } from "node:crypto";
import type { AddressInfo } from "node:net";
import { serve } from "@hono/node-server";
import { createApp } from "../../server/app.tsx";
import { demoBrief } from "../../server/demo.ts";
import { createHub } from "../../server/hub.ts";
import { sqliteJournal } from "../../server/journal/sqlite.ts";
import { systemClock } from "../../server/system-clock.ts";
import { LANGUAGES } from "../../views/text/languages.ts";
import { forTrials } from "../support/access.ts";

/** A server for trials on the clocks of the machine, with more jobs than one, told as JSON with its port: for a bench in another process. */
const JOBS = 51;
const DAY_MS = 24 * 3600 * 1000;
const dayAfter = (days: number) => new Date(Date.now() + days * DAY_MS).toISOString().slice(0, 10);
const { app } = createApp({
  journal: sqliteJournal(":memory:"),
  hub: createHub(),
  clock: systemClock,
  newId: randomUUID,
  wakeWord: "albatross",
  access: forTrials(),
  languages: LANGUAGES,
});
const jobs: string[] = [];
for (let n = 0; n < JOBS; n++) {
  const opened = await app.request("/jobs", {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ key: `bench-job-${n}`, brief: demoBrief(dayAfter(-1), dayAfter(14)) }),
  });
  jobs.push(((await opened.json()) as { job: string }).job);
}
serve({ fetch: app.fetch, port: 0, hostname: "127.0.0.1" }, ({ port }: AddressInfo) =>
  process.stdout.write(JSON.stringify({ port, jobs })),
);
process.once("SIGTERM", () => process.exit(0));
