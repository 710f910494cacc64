import { goodValue } from "./answers.ts";
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

/** Drives a job from where it stands until `stop` says so; throws where it closes before. Says next at whatever is missing first, to be refused. */
export async function drive<S extends Stand>(read: () => Promise<S>, say: Say, stop: (state: S) => boolean) {
  const refused = new Set<string>();
  for (let n = 0; n < 4000; n++) {
    const state = await read();
    if (stop(state)) return { state, refused };
    if (state.closed) throw new Error(`closed, and never came to where ${stop} is so`);
    const lead = state.people.find((p) => p.role === "lead")!.id;
    const around = { seen: state.revision, as: lead };
    const gate = state.gate;
    if (gate && gate.status !== "good" && gate.status !== "waived") {
      const early = await say({ ...around, key: `early-${state.job}-${state.entry}`, type: "next" });
      if (early.body.reasons[0]?.why !== "gate") throw new Error(`${gate.id} open and not refused: ${JSON.stringify(early.body)}`);
      refused.add(early.body.phase);
      const answer = goodAnswer(gate, state);
      const told =
        "wind" in answer
          ? await say({ ...around, key: `wind-${state.job}-${state.entry}`, type: "reading", kind: "wind", mph: 6, gustMph: 9 })
          : await say(
              {
                ...around,
                as: answer.as,
                key: `answer-${state.job}-${state.entry}`,
                type: "answer",
                gate: gate.id,
                value: answer.value,
                // The second look at a paper is made on a phone of its own.
              },
              gate.status === "unseen" ? `phone-of-${answer.as}` : undefined,
            );
      if (told.status !== 200 || told.body.reasons.length > 0) throw new Error(`${gate.id}: ${JSON.stringify(told.body)}`);
      // A good answer goes on, or shows what else is missing.
      continue;
    }
    const moved = await say({ ...around, key: `next-${state.job}-${state.entry}`, type: "next" });
    if (moved.status !== 200 || moved.body.reasons.length > 0) throw new Error(`${state.step}: ${JSON.stringify(moved.body)}`);
  }
  throw new Error("4,000 calls and still not there");
}
