import type { LiveJob, UnrecordedHold } from "../machines/conversation/live-job.ts";
import type { Hash } from "../machines/digest/digest.ts";
import type { Intent } from "../machines/install/commands.ts";
import type { PersonId } from "../machines/install/ids.ts";
import { openJob } from "../machines/install/job.ts";
import type { Clocks } from "../machines/install/moment.ts";
import { without } from "../machines/lookup/without.ts";
import { type CommandEntry, type JobId, type Sealed, seal } from "../machines/record/entry.ts";
import type { People } from "../machines/record/people.ts";
import { isPhoto } from "../machines/record/photos.ts";
import { answersBack } from "../machines/rehearsal/site.ts";
import type { Languages } from "../views/text/languages.ts";
import type { AccessSettings } from "./access/settings.ts";
import type { Hub } from "./hub.ts";
import type { Parsed } from "./input/brief.ts";
import { Problem } from "./input/problem.ts";
import { type Condition, Conflict, type Journal, type Names, NotWritten } from "./journal/journal.ts";
import { type KeptJob, keptJobFrom, personOf, seenAt } from "./live-job.ts";
import { type Asked, type Envelope, type Given, nextEntry, openingEntry } from "./next-entry.ts";
import { createQueues } from "./queues.ts";
import { RecordList } from "./record-list.ts";
import { countOn, madeUpClocks, STEP_S } from "./rehearsal/made-up-clocks.ts";
import { createPlayOn } from "./rehearsal/play-on.ts";
import { checkRehearsal } from "./rehearsal/whose.ts";

export type Dependencies = {
  readonly journal: Journal;
  readonly hub: Hub;
  /** Reads both clocks of the machine. */
  readonly clock: () => Clocks;
  readonly newId: () => string;
  readonly wakeWord: string;
  readonly access: AccessSettings;
  /** To put pages and answers into; the first is for whoever asks for none of them. */
  readonly languages: Languages;
};
/** What was sent, and who looks whether it may be said as that person: `admit` throws a Problem where it may not. */
type Sent = Envelope & {
  readonly admit?: (live: LiveJob, as: PersonId) => void;
  /** In a rehearsal, how long it takes on its made-up site. */
  readonly takesS?: number;
};
type Recorded = { readonly live: LiveJob; readonly entry: CommandEntry };
export type Unrecorded = { readonly live: LiveJob; readonly unrecorded: UnrecordedHold; readonly heard: string | null };
/** How it went, with the job as it stands then: recorded, held though not recorded, or only something to be told. */
export type Said<T> = Recorded | Unrecorded | { readonly live: LiveJob; readonly tell: T };

/**
 * The one place where something happens: load, decide, append, publish. Each job has a queue, and one command at a time is in
 * it from the first to the last of these, so that two never cross, however long the journal takes. Other jobs do not wait.
 */
