import type { Person } from "../machines/install/brief.ts";
import type { PersonId } from "../machines/install/ids.ts";
import type { Job } from "../machines/install/job.ts";
import type { Entries } from "../machines/record/entries.ts";
import type { JobId } from "../machines/record/entry.ts";
import { replay } from "../machines/record/replay.ts";
import { verifyChain } from "../machines/record/verify-chain.ts";
import { errors } from "../views/text/en/errors.ts";
import { type Parsed, readBrief } from "./input/brief.ts";
import { Problem } from "./input/problem.ts";
import { RecordList } from "./record-list.ts";

/** A job in memory: what its record replays to, its record, and its people. Never changed: what happens makes a new one. */
export type LiveJob = {
  readonly job: Job;
  readonly entries: Entries;
  readonly names: Readonly<Record<PersonId, string>>;
  /** Why nothing more is recorded of it, in a sentence; `null` while it can be. */
  readonly readOnly: string | null;
  /** What people should know about where it is recorded, in a sentence, before that fails. */
  readonly warning: string | null;
  /** A hold that could not be recorded, and why: it holds all the same. */
  readonly unrecorded: UnrecordedHold | null;
};
export type UnrecordedHold = {
  readonly by: PersonId;
  readonly is: "held" | "paused";
  readonly why: string;
};

/** A job as its lines say. A Problem where not even its opening can be read: there is nothing to show. */
export function liveJobFrom(id: JobId, lines: Parameters<typeof replay>[0], names: LiveJob["names"]): LiveJob & { entries: RecordList } {
  const chain = verifyChain(lines);
  if (chain.entries[0]?.entry.kind !== "opening") throw new Problem(409, errors.noOpening(id));
  const { job, entries, mismatch } = replayable(id, lines);
  const readOnly = mismatch === null ? null : mismatch.why === "chain" ? errors.broken(mismatch.no) : errors.readOnly(mismatch.no);
  return { job, entries: new RecordList([...entries]), names, readOnly, warning: null, unrecorded: null };
}

/** A record whose opening is of a shape, or leads to a state, that cannot be played is one without an opening. */
function replayable(id: JobId, lines: Parameters<typeof replay>[0]): ReturnType<typeof replay> {
  try {
    const whole = replay(lines);
    if (whole.entries.length > 0) return whole;
  } catch {}
  throw new Problem(409, errors.noOpening(id));
}

/** The person of this job by id or by name, or a Problem that lists who is on it. */
export function personOf({ job, names }: Pick<LiveJob, "job" | "names">, as: string): Person {
  const { crew } = job.frozen.brief;
  const person = crew.find((p) => p.id === as || names[p.id]?.toLowerCase() === as.trim().toLowerCase());
  if (person) return person;
  // Who was on the job once may still hold it, from the phone they have: with a watcher's say, and no more.
  const former = Object.keys(names).find((id) => id === as);
  if (former) return { id: former, role: "watcher" };
  const known = crew.map((p) => names[p.id] ?? p.id).join(", ");
  throw new Problem(422, errors.who(as, known), { as: errors.who(as, known) });
}

/** A job's brief as changed by an amendment. People keep their ids by name; a new name gets the next one. */
export function amendment({ job, names }: Pick<LiveJob, "job" | "names">, input: unknown): Parsed {
  const parsed = readBrief(input);
  const known = new Map(Object.entries(names).map(([person, name]) => [name.toLowerCase(), person]));
  let last = Math.max(0, ...Object.keys(names).map((p) => Number(p.slice(1))));
  const ids = new Map(Object.entries(parsed.names).map(([person, name]) => [person, known.get(name.toLowerCase()) ?? `p${++last}`]));
  const crew = parsed.frozen.brief.crew.map((p) => ({ ...p, id: ids.get(p.id)! }));
  // A rehearsal stays one, and a real job never becomes one.
  const { rehearsal: _, ...amendedBrief } = parsed.frozen.brief;
  const { rehearsal } = job.frozen.brief;
  return {
    frozen: { ...parsed.frozen, brief: { ...amendedBrief, ...(rehearsal ? { rehearsal } : {}), crew } },
    names: Object.fromEntries(Object.entries(parsed.names).map(([person, name]) => [ids.get(person)!, name])),
  };
}
