import type { Hash } from "../digest/digest.ts";
import { type Entry, type JobId, seal } from "./entry.ts";
import { replay } from "./replay.ts";
import { type Line, type Mismatch, verifyChain } from "./verify-chain.ts";

export type { Line } from "./verify-chain.ts";
/** The result of verifying a job. `mismatch` is the first entry that does not fit: its chain, its replay, or its job. */
export type Verdict = {
  readonly title: string | null;
  readonly entries: number;
  /** Hash of the last entry that fits. */
  readonly tip: Hash | null;
  readonly mismatch: { readonly no: number; readonly why: Mismatch | "replay" | "opening" } | null;
};

/** Checks that the lines form a chain, belong to this job, and replay to what they record. */
export function verifyJob(job: JobId, lines: readonly Line[]): Verdict {
  const chain = verifyChain(lines);
  const first = chain.entries[0]?.entry;
  const verdict = (fit: number, mismatch: Verdict["mismatch"]): Verdict => ({
    title: titleOf(first),
    entries: lines.length,
    tip: chain.entries[fit - 1]?.hash ?? null,
    mismatch,
  });
  if (!first) return verdict(0, { no: 1, why: chain.holds ? "opening" : chain.why });
  if (first.job !== job) return verdict(0, { no: 1, why: "job" });
  try {
    const { entries, mismatch } = replay(lines);
    if (mismatch?.why === "replay") return verdict(entries.length, { no: mismatch.no, why: "replay" });
    return verdict(entries.length, chain.holds ? null : { no: chain.firstMismatch, why: chain.why });
  } catch {
    return verdict(0, { no: 1, why: "opening" });
  }
}

/** A line from an exported entry. Its bytes are rebuilt, so they match its hash only if nothing was edited. */
export function lineOf(exported: unknown): Line {
  const { hash, marks: _derived, ...entry } = Object(exported) as { hash?: unknown; marks?: unknown } & Record<string, unknown>;
  return { no: entry.no as number, hash: String(hash), bytes: bytesOf(entry as unknown as Entry) };
}

/** Empty if the entry has no JSON form; no hash matches that. */
function bytesOf(entry: Entry): Uint8Array {
  try {
    return seal(entry).bytes;
  } catch {
    return new Uint8Array();
  }
}

function titleOf(entry: Entry | undefined): string | null {
  const title = entry?.kind === "opening" ? (entry.opened as { brief?: { title?: unknown } } | null)?.brief?.title : null;
  return typeof title === "string" ? title : null;
}
