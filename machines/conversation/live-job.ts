import type { EntryNo, PersonId } from "../install/ids.ts";
import type { Job } from "../install/job.ts";
import type { Moment } from "../install/moment.ts";
import type { ClockJump } from "../record/clock-jump.ts";
import type { Entries } from "../record/entries.ts";
import type { Failure, Lost, LowSpace } from "../record/storage.ts";

/** Why a job can be read and not driven: the first entry that nobody can vouch for, or the place it was kept in is lost. */
export type ReadOnly = { readonly why: "chain" | "replay" | "changed"; readonly no: EntryNo } | Lost;

/** A hold that could not be recorded, or that somebody is hurt, and why. It holds all the same. */
export type UnrecordedHold = { readonly by: PersonId; readonly is: "held" | "paused" | "hurt"; readonly why: Failure | ReadOnly };

/** A job as it is talked to: what its record replays to, the record, and its people. Never changed: what happens makes a new one. */
export type LiveJob = {
  /** As it is at this moment. */
  readonly job: Job;
  readonly now: Moment;
  /** Somebody set the clock: since the last entry, or before that one. */
  readonly jump: ClockJump | null;
  readonly entries: Entries;
  readonly names: Readonly<Record<PersonId, string>>;
  readonly readOnly: ReadOnly | null;
  /** What people should know about the place where it is recorded, before that fails. */
  readonly warning: LowSpace | null;
  readonly unrecorded: UnrecordedHold | null;
};
