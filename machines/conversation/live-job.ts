import type { EntryNo, PersonId } from "../install/ids.ts";
import type { Attention, Job } from "../install/job.ts";
import type { Entries } from "../record/entries.ts";
import type { LostStorage, LowStorage, StorageFailure } from "../record/storage.ts";

/**
 * Why a job can be read and not driven: the first entry that nobody can vouch for, and what is wrong with it; or what became
 * of the place where its entries were kept.
 */
export type ReadOnly = { readonly no: EntryNo; readonly why: "chain" | "replay" | "changed" } | LostStorage;

/** A hold that could not be recorded, and why. It holds all the same. */
export type UnrecordedHold = {
  readonly by: PersonId;
  readonly is: Exclude<Attention, "working">;
  readonly why: ReadOnly | StorageFailure;
};

/** A job as it is talked to: what its record replays to, the record itself, and what its people are called. */
export type LiveJob = {
  readonly job: Job;
  readonly entries: Entries;
  readonly names: Readonly<Record<PersonId, string>>;
  /** Why it can be read and not driven; `null` where it can. */
  readonly readOnly: ReadOnly | null;
  /** Where its entries are kept there is little room left. */
  readonly lowStorage: LowStorage | null;
  /** A hold that is not in the record. */
  readonly unrecorded: UnrecordedHold | null;
};
