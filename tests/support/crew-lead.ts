import { goodValue } from "./answers.ts";
import { isOpen } from "./sorts.ts";
import type { GateStand, Stand } from "./stand.ts";

/** What a truthful, well-prepared crew answers to a gate: what was counted out counts back. */
export function goodAnswer(gate: GateStand, state: Stand): { value: object; as: string } | { wind: true } {
  if (gate.check.kind === "wind") return { wind: true };
  const value = goodValue(gate.check);
  return { as: personFor(gate, state), value: value.kind === "counts" ? { ...value, n: gate.want } : value };
}

/** The lead, unless the gate wants somebody else. */
export function personFor(gate: GateStand, state: Stand): string {
  const may = state.people.filter((p) => gate.roles.includes(p.role) && p.name !== gate.notBy);
  return may[0]!.id;
}

/** `phone` is where it is said, if not from an office. */
export type Say = (
  body: object,
  phone?: string,
) => Promise<{
  status: number;
  body: {
    entry: number | null;
    outcome: object | null;
    reply: string;
    reasons: readonly { why: string; gate?: string; status?: string }[];
    phase: string;
    step: string;
    problem?: string;
  };
}>;

type Told = Awaited<ReturnType<Say>>["body"];

/** Drives a job from where it stands until `stop` says so; throws where it closes before. Says next at whatever is missing first, to be refused. */
export async function drive<S extends Stand>(read: () => Promise<S>, say: Say, stop: (state: S) => boolean) {
  const refused = new Set<string>();
  const early = async (state: S, gate: GateStand) => {
    const told = await say({ ...byLead(state), key: `early-${state.job}-${state.entry}`, type: "next" });
    if (told.body.reasons[0]?.why !== "gate") throw new Error(`${gate.id} open and not refused: ${JSON.stringify(told.body)}`);
    refused.add(told.body.phase);
  };
  return { state: await walk(read, say, stop, early), refused };
}

/** The same without a next that is refused: half as many entries. `before` each answer something else may be said. */
export async function walk<S extends Stand>(
  read: () => Promise<S>,
  say: Say,
  stop: (state: S) => boolean,
  before?: (state: S, gate: GateStand) => Promise<void>,
): Promise<S> {
  for (let n = 0; n < 4000; n++) {
    const state = await read();
    if (stop(state)) return state;
    if (state.closed) throw new Error(`closed, and never came to where ${stop} is so`);
    if (isOpen(state.gate)) await before?.(state, state.gate);
    const { status, body } = await goOn(state, say);
    if (status !== 200 || body.reasons.length > 0) throw new Error(`${state.gate?.id ?? state.step}: ${JSON.stringify(body)}`);
  }
  throw new Error("4,000 calls and still not there");
}

const byLead = (state: Stand) => ({ seen: state.revision, as: state.people.find((p) => p.role === "lead")!.id });

/** What is asked, answered well: that goes on, or shows what else is missing. Next where nothing is. */
function goOn(state: Stand, say: Say): Promise<{ status: number; body: Told }> {
  const from = byLead(state);
  const { gate, job, entry } = state;
  if (!isOpen(gate)) return say({ ...from, key: `next-${job}-${entry}`, type: "next" });
  const answer = goodAnswer(gate, state);
  if ("wind" in answer) return say({ ...from, key: `wind-${job}-${entry}`, type: "reading", kind: "wind", mph: 6, gustMph: 9 });
  // The second look at a paper is made on a phone of its own.
  const phone = gate.status === "unseen" ? `phone-of-${answer.as}` : undefined;
  return say({ ...from, as: answer.as, key: `answer-${job}-${entry}`, type: "answer", gate: gate.id, value: answer.value }, phone);
}
