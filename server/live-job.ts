import type { LiveJob } from "../machines/conversation/live-job.ts";
import type { Person } from "../machines/install/brief.ts";
import { foldName, isPersonId } from "../machines/install/person-name.ts";
import type { JobId } from "../machines/record/entry.ts";
import { replay } from "../machines/record/replay.ts";
import { verifyChain } from "../machines/record/verify-chain.ts";
import { Problem, type Sentence } from "./input/problem.ts";
import { RecordList } from "./record-list.ts";

/** A job as its lines say. Throws a Problem where not even its opening can be read: there is nothing to show. */
export function liveJobFrom(id: JobId, lines: Parameters<typeof replay>[0], names: LiveJob["names"]): LiveJob & { entries: RecordList } {
  const chain = verifyChain(lines);
  if (chain.entries[0]?.entry.kind !== "opening") throw new Problem(409, (w) => w.errors.noOpening(id));
  const { job, entries, mismatch } = replayable(id, lines);
  return { job, entries: new RecordList([...entries]), names, readOnly: mismatch, warning: null, unrecorded: null };
}

/** A record whose opening is of a shape, or leads to a state, that cannot be played is one without an opening. */
function replayable(id: JobId, lines: Parameters<typeof replay>[0]): ReturnType<typeof replay> {
  try {
    const whole = replay(lines);
    if (whole.entries.length > 0) return whole;
  } catch {}
  throw new Problem(409, (w) => w.errors.noOpening(id));
}

/** The person of a job by id or by name. Throws a Problem that lists who is on it. */
export function personOf({ job, names }: Pick<LiveJob, "job" | "names">, as: string): Person {
  const { crew } = job.frozen.brief;
  // What looks like an id is one and never a name, and no name looks like one.
  const id = isPersonId(as) ? as : Object.keys(names).find((known) => foldName(names[known]!) === foldName(as));
  const person = crew.find((p) => p.id === id);
  if (person) return person;
  // Who was on the job once may still hold it, from the phone they have: with a watcher's say, and no more.
  const former = isPersonId(as) ? Object.keys(names).find((known) => known === as) : undefined;
  if (former) return { id: former, role: "watcher" };
  const known = crew.map((p) => names[p.id] ?? p.id).join(", ");
  const notOnJob: Sentence = (w) => w.errors.who(as, known);
  throw new Problem(422, notOnJob, { as: notOnJob });
}
