import type { EntryNo, PersonId } from "../install/ids.ts";
import type { Job } from "../install/job.ts";
import type { Sealed } from "../record/entry.ts";

/** Why a job can be read and not driven: the first entry that nobody can vouch for, and what is wrong with it. */
export type ReadOnly = { readonly no: EntryNo; readonly why: "chain" | "replay" | "changed" };

/** A job as it is talked to: what its record replays to, the record itself, and what its people are called. */
export type LiveJob = {
  readonly job: Job;
  readonly entries: readonly Sealed[];
  readonly names: Readonly<Record<PersonId, string>>;
  /** Why it can be read and not driven; `null` where it can. */
  readonly readOnly: ReadOnly | null;
};
