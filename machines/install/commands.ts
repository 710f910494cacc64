import type { Instant, PersonId, Role } from "./brief.ts";
import type { GateId, Value } from "./gates.ts";
import type { Frozen } from "./script.ts";

export type { Instant } from "./brief.ts";
export type EntryNo = number;
export type DeviceId = string;
export type CommandSource = "press" | "typed" | "office";

export type Reading =
  | { readonly of: "wind"; readonly mph: number; readonly gustMph: number | null; readonly takenAt: Instant; readonly place: string }
  | { readonly of: "thunder"; readonly takenAt: Instant };

/** The only vocabulary. What a command asks for, without who, where from and when. */
export type Ask =
  | { readonly type: "next" }
  | { readonly type: "back" }
  | { readonly type: "hold" }
  | { readonly type: "carryOn" }
  | { readonly type: "answer"; readonly gate: GateId; readonly value: Value }
  | { readonly type: "waive"; readonly gate: GateId; readonly because: string }
  | { readonly type: "makeSafe"; readonly because: string }
  | { readonly type: "standDown"; readonly because: string }
  | { readonly type: "note"; readonly text: string }
  | { readonly type: "reading"; readonly reading: Reading }
  /** The lead's half of an amendment: the whole new job, frozen. */
  | { readonly type: "amend"; readonly because: string; readonly to: Frozen }
  /** The second person's half, naming the entry that proposed it. */
  | { readonly type: "agree"; readonly of: EntryNo }
  | { readonly type: "disagree"; readonly of: EntryNo };

/** The server adds who, in what role, on which device and when; `seen` is the entry the screen showed when the press began. */
export type Command = Ask & {
  readonly key: string;
  readonly seen: EntryNo;
  readonly source: CommandSource;
  readonly heard: string | null;
  readonly by: PersonId;
  readonly role: Role;
  readonly device: DeviceId;
  readonly at: Instant;
  readonly entry: EntryNo;
};

export type Did =
  | "moved"
  | "wentBack"
  | "held"
  | "carriedOn"
  | "answered"
  | "waived"
  | "noted"
  | "read"
  | "proposed"
  | "amended"
  | "discarded"
  | "makingSafe"
  | "goingOn"
  | "standingDown"
  | "closed";
