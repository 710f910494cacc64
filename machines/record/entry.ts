import { digest, type Hash, hashOf } from "../digest/digest.ts";
import type { Command } from "../install/commands.ts";
import type { EntryNo, Instant, StepId, WallTime } from "../install/ids.ts";
import type { Outcome } from "../install/refusals.ts";
import type { Frozen } from "../install/step.ts";
import type { Commitments } from "./people.ts";

export type JobId = string;

/** The fields of every line of a record. `after` is the digest of the resulting state, so that replay is checked line by line. */
type Line = {
  readonly schema: 1;
  readonly job: JobId;
  readonly no: EntryNo;
  /** Hash of the previous line; 64 zeros for the first. */
  readonly prev: Hash;
  readonly procedure: string;
  readonly at: Instant;
  readonly wall: WallTime;
  readonly after: Hash;
  /** The phase and step of the guide after it. */
  readonly phase: string;
  readonly step: StepId;
  /** Digest of the request as received, to tell a repeated request from a key reused for another one. */
  readonly request: Hash;
  /** What is committed to of the names that it brings, by person; absent where it brings none. */
  readonly people?: Commitments;
};
export type Opening = Line & { readonly kind: "opening"; readonly key: string; readonly opened: Frozen };
export type CommandEntry = Line & { readonly kind: "command"; readonly command: Command; readonly outcome: Outcome };
export type Entry = Opening | CommandEntry;

/** An entry as stored. `bytes` is the canonical JSON (RFC 8785) that was hashed; nothing else is trusted. */
export type Sealed = { readonly entry: Entry; readonly bytes: Uint8Array; readonly hash: Hash };

export const NO_ENTRY: Hash = "0".repeat(64);

/** Canonical bytes of an entry and their hash. Throws on values that JSON cannot hold. */
export function seal(entry: Entry): Sealed {
  const bytes = digest.bytes(entry);
  return { entry, bytes, hash: hashOf(bytes) };
}

/** Reads a stored line. Throws if the bytes do not match the hash, or are not JSON. */
export function unseal(bytes: Uint8Array, hash: Hash): Sealed {
  if (hashOf(bytes) !== hash) throw new Error(`entry does not fit its hash ${hash.slice(0, 12)}`);
  return { entry: JSON.parse(new TextDecoder().decode(bytes)) as Entry, bytes, hash };
}

/** The idempotency key of the request; unique within a job. */
export const keyOf = (entry: Entry): string => (entry.kind === "opening" ? entry.key : entry.command.key);
