import type { PersonId } from "../install/ids.ts";
import type { Job } from "../install/job.ts";
import type { Sealed } from "../record/entry.ts";

/** A job as it is talked to: what its record replays to, the record itself, and what its people are called. */
export type LiveJob = {
  readonly job: Job;
  readonly entries: readonly Sealed[];
  readonly names: Readonly<Record<PersonId, string>>;
  /** Why it can be read and not driven; `null` where it can. */
  readonly readOnly: string | null;
};
