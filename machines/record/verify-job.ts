import type { Hash } from "../digest/digest.ts";
import { type Entry, type JobId, seal } from "./entry.ts";
import { replay } from "./replay.ts";
import { type Mismatch, verifyChain } from "./verify-chain.ts";

export type Line = { readonly no: number; readonly hash: Hash; readonly bytes: Uint8Array };
/** What is wrong with the first entry that does not fit: with the chain, with what it replays to, or with the job it is of. */
export type Verdict = {
  readonly title: string | null;
  readonly entries: number;
  /** The hash of the last entry that fits. */
  readonly tip: Hash | null;
  readonly mismatch: { readonly no: number; readonly why: Mismatch | "replay" | "opening" } | null;
};

/** Whether the lines of a job hang together, are that job's, and replay to what they say. */
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

/** An entry of an exported record as a line: its bytes are made anew, so that they fit its hash only where nothing was edited. */
export function lineOf(exported: unknown): Line {
  const { hash, marks: _derived, ...entry } = Object(exported) as { hash?: unknown; marks?: unknown } & Record<string, unknown>;
  return { no: entry.no as number, hash: String(hash), bytes: bytesOf(entry as unknown as Entry) };
}

/** Nothing that can be written down has no bytes: no hash fits them. */
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
