import { mkdtempSync, rmSync } from "node:fs";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { serve } from "@hono/node-server";
import { Hono } from "hono";
import Database from "libsql";
import { memoryJournal } from "../../server/journal/memory.ts";
import { openJournal } from "../../server/journal/open-file.ts";
import { page } from "../../server/routes/page.ts";
import { drawnOf } from "../../views/drawing/call/drawn.ts";
import { buildGuideState } from "../../views/pages/guide/build-state.ts";
import { GuidePage } from "../../views/pages/guide/view.tsx";
import { en } from "../../views/text/en/en.ts";
import { LEADS_SCREEN } from "../support/access.ts";
import { brief, testApp } from "../support/app.ts";
import { type OpenedJob, openedJob } from "../support/job.ts";
import { longRecord } from "../support/long-record.ts";

/**
 * The program on one port, and on another what it is measured against: bare routes that do no more than write a row and answer
 * with as long a page, or show the same components filled in before. Says where they are, as JSON, on one line.
 */
const folder = mkdtempSync(join(tmpdir(), "ridgecall-bench-"));
const journal = openJournal(join(folder, "data.db"));
const world = testApp(journal, Date.now());

/** Made in memory and copied into the file as they are: records with the same calls and the same last words. */
const made = testApp(memoryJournal());
async function copied({ job, entries }: OpenedJob): Promise<string> {
  const [opening, ...rest] = await entries();
  await journal.open(opening!, await made.journal.people(job));
  await Promise.all(rest.map((entry) => journal.append(entry)));
  return job;
}
const jobs: string[] = [];
for (let n = 0; n < 10; n++) jobs.push(await copied(await openedJob({ ...brief(), title: `Job ${n}` }, made)));
const [fresh, long] = [await copied((await longRecord(20, made)).job), await copied((await longRecord(5004, made)).job)];

const bareDb = new Database(join(folder, "bare.db"));
for (const pragma of ["locking_mode = EXCLUSIVE", "journal_mode = WAL", "synchronous = FULL"]) bareDb.pragma(pragma);
bareDb.exec("CREATE TABLE rows (id INTEGER PRIMARY KEY, key TEXT NOT NULL UNIQUE, bytes BLOB NOT NULL) STRICT");
const insert = bareDb.prepare("INSERT INTO rows (key, bytes) VALUES (?, ?)");

const swapped = await (await world.app.request(`/jobs/${fresh}/now?as=p1`)).text();
const bytes = Buffer.from((await made.journal.read(fresh)).at(-1)!.bytes);
const live = await world.liveJobs.load(fresh);
const screen = {
  guide: buildGuideState(live, "device", en),
  drawn: drawnOf(live, 0),
  me: "p1",
  access: LEADS_SCREEN,
  notice: null,
  words: en,
};
let ids = 0;
const newKey = () => `id-${String(++ids).padStart(8, "0")}`;
const bare = new Hono()
  .post("/say", async (c) => {
    insert.run(new URLSearchParams(await c.req.text()).get("key")!, bytes);
    return c.html(swapped);
  })
  .get("/guide", (c) => c.html(page(c, <GuidePage {...screen} newKey={newKey} />)));

const listening = (fetch: (request: Request) => Response | Promise<Response>) =>
  new Promise<number>((resolve) => serve({ fetch, port: 0, hostname: "127.0.0.1" }, (info: AddressInfo) => resolve(info.port)));
const ports = { ours: await listening(world.app.fetch), bare: await listening(bare.fetch) };
process.once("SIGTERM", () => {
  rmSync(folder, { recursive: true, force: true });
  process.exit(0);
});
console.log(JSON.stringify({ ...ports, jobs, fresh, long }));
