import { without } from "../../machines/lookup/without.ts";
import { type JobId, keyOf, NO_ENTRY, type Sealed } from "../../machines/record/entry.ts";
import { type Fold, foldAll, foldIn } from "../../machines/record/findings.ts";
import { type OverseenJob, overseeAll } from "../../machines/record/oversight/oversight.ts";
import type { People } from "../../machines/record/people.ts";
import { verifyChain } from "../../machines/record/verify-chain.ts";
import { Conflict, type Journal, KeyUsed, type Names, type Stored } from "./journal.ts";
import { memoryAccess } from "./memory-access.ts";
import { memoryCatalog } from "./memory-catalog.ts";
import { memoryDrafts } from "./memory-drafts.ts";
import { memoryFirm } from "./memory-firm.ts";
import { memoryHouse } from "./memory-house.ts";
import { memoryLearning } from "./memory-learning.ts";
import { memoryOversight } from "./memory-oversight.ts";
import { memoryPhotos } from "./memory-photos.ts";

type Kept = { readonly lines: Sealed[]; readonly keys: Map<string, Sealed>; people: People; fold: Fold | null };

/** A journal that lasts as long as the program does. */
export function memoryJournal(): Journal {
  const jobs = new Map<JobId, Kept>();
  const openings = new Map<string, Sealed>();
  const learning = memoryLearning();
  const newest = () => [...jobs].reverse();
  const summaryOf = (job: JobId, { lines, fold }: Kept) => ({ job, entries: lines.length, tip: lines.at(-1)!.hash, fold });

  return {
    open: async (opening, people) => {
      const { job, no, prev } = opening.entry;
      const key = keyOf(opening.entry);
      if (openings.has(key)) throw new KeyUsed(key);
      if (no !== 1 || prev !== NO_ENTRY || jobs.has(job)) throw new Conflict(job, no);
      openings.set(key, opening);
      jobs.set(job, { lines: [opening], keys: new Map([[key, opening]]), people: { ...people }, fold: folded([opening]) });
    },
    append: async (next, people = {}) => {
      const { entry } = next;
      const kept = jobs.get(entry.job);
      const last = kept?.lines.at(-1);
      if (!kept || !last || last.entry.no + 1 !== entry.no || last.hash !== entry.prev) throw new Conflict(entry.job, entry.no);
      if (kept.keys.has(keyOf(entry))) throw new KeyUsed(keyOf(entry));
      kept.lines.push(next);
      kept.keys.set(keyOf(entry), next);
      kept.people = { ...kept.people, ...people };
      const { fold, lines } = kept;
      kept.fold = fold && entry.kind === "command" ? orNull(() => foldIn(fold, entry, (no) => lines[no - 1]?.entry).fold) : folded(lines);
    },
    read: async (job) => (jobs.get(job)?.lines ?? []).map(stored),
    keyed: async (job, key) => jobs.get(job)?.keys.get(key) ?? null,
    openedWith: async (key) => openings.get(key) ?? null,
    jobs: async () => newest().map(([, { lines }]) => ({ opening: lines[0]!, tip: lines.at(-1)! })),
    folds: async () => newest().map(([job, kept]) => summaryOf(job, kept)),
    fold: async (job) => {
      const kept = jobs.get(job);
      return kept ? summaryOf(job, kept) : null;
    },
    refold: async (job) => {
      const kept = jobs.get(job);
      if (kept) kept.fold = folded(kept.lines);
    },
    names: async (job) => namesOf(jobs.get(job)?.people ?? {}),
    people: async (job) => ({ ...jobs.get(job)?.people }),
    eraseName: async (job, person) => {
      const kept = jobs.get(job);
      if (kept) kept.people = without(kept.people, [person]);
    },
    removeJob: async (job) => {
      const [opening] = jobs.get(job)?.lines ?? [];
      if (opening) openings.delete(keyOf(opening.entry));
      jobs.delete(job);
      learning.jobGone(job);
    },
    allNames: async () => new Map([...jobs].map(([job, { people }]) => [job, namesOf(people)])),
    catalog: memoryCatalog(),
    drafts: memoryDrafts(),
    firm: memoryFirm(),
    access: memoryAccess(),
    house: memoryHouse(() => [...jobs].map(([job, { lines }]) => ({ job, no: lines.at(-1)!.entry.no, hash: lines.at(-1)!.hash }))),
    learning,
    photos: memoryPhotos(),
    oversight: memoryOversight(() => [...jobs].map(([job, { lines, people }]) => ({ job, people, overseen: overseen(lines) }))),
    condition: async () => ({ is: "sound" }),
    close: async () => {},
  };
}

const namesOf = (people: People): Names => Object.fromEntries(Object.entries(people).map(([person, { name }]) => [person, name]));

const stored = ({ entry, hash, bytes }: Sealed): Stored => ({
  no: entry.no,
  hash,
  bytes,
  filed: { prev: entry.prev, key: keyOf(entry) },
});

function folded(lines: readonly Sealed[]): Fold | null {
  const chain = verifyChain(lines.map(stored));
  return orNull(() => foldAll(chain.entries, chain.holds ? null : chain.firstMismatch).fold);
}

const known = new WeakMap<readonly Sealed[], { readonly length: number; readonly overseen: OverseenJob | null }>();
/** What was found in a job; looked for once after each entry. */
function overseen(lines: readonly Sealed[]): OverseenJob | null {
  const before = known.get(lines);
  if (before?.length === lines.length) return before.overseen;
  const overseen = orNull(() => overseeAll(verifyChain(lines.map(stored)).entries));
  known.set(lines, { length: lines.length, overseen });
  return overseen;
}

/** A job that cannot be folded is a job all the same. */
function orNull<T>(make: () => T): T | null {
  try {
    return make();
  } catch {
    return null;
  }
}
