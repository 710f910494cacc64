import type { LiveJob } from "../machines/conversation/live-job.ts";
import type { Person } from "../machines/install/brief.ts";
import { jobAt } from "../machines/install/job.ts";
import { type Clocks, type CountedFrom, countAgain, momentAt } from "../machines/install/moment.ts";
import { foldName, isPersonId } from "../machines/install/person-name.ts";
import { jumpToTell } from "../machines/record/clock-jump.ts";
import type { JobId } from "../machines/record/entry.ts";
import { replay } from "../machines/record/replay.ts";
import { verifyChain } from "../machines/record/verify-chain.ts";
import { Problem, type Sentence } from "./input/problem.ts";
import { RecordList } from "./record-list.ts";
import { countOn } from "./rehearsal/made-up-clocks.ts";

/** A job as it is kept here, as of its last entry: its record can be added to, and its time is counted on. */
export type KeptJob = Omit<LiveJob, "now" | "jump"> & { readonly entries: RecordList; readonly from: CountedFrom };

/** A kept job as it is when these clocks were read. */
export function seenAt(kept: KeptJob, clocks: Clocks): LiveJob {
  const now = momentAt(kept.from, clocks);
  return { ...kept, job: jobAt(kept.job, now), now, jump: jumpToTell(kept.entries, now) };
}

type Lines = Parameters<typeof replay>[0];

/** A job as its lines say. Throws a Problem where not even its opening can be read: there is nothing to show. */
export function keptJobFrom(id: JobId, lines: Lines, names: LiveJob["names"], clocks: Clocks): KeptJob {
  const chain = verifyChain(lines);
  if (chain.entries[0]?.entry.kind !== "opening") throw new Problem(409, (w) => w.errors.noOpening(id));
  const { job, entries, mismatch } = replayable(id, lines);
  const last = entries.at(-1)!.entry;
  const from = job.frozen.brief.practice ? countOn(last, clocks) : countAgain(last, clocks);
  return { job, entries: new RecordList([...entries]), names, readOnly: mismatch, warning: null, unrecorded: null, from };
}

/** A record whose opening is of a shape, or leads to a state, that cannot be played is one without an opening. */
function replayable(id: JobId, lines: Lines): ReturnType<typeof replay> {
  try {
    const whole = replay(lines);
    if (whole.entries.length > 0) return whole;
  } catch {}
  throw new Problem(409, (w) => w.errors.noOpening(id));
}

/** Whether somebody was named on a job once, though their name may be erased. */
function wasOnJob(entries: LiveJob["entries"], person: string): boolean {
  for (const { entry } of entries) if (entry.people && Object.hasOwn(entry.people, person)) return true;
  return false;
}

/** The person of a job by id or by name. Throws a Problem that lists who is on it. */
export function personOf({ job, names, entries }: Pick<LiveJob, "job" | "names" | "entries">, as: string): Person {
  const { crew } = job.frozen.brief;
  // What looks like an id is one and never a name, and no name looks like one.
  const id = isPersonId(as) ? as : Object.keys(names).find((known) => foldName(names[known]!) === foldName(as));
  const person = crew.find((p) => p.id === id);
  if (person) return person;
  // Who was on the job once may still hold it, from the phone they have: with a watcher's say, and no more.
  if (isPersonId(as) && (Object.hasOwn(names, as) || wasOnJob(entries, as))) return { id: as, role: "watcher" };
  const known = crew.map((p) => names[p.id] ?? p.id).join(", ");
  const notOnJob: Sentence = (w) => w.errors.who(as, known);
  throw new Problem(422, notOnJob, { as: notOnJob });
}
