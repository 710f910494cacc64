import type { Hash } from "../../machines/digest/digest.ts";
import type { PersonId } from "../../machines/install/ids.ts";
import type { JobId, Sealed } from "../../machines/record/entry.ts";
import type { Fold } from "../../machines/record/findings.ts";
import type { Catalog } from "./catalog.ts";

/** A line as it lies in the store, not trusted yet. */
export type Stored = { readonly no: number; readonly hash: Hash; readonly bytes: Uint8Array };
/** What is kept of a job for oversight: how many entries, the hash of the last one, and their fold; null where they cannot be read. */
export type JobSummary = { readonly job: JobId; readonly entries: number; readonly tip: Hash; readonly fold: Fold | null };
export type Listed = { readonly opening: Sealed; readonly tip: Sealed };

/** Where entries are kept. Every call returns when the entry is on disk. One writer. */
export interface Journal {
  /** First entry of a job and the names of its people, together or not at all. Throws KeyUsed. */
  open(opening: Sealed, names: Readonly<Record<PersonId, string>>): void;
  /** The next entry of a job. Throws Conflict where it does not follow the last one, KeyUsed where its key was used. */
  append(entry: Sealed): void;
  /** Adds people to a job, or gives them other names. Names are not part of the chain. */
  name(job: JobId, names: Readonly<Record<PersonId, string>>): void;
  /** All lines of a job in order, unread: verifyChain says whether they hold. */
  read(job: JobId): Stored[];
  /** The entry of a job that a key made, or null. A line that does not fit its hash is no answer to anything: null. */
  keyed(job: JobId, key: string): Sealed | null;
  /** The opening that a key made, in whichever job; otherwise as `keyed`. */
  openedWith(key: string): Sealed | null;
  /**
   * Newest first. One spoiled line never hides the other jobs: `tip` is the last line that fits its hash, and a job whose
   * opening does not is left out (`read` still gives its lines).
   */
  jobs(): Listed[];
  /**
   * Every job there is, newest first, by what is kept of it: no entry is read. A fold is written with the entry that it
   * ends with, or not at all, and is made anew when the file is opened where it does not fit.
   */
  folds(): JobSummary[];
  /** Makes a job's fold anew from its entries. */
  refold(job: JobId): void;
  /** Names of a job's people. Empty where they were erased. */
  names(job: JobId): Record<PersonId, string>;
  /** The tents that are kept in the same place. */
  readonly catalog: Catalog;
  /** Lets the file go, all of it in one piece. Nothing may be called after it. */
  close(): void;
}

/** The entry does not follow the job's last one. */
export class Conflict extends Error {
  constructor(job: JobId, no: number) {
    super(`entry ${no} of job ${job} does not follow its last entry; read the job again and decide anew`);
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
