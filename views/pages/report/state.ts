import type { KitRow } from "../../../machines/record/kit-counts.ts";
import type { TentPlan } from "../../../machines/tent/types.ts";
import type { LayoutState } from "../layout/state.ts";
import type { PhotoShown } from "../photos/state.ts";
import type { Digests } from "../proof/state.ts";
import type { TimeTaken } from "../record/state.ts";

/** A fact of a brief, its paper or its plan: what it is called, and what it is. */
export type Fact = { readonly name: string; readonly is: string };
export type FactGroup = { readonly name: string; readonly facts: readonly Fact[] };

/** Somebody on a job, or who was; `erased` where the name was taken out, and the id stands for it. */
export type ReportPerson = { readonly name: string; readonly role: string; readonly erased: boolean };

/** Somebody's word at a gate: who, when, by which entry. */
export type Word = { readonly who: string; readonly time: string; readonly no: number };
/** An answer as it was given, or why there is none. `outOfLimit`, `paper`: whether it was marked so; `seen` is who looked at a paper besides. */
export type AnswerShown = Word & {
  readonly text: string;
  readonly outOfLimit: boolean;
  readonly paper: boolean;
  readonly seen: Word | null;
};
/** A gate with all that was answered to it, or why it was left out, the last one last. */
export type GateShown = {
  readonly id: string;
  /** What the guide says there, and what it asks. */
  readonly say: string;
  readonly ask: string | null;
  readonly good: string;
  readonly hard: boolean;
  /** Whether somebody else answers it than the one before. */
  readonly second: boolean;
  readonly answers: readonly AnswerShown[];
};
export type GateGroup = { readonly name: string; readonly gates: readonly GateShown[] };

export type ReadingShown = Word & { readonly text: string; readonly refused: boolean };
export type FindingShown = { readonly title: string; readonly what: string; readonly entries: string };

/** A whole job for paper: what it was, who did it, what was asked and answered, what stands out, and what proves it. */
export type ReportState = {
  readonly job: string;
  readonly title: string;
  readonly size: string;
  readonly rehearsal: boolean;
  readonly zone: string;
  readonly opened: string;
  readonly last: string;
  readonly made: string;
  readonly standsAt: string;
  /** Why the record is not whole, in one sentence; `null` where it is. */
  readonly problem: string | null;
  readonly entries: number;
  readonly digests: Digests;
  readonly facts: readonly FactGroup[];
  readonly plan: TentPlan;
  readonly site: LayoutState["site"];
  readonly around: LayoutState["around"];
  readonly people: readonly ReportPerson[];
  readonly gates: readonly GateGroup[];
  /** Phases that the job has not come to. */
  readonly ahead: readonly string[];
  readonly readings: readonly ReadingShown[];
  readonly times: readonly TimeTaken[];
  readonly counts: readonly { readonly name: string; readonly count: number }[];
  readonly findings: readonly FindingShown[];
  readonly kit: readonly KitRow[];
  readonly photos: readonly PhotoShown[];
};