export function createLiveJobs({ journal, hub, clock, newId, wakeWord }: Omit<Dependencies, "languages" | "access">) {
  const jobs = new Map<JobId, KeptJob>();
  const inTurn = createQueues();
  /** How the journal was doing when a page was last asked for. What is said asks it anyway, by being written. */
  let condition: Condition = { is: "sound" };
  /** Holds that the journal could not take, in the order they were said. */
  const waiting = new Map<JobId, readonly Given[]>();

  /** A job as it stands now, and how its journal is doing. */
  async function load(id: JobId): Promise<LiveJob> {
    const known = jobs.get(id) ?? (await inTurn(id, () => kept(id)));
    condition = await journal.condition();
    return inCondition(seenAt(known, clocksOf(known, 0)));
  }
  /** The clocks that a job's time is told by; those of a rehearsal are made up. */
  const clocksOf = ({ job, from }: KeptJob, onS: number): Clocks => {
    const { practice } = job.frozen.brief;
    return practice ? madeUpClocks(practice, from, clock(), onS) : clock();
  };
  function inCondition(live: LiveJob): LiveJob {
    if (condition.is === "lost") return { ...live, readOnly: { why: "lost", place: condition.place, how: condition.how } };
    return condition.is === "low" ? { ...live, warning: condition } : live;
  }

  /** From memory, or else from the journal. Only in the job's turn. */
  async function kept(id: JobId): Promise<KeptJob> {
    const known = jobs.get(id);
    if (known) return known;
    condition = await journal.condition();
    if (condition.is === "lost") throw new NotWritten({ ...condition, why: "lost" });
    const lines = await journal.read(id);
    if (lines.length === 0) throw new Problem(404, (w) => w.errors.noJob(id));
    await refold(id);
    const read = keptJobFrom(id, lines, await journal.names(id), clock());
    jobs.set(id, read);
    return read;
  }

  /** Names with a salt of their own each. */
  const salted = (names: Names): People =>
    Object.fromEntries(Object.entries(names).map(([person, name]) => [person, { name, salt: newId() }]));

  /** A fold is derived: a job is read all the same where there is no room for one. */
  async function refold(id: JobId) {
    try {
      await journal.refold(id);
    } catch (error) {
      if (!(error instanceof NotWritten)) throw error;
    }
  }

  /** Opens a job. A key opens one, however often and however fast it comes. */
  const open = ({ frozen, names }: Parsed, key: string, request: Hash): Promise<JobId> =>
    inTurn(`opened with ${key}`, async () => {
      const before = await journal.openedWith(key);
      if (before) return sameRequest(before, request, key).entry.job;
      const { wall: at, elapsedMs } = clock();
      const id = newId();
      const job = openJob(frozen, at);
      const people = salted(names);
      const opening = seal(openingEntry(id, frozen, job, { key, request, at, people }));
      await journal.open(opening, people);
      const from = { at, wall: at, doubtMs: 0, elapsedMs };
      jobs.set(id, { job, entries: new RecordList([opening]), names, readOnly: null, warning: null, unrecorded: null, from });
      return id;
    });

  /**
   * One thing said to a job by somebody on it. `mean` makes of the job as it stands what is asked of it, or what is told and
   * not recorded. A key is done once: said again with the same request, it is answered with the entry that it made. Rejects
   * with a Problem, or with NotWritten where the journal does not take it.
   */
  async function say<T>(
    id: JobId,
    { admit, takesS = STEP_S, ...from }: Sent,
    mean: (live: LiveJob) => Asked | { readonly tell: T },
  ): Promise<Said<T>> {
    const said = await inTurn(id, async (): Promise<Said<T>> => {
      const stuck = await writeWaiting(id);
      const known = await kept(id);
      const clocks = clocksOf(known, takesS);
      const live = seenAt(known, clocks);
      const { id: as } = personOf(live, from.as);
      admit?.(live, as);
      const before = await journal.keyed(id, from.key);
      if (before) {
        const { entry } = sameRequest(before, from.request, from.key);
        if (entry.kind === "command" && entry.command.by !== as) throw new Problem(409, (w) => w.errors.keyUsed(from.key));
        if (entry.kind === "command") return { live, entry };
      }
      const meant = mean(live);
      if ("tell" in meant) return { live, tell: meant.tell };
      if (answersBack(known.job.frozen))
        checkRehearsal(known, { as, device: from.device, intent: meant.intent }, await journal.learning.rehearsalOf(id));
      const given: Given = { ...from, ...meant, as, clocks, people: salted(newNames(known, meant.names)) };
      try {
        const { readOnly } = live;
        if (readOnly) throw new Problem(409, (w) => w.notRecordedText(readOnly));
        // What waits comes first: nothing goes on past a hold.
        if (stuck) throw stuck;
        const done = await write(known, given);
        if (!answersBack(known.job.frozen)) return done;
        await plays.answer(id);
        return { ...done, live: seenAt(await kept(id), clocksOf(await kept(id), 0)) };
      } catch (error) {
        return heldAnyway(known, given, error);
      }
    });
    return { ...said, live: inCondition(said.live) };
  }

  /** A hold holds, written or not, and every screen says which. Everything else is done when it is written, or not at all. */
  function heldAnyway(live: KeptJob, given: Given, error: unknown): Unrecorded {
    const is = HOLDS.get(given.intent.type) ?? null;
    const why = error instanceof NotWritten ? error.failure : live.readOnly;
    if (is === null || why === null) throw error;
    const id = jobOf(live);
    const unrecorded: UnrecordedHold = { by: given.as, is, why };
    const before = waiting.get(id) ?? [];
    if (error instanceof NotWritten && !before.some(({ key }) => key === given.key)) waiting.set(id, [...before, given]);
    const next = { ...live, unrecorded: graver(live.unrecorded, unrecorded) };
    jobs.set(id, next);
    hub.changed(id);
    return { live: seenAt(next, given.clocks), unrecorded, heard: given.heard };
  }

  /** Decides one command on the job as it stands, writes its entry, and lets everybody know. */
  async function write(live: KeptJob, given: Given): Promise<Recorded> {
    const { entry, job, from: counted } = nextEntry(live, given);
    // What a rehearsal made up of its time has passed; what runs on runs from now.
    const from = answersBack(job.frozen) ? countOn(counted, clock()) : counted;
    const people = "did" in entry.outcome ? given.people : {};
    const names = given.names && "did" in entry.outcome ? given.names : {};
    const sealed: Sealed = seal(entry);
    try {
      // First: a photo that no entry names does no harm, and an entry that names none would.
      if (given.photo && isPhoto(entry)) await journal.photos.put(entry.job, entry.command.hash, given.photo);
      await journal.append(sealed, people);
    } catch (error) {
      // Somebody else wrote to this job: what is remembered of it is out of date.
      if (error instanceof Conflict) jobs.delete(entry.job);
      throw error;
    }
    const next = { ...live, job, entries: live.entries.with(sealed), names: { ...live.names, ...names }, unrecorded: null, from };
    jobs.set(entry.job, next);
    hub.changed(entry.job);
    return { live: seenAt(next, given.clocks), entry };
  }

  /** Writes the holds of a job that could not be written before, and says why the first that still cannot be is not. Only in the job's turn. */
  async function writeWaiting(id: JobId): Promise<NotWritten | null> {
    for (let [given, ...rest] = waiting.get(id) ?? []; given; [given, ...rest] = rest) {
      try {
        await write(await kept(id), given);
      } catch (error) {
        if (error instanceof NotWritten) return error;
        throw error;
      }
      if (rest.length > 0) waiting.set(id, rest);
      else waiting.delete(id);
    }
    return null;
  }
  /** Tries once more to write the holds that could not be written. To be called now and then. */
  const writeHolds = async (): Promise<void> => {
    await Promise.all([...waiting.keys()].map((id) => inTurn(id, () => writeWaiting(id))));
  };

  /** Erases what somebody is called on a job, for good; who they are called in its record is their id from then on. Rejects with NotWritten. */
  const eraseName = (id: JobId, person: PersonId): Promise<void> =>
    inTurn(id, async () => {
      await journal.eraseName(id, person);
      const known = jobs.get(id);
      if (known) jobs.set(id, { ...known, names: without(known.names, [person]) });
      hub.changed(id);
    });

  /** Takes a job away for good, with all that is kept of it. Rejects with NotWritten. */
  const remove = (id: JobId): Promise<void> =>
    inTurn(id, async () => {
      await journal.removeJob(id);
      jobs.delete(id);
      waiting.delete(id);
    });

  const plays = createPlayOn({ kept, write, clocksOf });
  /** Plays a rehearsal that was just opened up to the call that it begins at. */
  const beginRehearsal = (id: JobId): Promise<void> => inTurn(id, () => plays.begin(id));

  return { load, open, say, beginRehearsal, writeHolds, eraseName, remove, wakeWord };
}
export type LiveJobs = ReturnType<typeof createLiveJobs>;

/** What holds the work whether or not it can be recorded. */
const HOLDS: ReadonlyMap<Intent["type"], UnrecordedHold["is"]> = new Map([
  ["hold", "held"],
  ["pause", "paused"],
  ["hurt", "hurt"],
]);

/** The graver of two that could not be recorded is the one that screens show. */
function graver(before: UnrecordedHold | null, now: UnrecordedHold): UnrecordedHold {
  const rank = ({ is }: UnrecordedHold) => ["hurt", "held", "paused"].indexOf(is);
  return before && rank(before) <= rank(now) ? before : now;
}

/** The names that are not known yet, or that somebody is no longer called by. */
const newNames = ({ names: known }: KeptJob, names: Names = {}): Names =>
  Object.fromEntries(Object.entries(names).filter(([person, name]) => known[person] !== name));

const jobOf = ({ entries }: Pick<LiveJob, "entries">): JobId => entries.at(0)!.entry.job;

function sameRequest(before: Sealed, request: Hash, key: string): Sealed {
  if (before.entry.request !== request) throw new Problem(409, (w) => w.errors.keyUsed(key));
  return before;
}
