import { randomUUID } from "node:crypto";
import { existsSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import Database from "libsql";
import { inject } from "vitest";
import type { StepId } from "../../machines/install/ids.ts";
import { type Entry, type JobId, keyOf, NO_ENTRY, type Sealed, seal } from "../../machines/record/entry.ts";
import { demoBrief } from "../../server/demo.ts";
import { openJournal } from "../../server/journal/open-file.ts";
import { testApp } from "./app.ts";
import { openedJob } from "./job.ts";

/** A raise of the demo job from its opening to its close, as it was recorded: the names of its people, and its entries. */
type Recorded = { readonly names: Readonly<Record<string, string>>; readonly entries: readonly Entry[] };
/** `now`: when the program is to be started on it. How long an answer is good never hangs on when in a run its test comes. */
type Raised = { readonly jobs: ReadonlyMap<StepId, JobId>; readonly now: number };

const HOUR = 3_600_000;
const DAY = 24 * HOUR;
/** After the raise, which takes eight minutes: its wind readings are too old to lift on, what it was told of warnings still holds. */
const STARTED_AFTER = 50 * 60_000;
const date = (at: number) => new Date(at).toISOString().slice(0, 10);

/** Recorded once for all that run at the same time: whoever needs it first leaves it in a folder that they share. */
async function recordedRaise(): Promise<Recorded> {
  const file = join(inject("shared"), "raise.json");
  if (!existsSync(file)) {
    const written = `${file}.${randomUUID()}`;
    writeFileSync(written, JSON.stringify(await record()));
    renameSync(written, file);
  }
  return JSON.parse(readFileSync(file, "utf8")) as Recorded;
}

/** Driven an hour ago, so that its tickets are in force and none of its entries is yet to come. */
async function record(): Promise<Recorded> {
  const now = Date.now();
  const job = await openedJob(demoBrief(date(now - DAY), date(now + 14 * DAY)), testApp(undefined, now - HOUR));
  const { people } = await job.to((s) => s.closed);
  return { names: Object.fromEntries(people.map((p) => [p.id, p.name])), entries: (await job.entries()).map(({ entry }) => entry) };
}

/** A data file with a job for each of these calls, standing there after a raise that was recorded. Gives the jobs' ids by call. */
export async function raisedFile(file: string, steps: readonly StepId[]): Promise<Raised> {
  const { names, entries } = await recordedRaise();
  await (await openJournal(file)).close();
  // In one piece: the journal itself waits for the disk after each entry. What it keeps besides, it rebuilds when it opens.
  const db = new Database(file);
  const line = db.prepare("INSERT INTO entries (job, no, prev, hash, key, bytes) VALUES (?, ?, ?, ?, ?, ?)");
  const name = db.prepare("INSERT INTO names (job, person, name, salt) VALUES (?, ?, ?, '')");
  const jobs = new Map(steps.map((step) => [step, `at-${step.replaceAll(".", "-")}`]));
  db.transaction(() => {
    for (const [step, job] of jobs) {
      const at = entries.findIndex((entry) => entry.step === step);
      if (at < 0) throw new Error(`the recorded raise never comes to ${step}`);
      for (const { entry, hash, bytes } of asJob(job, entries.slice(0, at + 1)))
        line.run(job, entry.no, entry.prev, hash, keyOf(entry), Buffer.from(bytes));
      for (const [person, called] of Object.entries(names)) name.run(job, person, called);
    }
  })();
  db.close();
  return { jobs, now: entries[0]!.at + STARTED_AFTER };
}

/** The same record as that of another job: hashed again, as each line names its job and the hash of the line before. */
function asJob(job: JobId, entries: readonly Entry[]): Sealed[] {
  const lines: Sealed[] = [];
  for (const entry of entries) {
    const line = { ...entry, job, prev: lines.at(-1)?.hash ?? NO_ENTRY };
    lines.push(seal(line.kind === "opening" ? { ...line, key: `open-${job}` } : line));
  }
  return lines;
}
