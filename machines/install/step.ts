import type { TentPlan } from "../tent/types.ts";
import type { Brief } from "./brief.ts";
import type { Gate, GateDraft, Happening } from "./gates.ts";
import type { GateId, StepId } from "./ids.ts";
import type { Limits } from "./limits.ts";
import type { Watch } from "./watch.ts";

/** The milestones of a raise in order, then the stand and the strike. */
export const PHASES = [
  "utilitiesMarked",
  "anchorsSet",
  "sectionsJoined",
  "perimeterRaised",
  "interiorRaised",
  "tensioned",
  "inspected",
  "standing",
  "struck",
] as const;

export type PhaseId = (typeof PHASES)[number];

/** Which way out a making safe takes: nothing up yet, poles up, or people under it. */
export const ESCAPES = ["ground", "up", "standing"] as const;

export type EscapeId = (typeof ESCAPES)[number];

/**
 * Kinds of work, by what is dangerous about them: stakes driven; cloth lying or hanging open to the wind; poles going up;
 * going under cloth that is not up; straps eased under poles that stand; poles coming down; people let in. `outside` is all
 * other work in the open, where only lightning shuts the way. What a kind needs for as long as it lasts is in conditions.ts.
 */
export const WORKS = ["driving", "openCloth", "lift", "under", "ease", "lower", "use", "outside"] as const;

export type Work = (typeof WORKS)[number];

export const SITE_STATES = ["clear", "staked", "spread", "raised"] as const;

export type SiteState = (typeof SITE_STATES)[number];

/** One call: what is said, and at most one gate. Plain data, so that a job keeps the script it began with. */
export type Step = {
  readonly id: StepId;
  readonly phase: PhaseId | EscapeId;
  /** Names the words for it in `views/text`; `of` fills them in. */
  readonly wordsKey: string;
  readonly params: Readonly<Record<string, string | number>>;
  readonly gate: Gate | null;
  /** Its kind decides which conditions are judged when it is entered. Finishing calls and making safe have none. */
  readonly work: Work | null;
  /** What can lie or stand on the site from this call on: it says which way out there is, and where a strike begins. */
  readonly site: SiteState;
  /** Keys of the pieces and kit lines without which it is not begun. Finishing calls, making safe and the strike have none. */
  readonly needs: readonly string[];
  /** Where going on starts again after making safe; the step itself where not said. */
  readonly resumeFrom: StepId | null;
  /** The gate without whose answer, ever, there is nothing to do here: a line that nobody went under for stands nowhere. */
  readonly onlyAfter: GateId | null;
  /** What arriving here means for gates that were answered before. */
  readonly begins: Happening | null;
};

/**
 * What some kinds of work need for as long as they last. It may be the gate of a call: then it is asked at that call, and
 * again wherever it is missing.
 */
export type Condition = {
  readonly over: readonly Work[];
  /** A phase in which the work does not need it. */
  readonly notIn?: PhaseId;
  readonly gate: Gate;
  readonly wordsKey: string;
  readonly params: Step["params"];
};

/** All calls of a job in order, the ways out, and what kinds of work need. */
export type Script = {
  readonly steps: readonly Step[];
  readonly escapes: Readonly<Record<EscapeId, readonly Step[]>>;
  readonly conditions: readonly Condition[];
  /** What the standing tent is watched by. Absent where neither a weather plan nor a forecast was told. */
  readonly watch?: Watch;
};

/** A job as it was opened or last amended. Whole in the record, so that replay computes nothing again. */
export type Frozen = {
  readonly procedure: string;
  readonly brief: Brief;
  readonly plan: TentPlan;
  readonly limits: Limits;
  readonly script: Script;
};

/** What a phase writes for one call: its id, which is also its gate's, and what is not the default. */
export type StepDraft = {
  readonly id: string;
  readonly wordsKey?: string;
  readonly params?: Step["params"];
  readonly gate?: GateDraft;
} & Partial<Pick<Step, "work" | "needs" | "site" | "resumeFrom" | "onlyAfter" | "begins">>;
