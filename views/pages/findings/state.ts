import type { FollowUpIs, FollowUpState } from "../../../machines/record/follow-up.ts";
import type { FindingKind } from "../../../machines/record/oversight/finding.ts";

/** What is looked for, by the fields of its form; empty is any. */
export type Looked = Readonly<Record<"crew" | "lead" | "tent" | "phase" | "kind" | "state" | "from" | "to", string>>;
/** Something to choose, by its value. */
export type Choice = { readonly value: string; readonly text: string };

export type KindCount = { readonly kind: FindingKind; readonly title: string; readonly count: number };
export type PhaseCount = { readonly phase: string; readonly name: string; readonly count: number };
/** How long a phase took, in seconds: quartiles over so many jobs. */
export type PhaseSpread = {
  readonly phase: string;
  readonly name: string;
  readonly jobs: number;
  readonly low: number;
  readonly middle: number;
  readonly high: number;
};
/** Answers that came after so many refusals; `to` is `null` where there is no end. */
export type RefusalCount = { readonly from: number; readonly to: number | null; readonly answers: number };

export type FollowUpLine = {
  readonly no: number;
  readonly is: FollowUpIs;
  readonly isText: string;
  readonly text: string;
  /** Who sees to it, in words; `null` where nobody was asked to. */
  readonly who: string | null;
  readonly on: string;
};

/** One finding, in words. */
export type Card = {
  /** Its name on the page. */
  readonly id: string;
  readonly job: string;
  readonly kind: FindingKind;
  readonly entry: number;
  readonly at: string;
  readonly day: string;
  readonly phase: string;
  readonly people: readonly string[];
  readonly title: string;
  readonly what: string;
  readonly where: string;
  /** The call that it is about, as it is said; `null` where it is about none. */
  readonly call: string | null;
  readonly why: string;
  readonly innocent: string;
  readonly state: FollowUpState;
  readonly link: string;
  /** The other entries that it is about. */
  readonly others: readonly number[];
  readonly followUps: readonly FollowUpLine[];
  /** Who may be asked to see to it. */
  readonly crew: readonly Choice[];
};

/** Everything on the page of findings: what is left of all jobs by what is looked for. */
export type FindingsState = {
  readonly looked: Looked;
  readonly choices: Readonly<Record<"tent" | "phase" | "kind" | "state", readonly Choice[]>>;
  readonly found: number;
  readonly jobs: number;
  readonly kinds: readonly KindCount[];
  readonly phases: readonly PhaseCount[];
  readonly times: readonly PhaseSpread[];
  readonly refusals: readonly RefusalCount[];
  readonly cards: readonly Card[];
  /** The place of this page in the list, and that of the one behind it, as an address has them; `null` is the beginning, or the end. */
  readonly before: string | null;
  readonly next: string | null;
};
