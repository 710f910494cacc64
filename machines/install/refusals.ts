import type { NoWorkInAir } from "./air.ts";
import type { Bounds } from "./bounds.ts";
import type { Role } from "./brief.ts";
import type { Did } from "./commands.ts";
import type { FactName } from "./facts.ts";
import type { Unit, Value } from "./gates.ts";
import type { EntryNo, GateId, PersonId, WallTime } from "./ids.ts";
import type { Unfit } from "./photo.ts";
import type { OutOfUse, Reopened } from "./state.ts";
import type { Thing } from "./thing.ts";
import type { Things } from "./things-of.ts";
import type { TooLong } from "./time-left.ts";

/** How an answer stands against its gate. */
export type Status =
  | "open"
  | "unknown"
  | "outOfLimit"
  | "noGust"
  | "early"
  | "stale"
  | "recheckDue"
  | "samePerson"
  | "unseen"
  | "good"
  | "waived";
export type UnmetStatus = Exclude<Status, "good" | "waived">;

/**
 * A gate that is not passed: the call's own; one of an earlier call, asked again; or what the work of the next call needs.
 */
export type MissingGate = {
  readonly why: "gate";
  readonly gate: GateId;
  readonly status: UnmetStatus;
  readonly asked: "here" | "again" | "before";
  /** What asks it again; `null` where it was not answered before. */
  readonly because: Reopened["by"] | null;
  /** When time alone opens it, by the wall clock; `null` where it does not. */
  readonly notBefore: WallTime | null;
  /** Of a warning where the tent comes down: lowering takes longer than there is. Absent where it does not, or nobody said how long. */
  readonly tooLong?: TooLong;
};

/** Things that the next call needs and that are out of use. It is no gate, and has none: nothing answers it but what comes back. */
export type MissingThing = {
  readonly why: "outOfUse";
  readonly keys: readonly string[];
  /** The same, as they were reported. */
  readonly things: readonly Pick<OutOfUse, "thing" | "because">[];
  readonly gate?: never;
};

/** Time is what is missing: lowering takes longer than there is, or the hour has come by which nobody is inside. Nothing answers it. */
export type MissingTime = (({ readonly why: "tooLong" } & TooLong) | { readonly why: "pastHour"; readonly clearBy: WallTime }) & {
  readonly gate?: never;
};

/** Air in which the published schedule allows no work. Only a new reading clears it. */
export type MissingAir = NoWorkInAir & { readonly gate?: never };

/** The first thing that keeps "next" from leading on. */
export type Missing = MissingGate | MissingThing | MissingTime | MissingAir;

/** Why the guide will not do it. Each becomes a sentence that says what is wrong and what to do. */
export type Refusal =
  | Missing
  /** A piece or a kit line that this job does not have, and those that it has. */
  | { readonly why: "noSuchThing"; readonly thing: Thing; readonly has: Things[keyof Things] }
  /** Said to be back, and not out. */
  | { readonly why: "notOutOfUse"; readonly thing: Thing }
  | { readonly why: "held"; readonly by: PersonId | null }
  | { readonly why: "paused"; readonly by: PersonId | null }
  /** Somebody was counted under and not out again. */
  | { readonly why: "peopleUnder" }
  | { readonly why: "role"; readonly is: Role; readonly may: readonly Role[] }
  | { readonly why: "notAskedHere"; readonly gate: GateId }
  | { readonly why: "wrongKind"; readonly gate: GateId }
  | { readonly why: "hardGate"; readonly gate: GateId }
  | { readonly why: "movedOn"; readonly revision: EntryNo }
  /** Made against an entry that the record does not have. */
  | { readonly why: "notThereYet"; readonly seen: EntryNo; readonly last: EntryNo }
  | { readonly why: "noSuchGate"; readonly gate: GateId }
  | { readonly why: "unbelievable"; readonly gate: GateId; readonly n: number; readonly unit: Unit | "count"; readonly bounds: Bounds }
  | { readonly why: "sameDevice" }
  /** The second look at a paper by the one who showed it, or on the phone it was shown on. */
  | { readonly why: "ownPaper" }
  | { readonly why: "ownPhone" }
  /** Dated after the day that it is at the site. */
  | { readonly why: "datedAhead"; readonly gate: GateId; readonly dated: string }
  | { readonly why: "noReadBack" }
  | { readonly why: "nothingBefore" }
  | { readonly why: "notHeld" }
  /** Somebody was hurt: carrying on says what became of it. */
  | { readonly why: "sayWhatBecame" }
  | { readonly why: "alreadyHurt"; readonly by: PersonId }
  | { readonly why: "future" }
  | { readonly why: "olderReading" }
  /** A wind in a lee, under what is in force: the site has more. */
  | { readonly why: "inALee" }
  /** There is no thunder that still counts, and none to take back. */
  | { readonly why: "noThunderNear" }
  /** A change that makes limits looser, by their fields in the brief, under the number of the paper in force. */
  | { readonly why: "looserLimit"; readonly paper: "sheet" | "ticket" | "lineOwner"; readonly fields: readonly string[] }
  /** A change that would no longer know what is known. */
  | { readonly why: "forgets"; readonly facts: readonly FactName[] }
  /** What came is no photo, or none that can be kept. */
  | { readonly why: "noPhoto"; readonly unfit: Unfit }
  /** Told as found, and made for a job that has changed since, or with more than what was found. */
  | { readonly why: "notOnlyFound" }
  /** One more than a site may be told as, and could then be corrected. */
  | { readonly why: "siteFull"; readonly most: number }
  | { readonly why: "noProposal" }
  | { readonly why: "sameAsProposer" }
  | { readonly why: "alreadyStandingDown" }
  | { readonly why: "jobClosed" };

/**
 * What was done. A good answer to what was asked also does what "next" would: `and`. Where something else is asked afterward
 * at the same call, that is `asks`. Of an answer in parts, `total` is what its gate's answer came to with it. Where only some of
 * what was short came, `left` are still short.
 */
export type Done = {
  readonly did: Did;
  readonly and?: Did;
  readonly asks?: Missing;
  readonly total?: Value;
  readonly left?: number;
};

/** Every command gets exactly one. */
export type Outcome = Done | { readonly refused: readonly Refusal[] };
