import type { Bounds } from "./bounds.ts";
import type { Role } from "./brief.ts";
import type { Did } from "./commands.ts";
import type { Unit } from "./gates.ts";
import type { EntryNo, GateId, PersonId } from "./ids.ts";

/** How an answer stands against its gate. */
export type Status = "open" | "unknown" | "outOfLimit" | "early" | "stale" | "samePerson" | "good" | "waived";
export type UnmetStatus = Exclude<Status, "good" | "waived">;

/** Why the guide will not do it. Each becomes a sentence that says what is wrong and what to do. */
export type Refusal =
  | { readonly why: "gate"; readonly gate: GateId; readonly status: UnmetStatus }
  | { readonly why: "held"; readonly by: PersonId | null }
  | { readonly why: "paused"; readonly by: PersonId | null }
  | { readonly why: "stop" }
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
  | { readonly why: "noReadBack" }
  | { readonly why: "nothingBefore" }
  | { readonly why: "notHeld" }
  | { readonly why: "future" }
  | { readonly why: "olderReading" }
  | { readonly why: "noProposal" }
  | { readonly why: "sameAsProposer" }
  | { readonly why: "alreadyStandingDown" }
  | { readonly why: "jobClosed" };

/** Every command gets exactly one. */
export type Outcome = { readonly did: Did } | { readonly refused: readonly Refusal[] };
