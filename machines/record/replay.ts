import { digest } from "../digest/digest.ts";
import { decide } from "../install/decide.ts";
import { type Job, openJob, stateDigest } from "../install/job.ts";
import type { Sealed } from "./entry.ts";
import { type Line, verifyChain } from "./verify-chain.ts";

export type Replayed = {
  readonly job: Job;
  readonly entries: readonly Sealed[];
  readonly mismatch: { readonly no: number; readonly why: "chain" | "replay" } | null;
};

/** What lines came to, for as long as somebody holds them: to verify them asks for it more than once. */
const known = new WeakMap<readonly Line[], Replayed>();

/**
 * Rebuilds a job from its lines: checks the chain, decides every command again, and compares outcome and state with the
 * record. Stops at the first line that differs. Throws if the opening cannot be read.
 */
export function replay(lines: readonly Line[]): Replayed {
  const replaying = replayInSteps(lines);
  for (let step = replaying.next(); ; step = replaying.next()) if (step.done) return step.value;
}

/** The same, which pauses after each command, and in the two longest steps before them: others have their turn in between. */
export function* replayInSteps(lines: readonly Line[]): Generator<undefined, Replayed> {
  const before = known.get(lines);
  if (before) return before;
  const replayed = yield* playedAgain(lines);
  known.set(lines, replayed);
  return replayed;
}

function* playedAgain(lines: readonly Line[]): Generator<undefined, Replayed> {
  const chain = verifyChain(lines);
  const [first, ...rest] = chain.entries;
  if (first?.entry.kind !== "opening") throw new Error("the record has no opening that can be read");
  yield;
  let job = openJob(first.entry.opened, first.entry.at);
  const stop = (at: number): Replayed => ({ job, entries: chain.entries.slice(0, at), mismatch: { no: at + 1, why: "replay" } });
  if (stateDigest(job) !== first.entry.after) return stop(0);
  yield;
  for (const [i, { entry }] of rest.entries()) {
    if (entry.kind !== "command") return stop(i + 1);
    const decided = attempt(() => decide(job, entry.command));
    if (!decided) return stop(i + 1);
    const [next, outcome] = decided;
    if (stateDigest(next) !== entry.after || digest.of(outcome) !== digest.of(entry.outcome)) return stop(i + 1);
    job = next;
    yield;
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
