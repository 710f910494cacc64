import type { WallTime } from "../machines/install/ids.ts";
import { foldName } from "../machines/install/person-name.ts";
import type { JobId } from "../machines/record/entry.ts";
import type { HouseKeeper } from "./house.ts";
import type { LiveJobs } from "./jobs.ts";
import type { Journal } from "./journal/journal.ts";

const DAY_MS = 24 * 3600 * 1000;

/** For how many days after the last word on a job its names, and its whole record, are kept; `null` is for good. */
export type KeptDays = { readonly names: number | null; readonly records: number | null };

/** What is kept, by whom it is taken away, and where that is noted. */
type Keeps = { readonly journal: Journal; readonly liveJobs: LiveJobs; readonly house: Pick<HouseKeeper, "takeAway"> };

/**
 * Erases the names of jobs on which nothing was said for long enough, and takes away whole jobs, which the house stream notes
 * first: else whoever verifies would miss them. Rejects with NotWritten.
 */
export async function removeExpired({ journal, liveJobs, house }: Keeps, { names, records }: KeptDays, now: WallTime): Promise<void> {
  if (names === null && records === null) return;
  const silentFor = (days: number | null, lastAt: WallTime) => days !== null && now - lastAt > days * DAY_MS;
  const expired: JobId[] = [];
  for (const { job, fold } of await journal.folds()) {
    // One that cannot be read says nothing of its age, and is evidence besides.
    if (!fold) continue;
    if (silentFor(records, fold.lastWall)) expired.push(job);
    else if (silentFor(names, fold.lastWall))
      for (const person of Object.keys(await journal.people(job))) await liveJobs.eraseName(job, person);
  }
  if (expired.length > 0 && (await house.takeAway(expired))) for (const job of expired) await liveJobs.remove(job);
  await forgetLearners(journal);
}

/** Whoever is named on no job and on no list of the firm any more has learned nothing that is kept: what a trainee learns all season outlives one job. */
async function forgetLearners({ learning, firm, allNames }: Journal): Promise<void> {
  const named = new Set<string>();
  for (const names of (await allNames()).values()) for (const name of Object.values(names)) named.add(foldName(name));
  for (const { name } of await firm.people()) named.add(foldName(name));
  for (const { name, folded } of await learning.learners()) if (!named.has(folded)) await learning.forget(name);
}
