import type { Hash } from "../digest/digest.ts";
import { digest } from "../digest/digest.ts";
import { decide } from "../install/decide.ts";
import { type Job, openJob, stateDigest } from "../install/job.ts";
import type { Sealed } from "./entry.ts";
import { verifyChain } from "./verify-chain.ts";

export type Replayed = {
  readonly job: Job;
  readonly entries: readonly Sealed[];
  readonly mismatch: { readonly no: number; readonly why: "chain" | "replay" } | null;
};

/**
 * Rebuilds a job from its lines: checks the chain, decides every command again, and compares outcome and state with the
 * record. Stops at the first line that differs. Throws if the opening cannot be read.
 */
export function replay(lines: readonly { readonly no: number; readonly hash: Hash; readonly bytes: Uint8Array }[]): Replayed {
  const chain = verifyChain(lines);
  const [first, ...rest] = chain.entries;
  if (first?.entry.kind !== "opening") throw new Error("the record has no opening that can be read");
  let job = openJob(first.entry.opened, first.entry.at);
  const stop = (at: number): Replayed => ({ job, entries: chain.entries.slice(0, at), mismatch: { no: at + 1, why: "replay" } });
  if (stateDigest(job) !== first.entry.after) return stop(0);
  for (const [i, { entry }] of rest.entries()) {
    if (entry.kind !== "command") return stop(i + 1);
    const decided = attempt(() => decide(job, entry.command));
    if (!decided) return stop(i + 1);
    const [next, outcome] = decided;
    if (stateDigest(next) !== entry.after || digest.of(outcome) !== digest.of(entry.outcome)) return stop(i + 1);
    job = next;
  }
  return { job, entries: chain.entries, mismatch: chain.holds ? null : { no: chain.firstMismatch, why: "chain" } };
}

/** Null if deciding throws: a command that the chart cannot read was never decided, so its entry does not fit. */
function attempt<T>(decided: () => T): T | null {
  try {
    return decided();
  } catch {
    return null;
  }
}
