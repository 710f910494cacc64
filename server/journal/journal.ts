import type { PersonId } from "../../machines/install/brief.ts";
import type { Hash, JobId, Sealed } from "../../machines/record/entry.ts";

/** A line as it lies in the store, not trusted yet. */
export type Stored = { readonly no: number; readonly hash: Hash; readonly bytes: Uint8Array };
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
  keyed(job: JobId, key: string): Sealed | null;
  openedWith(key: string): Sealed | null;
  /** Newest first. */
  jobs(): Listed[];
  names(job: JobId): Record<PersonId, string>;
  close(): void;
}

/** The entry does not follow the job's last one. */
export class Conflict extends Error {
  constructor(job: JobId, no: number) {
    super(`entry ${no} of job ${job} does not follow its last entry`);
    this.name = "Conflict";
  }
}
/** The key stands in another entry of the job already. */
export class KeyUsed extends Error {
  constructor(key: string) {
    super(`key ${key} was used before`);
    this.name = "KeyUsed";
  }
}
