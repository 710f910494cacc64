import type { LiveJob } from "../machines/conversation/live-job.ts";
import type { JobId } from "../machines/record/entry.ts";
import { verifyChain } from "../machines/record/verify-chain.ts";
import { Problem } from "./input/problem.ts";
import type { LiveJobs } from "./jobs.ts";
import type { Journal } from "./journal/journal.ts";

/** A job with what can be vouched for as it lies in the file now, not as it is remembered. Rejects with a Problem where not even its opening can be. */
export async function vouched(liveJobs: LiveJobs, journal: Journal, id: JobId): Promise<LiveJob> {
  const live = await liveJobs.load(id);
  // Of a lost file memory is all there is, and was checked when it was loaded; the page says which.
  if (live.readOnly?.why === "lost") return live;
  const chain = verifyChain(await journal.read(id));
  const fit = [...live.entries].findIndex((e, i) => e.hash !== chain.entries[i]?.hash);
  if (fit === 0) throw new Problem(409, (w) => w.errors.noOpening(id));
  return fit < 0 ? live : { ...live, entries: live.entries.slice(0, fit), readOnly: { no: fit + 1, why: "changed" } };
}
