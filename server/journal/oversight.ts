import type { EntryNo, WallTime } from "../../machines/install/ids.ts";
import type { JobId } from "../../machines/record/entry.ts";
import type { FollowUp, FollowUpState, SealedFollowUp } from "../../machines/record/follow-up.ts";
import type { Finding, FindingKind } from "../../machines/record/oversight/finding.ts";
import type { Measure } from "../../machines/record/oversight/measure.ts";

/** Names a finding among those of all jobs, for good. */
export type FindingId = { readonly job: JobId; readonly kind: FindingKind; readonly entry: EntryNo };

/** A finding as it is kept, and what became of it. */
export type KeptFinding = { readonly job: JobId; readonly finding: Finding; readonly state: FollowUpState };

/**
 * Which findings are wanted; `null` is any. `crew` is somebody whose doing it is, `lead` who led then, by name: whole, or its
 * first words. `from` and `to` are days at the site, the last one included.
 */
export type FindingFilter = {
  readonly crew: string | null;
  readonly lead: string | null;
  readonly size: string | null;
  readonly phase: string | null;
  readonly kind: FindingKind | null;
  readonly state: FollowUpState | null;
  readonly from: string | null;
  readonly to: string | null;
};
export const ANY: FindingFilter = { crew: null, lead: null, size: null, phase: null, kind: null, state: null, from: null, to: null };

/** The last finding of a page: those after it are older, or stand behind it. */
export type Cursor = FindingId & { readonly at: WallTime };

/** How many findings there are of a kind, in a phase, in a state. */
export type FindingTally = { readonly kind: FindingKind; readonly phase: string; readonly state: FollowUpState; readonly count: number };
/** How many jobs, phases or answers there are with a number. */
export type MeasureTally = Pick<Measure, "what" | "name" | "n"> & { readonly count: number };

/**
 * What is looked at over all jobs. It is written with each entry, in one piece with it. No rehearsal has any of it, and no
 * name is in it: names are looked up where they are kept.
 */
export interface Oversight {
  /** Newest first, by when the entry was made that names them. */
  findings(filter: FindingFilter, before: Cursor | null, most: number): Promise<KeptFinding[]>;
  finding(id: FindingId): Promise<KeptFinding | null>;
  tallies(filter: FindingFilter): Promise<FindingTally[]>;
  /** Numbers of the jobs that a filter leaves, by day, lead, crew, size and phase. They are of no kind and in no state. */
  measures(filter: FindingFilter): Promise<MeasureTally[]>;
  /** The last follow-up; `null` if there is none. */
  lastFollowUp(): Promise<SealedFollowUp | null>;
  /** The one that a key made; `null` where none did. */
  keyedFollowUp(key: string): Promise<SealedFollowUp | null>;
  /** What was said about a finding, in order. */
  followUps(id: FindingId): Promise<FollowUp[]>;
  /** The next follow-up. Rejects with FollowUpConflict where it does not follow the last one, or its key was used. */
  appendFollowUp(next: SealedFollowUp): Promise<void>;
}

/** The follow-up does not follow the last one, or its key made one already. */
export class FollowUpConflict extends Error {
  constructor(no: number) {
    super(`follow-up ${no} does not follow the last one, or its key was used; read the last one again`);
    this.name = "FollowUpConflict";
  }
}
