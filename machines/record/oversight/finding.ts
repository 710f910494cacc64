import type { Shortfall } from "../../install/checks/computed.ts";
import type { Check, Value } from "../../install/gates.ts";
import type { EntryNo, PersonId, WallTime } from "../../install/ids.ts";
import type { Step } from "../../install/step.ts";
import type { ClockJump } from "../clock-jump.ts";
import { DOUBT_KINDS, type Doubt, type DoubtKind } from "../doubts/doubt.ts";

/** What flags and conditions come to, besides doubts. In the order in which they are listed. */
export const PLAIN_KINDS = [
  "waived",
  "outOfLimit",
  "paper",
  "corrected",
  "found",
  "loosened",
  "amended",
  "takenBack",
  "wentBack",
  "stale",
  "clockJumped",
] as const;
type PlainKind = (typeof PLAIN_KINDS)[number];

/** Every kind of finding, in the order in which they are listed: what cannot well be true first. */
export const FINDING_KINDS = [...DOUBT_KINDS, ...PLAIN_KINDS] as const;
export type FindingKind = (typeof FINDING_KINDS)[number];

/** The words of a call or a question, in no language. */
export type Worded = Pick<Step, "wordsKey" | "params">;

/** What came next at a gate whose answer was out of its limit, in which entry, and how many milliseconds later. */
export type Followed = {
  readonly is: "good" | "out" | "paper" | "unknown" | "waived";
  readonly value: Value | null;
  readonly no: EntryNo;
  readonly ms: number;
};

type PlainFacts = {
  readonly waived: { readonly because: string };
  readonly outOfLimit: { readonly value: Value; readonly check: Check; readonly followed: Followed | null };
  /** `seen`: the entry in which a second person looked at it. Whose paper it is, is not kept: that is a name. */
  readonly paper: { readonly document: string; readonly dated: string; readonly seen: EntryNo | null };
  /** What had shut the way on by what was worked out, and does no more since it was entered otherwise: its name, or its kind where it has none. */
  readonly corrected: { readonly because: string; readonly opened: readonly Shortfall[] };
  /** What was found while the job ran, by its name, and what of the tent is too near to it. */
  readonly found: { readonly name: string; readonly shuts: readonly Shortfall[] };
  readonly loosened: { readonly because: string; readonly fields: readonly string[] };
  readonly amended: { readonly because: string };
  readonly takenBack: { readonly because: string };
  /** How many calls in one go. */
  readonly wentBack: { readonly count: number };
  /** How often, in this phase. */
  readonly stale: { readonly count: number };
  readonly clockJumped: ClockJump;
};
export type FactsOf<K extends FindingKind> = K extends PlainKind ? PlainFacts[K] : Doubt["facts"];

/** Names a finding for good: no two of a job have the same kind and the same entry. */
export type FindingName = { readonly kind: FindingKind; readonly entry: EntryNo };

type Common = {
  readonly entry: EntryNo;
  /** Where: at least one, ascending, and the first hundred of very many. */
  readonly entries: readonly EntryNo[];
  /** The phase in which it began; making safe is one of its own. */
  readonly phase: string;
  /** Ids of the people whose doing it is. Names are kept elsewhere, to be erased there. */
  readonly by: readonly PersonId[];
  /** When the entry that names it was made. */
  readonly at: WallTime;
  /** The same as a day at the site, 2026-06-01. */
  readonly day: string;
  /** Who led, and the size of the tent, when it was found. */
  readonly lead: PersonId | null;
  readonly size: string;
  /** The question or the call that it is about, as it was worded then; `null` where it is about none. */
  readonly asks: Worded | null;
};
/** One thing that a manager looks at. Plain JSON, derived from the entries, which are the record. */
export type Finding = { readonly [K in FindingKind]: Common & { readonly kind: K; readonly facts: FactsOf<K> } }[FindingKind];

/** Doubts that are told by their last entry: several may begin with the same one. What grows is told by its first. */
const NAMED_BY_LAST: readonly DoubtKind[] = ["quickSecond", "outOfLimitThen", "tooFastPhase"];

/** The entry that names a doubt, whatever comes after it. */
export const namingEntry = ({ kind, entries }: Pick<Doubt, "kind" | "entries">): EntryNo =>
  entries.at(NAMED_BY_LAST.includes(kind) ? -1 : 0)!;

/** The size of a tent, in feet. */
export const sizeOf = ({ widthFt, lengthFt }: { readonly widthFt: number; readonly lengthFt: number }): string => `${widthFt}x${lengthFt}`;
