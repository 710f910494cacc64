import type { Person } from "../install/brief.ts";
import type { Intent } from "../install/commands.ts";
import type { Gate } from "../install/gates.ts";
import type { Instant } from "../install/ids.ts";
import { attentionState, missingNow } from "../install/job.ts";
import { indexOf } from "../install/script-index.ts";
import { orderly } from "./orderly.ts";
import { contradicted } from "./shadow.ts";
import { begunIn, type Stand, seenAt } from "./stand.ts";

/** Something that somebody of the made-up crew says, and how long after what was said before. */
export type CrewMove = { readonly by: Person; readonly intent: Intent; readonly afterS: number };

/** A hold is called at once; a look takes its time, and somebody who has not looked takes none. */
const AT_ONCE_S = 2;
const LOOK_S = 90;

/** What the crew says by itself where a rehearsal stands; `null` where they wait for the lead. */
export function crewMove(stand: Stand, at: Instant): CrewMove | null {
  return held(stand, at) ?? lost(stand) ?? second(stand, at);
}

function held(stand: Stand, at: Instant): CrewMove | null {
  for (const { id, brings } of begunIn(stand)) {
    if (brings.kind !== "hold" || stand.world.said[id] || at >= stand.world.begun[id]! + brings.forS * 1000) continue;
    const by = stand.job.frozen.brief.crew.find((person) => person.id === brings.by);
    if (by) return { by, intent: { type: "hold" }, afterS: AT_ONCE_S };
  }
  return null;
}

/** The phone comes back on, so much later: a note of the lead's says so. */
function lost(stand: Stand): CrewMove | null {
  for (const { id, is, brings } of begunIn(stand)) {
    if (brings.kind !== "wind" || brings.lostS === 0 || stand.world.said[id]) continue;
    const by = stand.job.frozen.brief.crew.find(({ role }) => role === "lead")!;
    return { by, intent: { type: "note", text: is }, afterS: brings.lostS };
  }
  return null;
}

/**
 * A second person's answer where the lead gave the first; the look at a paper that was shown. Nothing while the work is held,
 * and nothing over what cannot be true.
 */
function second(stand: Stand, at: Instant): CrewMove | null {
  const { job } = stand;
  if (contradicted(stand, at).length > 0) return null;
  const missing = attentionState(job) === "working" ? missingNow(job, at) : null;
  if (missing?.why !== "gate") return null;
  const gate = indexOf(job.frozen.script).gates.get(missing.gate)!;
  const { answers } = job.snapshot.context;
  const first = missing.status === "unseen" ? answers[gate.id] : gate.secondPersonTo === null ? undefined : answers[gate.secondPersonTo];
  const by = first && job.frozen.brief.crew.find(({ id, role }) => id !== first.by && role !== "lead" && gate.roles.includes(role));
  if (!first || !by) return null;
  const { value, afterS } = missing.status === "unseen" ? { value: first.value, afterS: LOOK_S } : lookOf(stand, gate, at);
  return { by, intent: { type: "answer", gate: gate.id, value }, afterS };
}

function lookOf(stand: Stand, gate: Gate, at: Instant) {
  const fast = begunIn(stand).some(({ id, brings }) => brings.kind === "tooFast" && brings.gate === gate.id && !stand.world.said[id]);
  const value = fast ? orderly(gate, stand.job.snapshot.context, stand.seed) : seenAt(stand, gate, at);
  return { value, afterS: fast ? AT_ONCE_S : LOOK_S };
}
