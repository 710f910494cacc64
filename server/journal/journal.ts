import type { Hash } from "../../machines/digest/digest.ts";
import type { PersonId } from "../../machines/install/ids.ts";
import type { JobId, Sealed } from "../../machines/record/entry.ts";
import type { Fold } from "../../machines/record/findings.ts";
import type { People } from "../../machines/record/people.ts";
import type { Failure, Lost, LowSpace } from "../../machines/record/storage.ts";
import type { Line } from "../../machines/record/verify-chain.ts";
import type { AccessStore } from "./access.ts";
import type { Catalog } from "./catalog.ts";
import type { Drafts } from "./drafts.ts";
import type { Firm } from "./firm.ts";
import type { HouseStore } from "./house.ts";
import type { Learning } from "./learning.ts";
import type { Oversight } from "./oversight.ts";
import type { Photos } from "./photos.ts";

/** A line as it lies in the store, not trusted yet. */
export type Stored = Line;
/** What is kept of a job for oversight: how many entries, the hash of the last one, and their fold; null where they cannot be read. */
export type JobSummary = { readonly job: JobId; readonly entries: number; readonly tip: Hash; readonly fold: Fold | null };
export type Listed = { readonly opening: Sealed; readonly tip: Sealed };

/** Names of people by their ids. They are not part of the chain, so that they can be erased. */
export type Names = Readonly<Record<PersonId, string>>;

/**
 * Where entries are kept. A write is done when its promise is: it is on disk, whole, or the promise is rejected and nothing
 * of it is there. One writer; whoever calls waits for an append to a job before the next one to it. Any write may also be
 * rejected with NotWritten, for the store's own reasons.
 */
export interface Journal {
  /** First entry of a job and the names of its people, together or not at all. Rejects with KeyUsed, Conflict. */
  open(opening: Sealed, people: People): Promise<void>;
  /**
   * The next entry of a job and, with it, names for people new to it. Rejects with Conflict where it does not follow the last
   * entry, KeyUsed where its key was used.
   */
  append(entry: Sealed, people?: People): Promise<void>;
  /** All lines of a job in order, unread: verifyChain says whether they hold. */
  read(job: JobId): Promise<Stored[]>;
  /** The entry of a job that a key made, or null. A line that does not fit its hash is no answer to anything: null. */
  keyed(job: JobId, key: string): Promise<Sealed | null>;
  /** The opening that a key made, in whichever job; otherwise as `keyed`. */
  openedWith(key: string): Promise<Sealed | null>;
  /**
   * Newest first. One spoiled line never hides the other jobs: `tip` is the last line that fits its hash, and a job whose
   * opening does not is left out (`read` still gives its lines).
   */
  jobs(): Promise<Listed[]>;
  /**
   * Every job there is, newest first, by what is kept of it: no entry is read. A fold is written with the entry that it
   * ends with, or not at all, and is rebuilt when the file is opened where it does not fit.
   */
  folds(): Promise<JobSummary[]>;
  /** What is kept of one job; null if there is none by that name. */
  fold(job: JobId): Promise<JobSummary | null>;
  /** Rebuilds a job's fold from its entries. */
  refold(job: JobId): Promise<void>;
  /** Names of a job's people. Empty where they were erased. */
  names(job: JobId): Promise<Names>;
  /** The same with their salts: what an export needs, so that its names can be compared with the chain. */
  people(job: JobId): Promise<People>;
  /** Erases a name and its salt for good. The chain stays whole: it never held them. */
  eraseName(job: JobId, person: PersonId): Promise<void>;
  /** Takes a job away, with its entries and all that is kept of it: what happens once it was kept for as long as it is to be kept. */
  removeJob(job: JobId): Promise<void>;
  /** The names of every job, in one go: to list who leads them. */
  allNames(): Promise<ReadonlyMap<JobId, Names>>;
  /** The tents that are kept in the same place. */
  readonly catalog: Catalog;
  /** The same of jobs that are not opened yet. */
  readonly drafts: Drafts;
  /** The same of what the firm keeps for its next job. */
  readonly firm: Firm;
  /** The same of who may come in. */
  readonly access: AccessStore;
  /** The same of the house stream. */
  readonly house: HouseStore;
  /** What a manager looks at over all jobs, and what was said of it. */
  readonly oversight: Oversight;
  /** What people learn beside their jobs. */
  readonly learning: Learning;
  /** The photos that entries name. */
  readonly photos: Photos;
  /** How the store is doing now. Never rejects. */
  condition(): Promise<Condition>;
  /** Lets the store go, in one piece where it can be. Nothing may be called after it. Never rejects. */
  close(): Promise<void>;
}

/** `low`: before the last write. `lost`: nothing more is written, and what can still be read of it vouches for nothing. */
export type Condition = { readonly is: "sound" } | ({ readonly is: "low" } & LowSpace) | ({ readonly is: "lost" } & Omit<Lost, "why">);

/** The entry does not follow the job's last one. */
export class Conflict extends Error {
  constructor(job: JobId, no: number) {
    super(`entry ${no} of job ${job} does not follow its last entry; read the job again and decide again`);
    this.name = "Conflict";
  }
}
/** The key stands in another entry of the job already. */
export class KeyUsed extends Error {
  constructor(key: string) {
    super(`key ${key} was used before; answer with the entry that it made`);
    this.name = "KeyUsed";
  }
}
/** The store could not take it, whatever it was: nothing of it is there. */
export class NotWritten extends Error {
  readonly failure: Failure;
  constructor(failure: Failure) {
    super(
      `${failure.place} took nothing: ${failure.why === "full" ? "no room left" : failure.why === "lost" ? failure.how : failure.said}`,
    );
    this.name = "NotWritten";
    this.failure = failure;
  }
}
