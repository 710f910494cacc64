import type { LiveJob } from "../machines/conversation/live-job.ts";
import { digest, type Hash } from "../machines/digest/digest.ts";
import type { Person } from "../machines/install/brief.ts";
import type { Command, CommandSource, Intent } from "../machines/install/commands.ts";
import { decide } from "../machines/install/decide.ts";
import type { DeviceId, EntryNo, Instant, PersonId } from "../machines/install/ids.ts";
import { currentStep, openJob, stateDigest } from "../machines/install/job.ts";
import { foldName, isPersonId } from "../machines/install/person-name.ts";
import { type CommandEntry, type Entry, type JobId, NO_ENTRY, type Sealed, seal } from "../machines/record/entry.ts";
import { replay } from "../machines/record/replay.ts";
import { verifyChain } from "../machines/record/verify-chain.ts";
import { errors } from "../views/text/en/errors.ts";
import type { Hub } from "./hub.ts";
import type { Parsed } from "./input/brief.ts";
import { Problem } from "./input/problem.ts";
import type { Journal } from "./journal/journal.ts";

/** What came in besides the command itself. `request` is the digest of the body, so that a repeat can be told from a reuse. */
export type Envelope = {
  readonly key: string;
  readonly seen: EntryNo;
  readonly as: PersonId;
  readonly source: CommandSource;
  readonly device: DeviceId;
  readonly heard: string | null;
  readonly request: Hash;
};
export type Dependencies = {
  readonly journal: Journal;
  readonly hub: Hub;
  readonly now: () => Instant;
  readonly newId: () => string;
  readonly wakeWord: string;
};

/** The one place where something happens: load, decide, append, publish. All of it synchronous, so two commands never cross. */
export function createLiveJobs({ journal, hub, now, newId, wakeWord }: Dependencies) {
  const desks = new Map<JobId, LiveJob>();

  function load(id: JobId): LiveJob {
    const known = desks.get(id);
    if (known) return known;
    const lines = journal.read(id);
    if (lines.length === 0) throw new Problem(404, errors.noJob(id));
    journal.refold(id);
    const desk = { ...replayed(id, lines), names: journal.names(id) };
    desks.set(id, desk);
    return desk;
  }

  function open({ frozen, names }: Parsed, key: string, request: Hash): JobId {
    const before = journal.openedWith(key);
    if (before) return sameRequest(before, request, key).entry.job;
    const at = now();
    const id = newId();
    const job = openJob(frozen, at);
    const step = currentStep(job)!;
    const entry: Entry = {
      kind: "opening",
      schema: 1,
      job: id,
      no: 1,
      prev: NO_ENTRY,
      procedure: frozen.procedure,
      at,
      after: stateDigest(job),
      phase: step.phase,
      step: step.id,
      request,
      key,
      opened: frozen,
    };
    const opening = seal(entry);
    journal.open(opening, names);
    desks.set(id, { job, entries: [opening], names, readOnly: null });
    return id;
  }

  /** The stored entry of a key that was used before with the same request; `null` for a new key. */
  function repeated(id: JobId, key: string, request: Hash): Sealed | null {
    const before = journal.keyed(id, key);
    return before && sameRequest(before, request, key);
  }

  function say(id: JobId, ask: Intent, from: Envelope): Sealed & { entry: CommandEntry } {
    const desk = load(id);
    if (desk.readOnly) throw new Problem(409, desk.readOnly);
    const person = personOf(desk, from.as);
    const tip = desk.entries.at(-1)!;
    const at = now();
    const { request, as: by, ...said } = from;
    const command: Command = { ...ask, ...said, by, role: person.role, at, entry: tip.entry.no + 1 };
    const [job, outcome] = decide(desk.job, command);
    const step = currentStep(job);
    const entry: CommandEntry = {
      kind: "command",
      schema: 1,
      job: id,
      no: command.entry,
      prev: tip.hash,
      procedure: job.frozen.procedure,
      at,
      after: stateDigest(job),
      phase: step?.phase ?? "closed",
      step: step?.id ?? "closed",
      request,
      command,
      outcome,
    };
    const sealed = { ...seal(entry), entry };
    journal.append(sealed);
    desks.set(id, { ...desk, job, entries: [...desk.entries, sealed] });
    hub.changed(id);
    return sealed;
  }

  function addNames(id: JobId, names: Readonly<Record<PersonId, string>>) {
    journal.name(id, names);
    const desk = load(id);
    desks.set(id, { ...desk, names: { ...desk.names, ...names } });
  }

  return { load, open, repeated, say, addNames, now, wakeWord };
}
export type LiveJobs = ReturnType<typeof createLiveJobs>;

/** The person of this job by id or by name, or a Problem that lists who is on it. */
export function personOf(desk: Pick<LiveJob, "job" | "names">, as: string): Person {
  const { crew } = desk.job.frozen.brief;
  // What looks like an id is one and never a name, and no name looks like one.
  const id = isPersonId(as) ? as : Object.keys(desk.names).find((known) => foldName(desk.names[known]!) === foldName(as));
  const person = crew.find((p) => p.id === id);
  if (person) return person;
  // Who was on the job once may still hold it, from the phone they have: with a watcher's say, and no more.
  const former = isPersonId(as) ? Object.keys(desk.names).find((known) => known === as) : undefined;
  if (former) return { id: former, role: "watcher" };
  const known = crew.map((p) => desk.names[p.id] ?? p.id).join(", ");
  throw new Problem(422, errors.who(as, known), { as: errors.who(as, known) });
}

/** Digest of a request's body as it came. */
export const requestDigest = (body: unknown): Hash => digest.of(body);

function sameRequest(before: Sealed, request: Hash, key: string): Sealed {
  if (before.entry.request !== request) throw new Problem(409, errors.keyUsed(key));
  return before;
}

/** A job from its lines. A Problem where not even its opening can be read: there is nothing to show. */
function replayed(id: JobId, lines: Parameters<typeof replay>[0]): Omit<LiveJob, "names"> {
  const chain = verifyChain(lines);
  if (chain.entries[0]?.entry.kind !== "opening") throw new Problem(409, errors.noOpening(id));
  const { job, entries, mismatch } = replayable(id, lines);
  const readOnly = mismatch === null ? null : mismatch.why === "chain" ? errors.broken(mismatch.no) : errors.readOnly(mismatch.no);
  return { job, entries, readOnly };
}

/** A record whose opening is of a shape, or leads to a state, that cannot be played is one without an opening. */
function replayable(id: JobId, lines: Parameters<typeof replay>[0]): ReturnType<typeof replay> {
  try {
    const whole = replay(lines);
    if (whole.entries.length > 0) return whole;
  } catch {}
  throw new Problem(409, errors.noOpening(id));
}
