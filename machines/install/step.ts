import type { TentPlan } from "../tent/types.ts";
import type { Brief } from "./brief.ts";
import type { Gate, GateDraft } from "./gates.ts";
import type { StepId } from "./ids.ts";
import type { Limits } from "./limits.ts";

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
  /** Started and safer finished than left: weather does not stop it, hold does. */
  readonly committed: boolean;
  /** What can lie or stand on the site from this call on: it says which way out there is, and where a strike begins. */
  readonly site: SiteState;
  /** Where going on starts again after making safe; the step itself where not said. */
  readonly resumeFrom: StepId | null;
};

/** All calls of a job in order, and the ways out. */
export type Script = { readonly steps: readonly Step[]; readonly escapes: Readonly<Record<EscapeId, readonly Step[]>> };

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
} & Partial<Pick<Step, "committed" | "site" | "resumeFrom">>;
