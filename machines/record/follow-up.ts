import { digest, type Hash, hashOf } from "../digest/digest.ts";
import type { DeviceId, EntryNo, PersonId, WallTime } from "../install/ids.ts";
import { type JobId, NO_ENTRY } from "./entry.ts";
import type { FindingKind } from "./oversight/finding.ts";

/** What a manager does with a finding: says something of it, lets it stand, or has somebody see to it. */
export const FOLLOW_UPS = ["noted", "accepted", "followedUp"] as const;
export type FollowUpIs = (typeof FOLLOW_UPS)[number];

/** What became of a finding. A note decides nothing: it leaves a finding as it was. */
export const FOLLOW_UP_STATES = ["open", "accepted", "followedUp"] as const;
export type FollowUpState = (typeof FOLLOW_UP_STATES)[number];

/** A line of the stream of follow-ups, which is one for all jobs: a record stays as its crew left it. */
export type FollowUp = {
  readonly schema: 1;
  readonly no: number;
  /** Hash of the previous line; 64 zeros for the first. */
  readonly prev: Hash;
  readonly key: string;
  /** Digest of the request as received, to tell a repeated request from a key reused for another one. */
  readonly request: Hash;
  readonly at: WallTime;
  readonly finding: { readonly job: JobId; readonly kind: FindingKind; readonly entry: EntryNo };
  readonly is: FollowUpIs;
  readonly text: string;
  /** Who sees to it, of the people of that job; `null` is the office itself. Only of what is followed up. */
  readonly who: PersonId | null;
  /** The device of the office that it was written on. */
  readonly device: DeviceId;
};

/** A follow-up as stored. `bytes` is the canonical JSON (RFC 8785) that was hashed; nothing else is trusted. */
export type SealedFollowUp = { readonly entry: FollowUp; readonly bytes: Uint8Array; readonly hash: Hash };

/** Canonical bytes of a follow-up and their hash. */
export function sealFollowUp(entry: FollowUp): SealedFollowUp {
  const bytes = digest.bytes(entry);
  return { entry, bytes, hash: hashOf(bytes) };
}

/** Reads a stored line; `null` where its bytes do not match the hash, or are no follow-up. */
export function unsealFollowUp(bytes: Uint8Array, hash: Hash): SealedFollowUp | null {
  if (hashOf(bytes) !== hash) return null;
  try {
    const entry: unknown = JSON.parse(new TextDecoder().decode(bytes));
    return isFollowUp(entry) ? { entry, bytes, hash } : null;
  } catch {
    return null;
  }
}

const isFollowUp = (entry: unknown): entry is FollowUp => {
  const { no, prev, finding, is } = Object(entry) as Partial<FollowUp>;
  return Number.isInteger(no) && typeof prev === "string" && typeof finding === "object" && FOLLOW_UPS.some((one) => one === is);
};

/** What became of a finding by all that was said about it, in order. */
export const stateOf = (about: readonly Pick<FollowUp, "is">[]): FollowUpState =>
  about.map(({ is }) => is).findLast((is) => is !== "noted") ?? "open";

/** A line as it lies in a store, with what the store files it under. */
export type FiledFollowUp = {
  readonly no: number;
  readonly prev: Hash;
  readonly hash: Hash;
  readonly key: string;
  readonly job: JobId;
  readonly kind: string;
  readonly entry: number;
  readonly is: string;
  readonly bytes: Uint8Array;
};
export type FollowUpsVerdict = {
  readonly entries: number;
  /** Hash of the last line that fits. */
  readonly tip: Hash | null;
  readonly mismatch: { readonly no: number; readonly why: "hash" | "gap" | "prev" | "filed" } | null;
};

/** Checks that the lines form one chain, and lie where they say. Lines missing from the end cannot be told from the stream itself. */
export function verifyFollowUps(lines: readonly FiledFollowUp[]): FollowUpsVerdict {
  let tip: Hash | null = null;
  for (const [i, line] of lines.entries()) {
    const why = misfit(line, i + 1, tip ?? NO_ENTRY);
    if (why !== null) return { entries: lines.length, tip, mismatch: { no: i + 1, why } };
    tip = line.hash;
  }
  return { entries: lines.length, tip, mismatch: null };
}

function misfit(line: FiledFollowUp, no: number, prev: Hash): NonNullable<FollowUpsVerdict["mismatch"]>["why"] | null {
  const entry = unsealFollowUp(line.bytes, line.hash)?.entry;
  if (!entry) return "hash";
  if (entry.no !== no || line.no !== no) return "gap";
  if (entry.prev !== prev) return "prev";
  const { finding, key, is } = entry;
  const filed = [line.prev, line.key, line.job, line.kind, line.entry, line.is];
  const said = [prev, key, finding.job, finding.kind, finding.entry, is];
  return filed.every((part, i) => part === said[i]) ? null : "filed";
}
