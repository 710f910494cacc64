import type { WallTime } from "../../machines/install/ids.ts";
import type { Trouble, Way } from "../../machines/install/practice.ts";
import type { JobId } from "../../machines/record/entry.ts";

export type LearnerId = string;
/** Somebody of the firm who learns: the person on a job whose name it is, however it was typed. */
export type Learner = { readonly id: LearnerId; readonly name: string; readonly folded: string };

/** What is kept of one item for a learner, as JSON and not trusted yet: `null` where it is none any more. */
export type KeptCard = { readonly item: string; readonly card: unknown };

/** A round of questions, of which `body` is the same. `version` is 1 when it is begun, and one more with each answer. */
export type KeptRound = {
  readonly id: string;
  readonly learner: LearnerId;
  readonly job: JobId;
  readonly at: WallTime;
  readonly version: number;
  readonly body: unknown;
};

/** How a rehearsal went: its moments, how many of them were unsafe, and whether all of the job was gone through. */
export type RehearsalResult = { readonly at: WallTime; readonly moments: number; readonly unsafe: number; readonly whole: boolean };

/** A rehearsal that somebody led or walked: `job` is its own, `from` the one that it is a copy of; `over` once it has ended. */
export type Rehearsed = {
  readonly job: JobId;
  readonly from: JobId;
  readonly learner: LearnerId;
  readonly way: Way;
  readonly trouble: Trouble;
  readonly seed: number;
  readonly at: WallTime;
  readonly over: RehearsalResult | null;
};

/**
 * What people learn: cards, rounds of questions, rehearsals. None of it is in a job's record, nor in anything that is made of
 * records. A write is done, on disk, when its promise is.
 */
export interface Learning {
  /** The learner of a name, upper and lower case being the same; begun under this id where there was none. */
  learner(name: string, id: LearnerId): Promise<Learner>;
  /** The same, where there is one. */
  learnerCalled(name: string): Promise<Learner | null>;
  /** Everybody, by name. */
  learners(): Promise<Learner[]>;
  /** Erases a learner for good, with all that they learned; nothing where nobody is called so. */
  forget(name: string): Promise<void>;
  /** By item. */
  cards(learner: LearnerId): Promise<KeptCard[]>;
  round(id: string): Promise<KeptRound | null>;
  /** The round of a learner on a job that was begun last. */
  lastRound(learner: LearnerId, job: JobId): Promise<KeptRound | null>;
  /**
   * Begins a round (version 1), or puts it in place of the version before, with the card that an answer changed: both or neither.
   * Rejects with Changed where it is of another version meanwhile, or was begun already.
   */
  saveRound(round: KeptRound, card: KeptCard | null): Promise<void>;
  /** The same job again replaces its row. */
  startRehearsal(row: Rehearsed): Promise<void>;
  /** Nothing where no rehearsal was started on that job. */
  endRehearsal(job: JobId, result: RehearsalResult): Promise<void>;
  /** The newest first. */
  rehearsalsOf(learner: LearnerId): Promise<Rehearsed[]>;
  rehearsalOf(job: JobId): Promise<Rehearsed | null>;
}
