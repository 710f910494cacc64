import { openJob } from "../../machines/install/job.ts";
import type { Frozen } from "../../machines/install/step.ts";
import { attemptOn } from "./attempt.ts";
import { START } from "./fixtures.ts";
import type { Node } from "./state.ts";
import { tentOf } from "./tent.ts";
import { disturbed, tries, truthful } from "./tries.ts";

const COMMANDS = 5000;
/** Truthful often enough that a job gets to its end many times over. */
const TRUTHFUL = 0.75;

/** Numbers from 0 to 1, the same for the same seed: mulberry32, public domain. */
function numbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** Plays anything in any order, things going wrong on top of each other, and holds each command against every invariant. */
export function play(frozen: Frozen, seed: number) {
  const tent = tentOf(frozen);
  const random = numbers(seed);
  const found = new Set<string>();
  const { machine } = openJob(frozen, START);
  const report = (invariant: string, node: Node, as: string, trouble: string) => found.add(`${invariant}: ${trouble}; ${node.by}, ${as}`);
  const attempt = attemptOn({ tent, machine, readBack: new Set(), report });
  const opened = (): Node => ({
    job: openJob(frozen, START),
    memory: { site: "clear", began: tent.order[0]!, resumeAt: null, since: START, under: null },
    entry: 1,
    from: null,
    by: "opened",
  });
  let [at, ended] = [opened(), 0];
  const calls = new Set<string>();
  for (let n = 0; n < COMMANDS; n++) {
    const all = random() < TRUTHFUL ? [] : random() < 0.5 ? disturbed(tent, at) : tries(tent, at);
    const t = all[Math.floor(random() * all.length)] ?? truthful(tent, at);
    // What waits for a second person stays waiting; a clock that runs back is no matter of chance.
    if (t.ask.type === "amend" || t.dropped) continue;
    const next = attempt(at, t);
    if (!next) break;
    at = { ...next, from: null };
    calls.add(JSON.stringify(next.job.snapshot.value));
    if (JSON.stringify(next.job.snapshot.value).includes("closed")) [at, ended] = [opened(), ended + 1];
  }
  return { found: [...found], ended, calls: calls.size };
}
