import type { WallTime } from "../machines/install/ids.ts";
import type { LiveJobs } from "./jobs.ts";
import type { Journal } from "./journal/journal.ts";

const DAY_MS = 24 * 3600 * 1000;

/** For how many days after the last word on a job its names, and its whole record, are kept; `null` is for good. */
export type KeptDays = { readonly names: number | null; readonly records: number | null };

/** Erases the names of jobs on which nothing was said for long enough, and takes away whole jobs. Rejects with NotWritten. */
export async function removeExpired(journal: Journal, liveJobs: LiveJobs, { names, records }: KeptDays, now: WallTime): Promise<void> {
  if (names === null && records === null) return;
  const silentFor = (days: number | null, lastAt: WallTime) => days !== null && now - lastAt > days * DAY_MS;
  for (const { job, fold } of await journal.folds()) {
    // One that cannot be read says nothing of its age, and is evidence besides.
    if (!fold) continue;
    if (silentFor(records, fold.lastWall)) await liveJobs.remove(job);
    else if (silentFor(names, fold.lastWall))
      for (const person of Object.keys(await journal.people(job))) await liveJobs.eraseName(job, person);
  }
}
