import { meetsLimit } from "../../machines/install/checks/any-check.ts";
import { attentionState } from "../../machines/install/job.ts";
import { indexOf } from "../../machines/install/script-index.ts";
import { amiss } from "../../machines/rehearsal/amiss.ts";
import { orderly } from "../../machines/rehearsal/orderly.ts";
import type { Move } from "../../machines/rehearsal/right-move.ts";
import { seeded } from "../../machines/rehearsal/seeded.ts";
import { breeze, type Stand } from "../../machines/rehearsal/stand.ts";
import { windReading } from "../../machines/rehearsal/untold.ts";
import type { Player } from "./play.ts";

/** One move in so many is a mistake: where something has happened, and where nothing has. */
const ONE_IN = { stakes: 2, routine: 12 } as const;

/** What somebody does instead of what is right, as people slip: presses on, says what is wanted to be heard, does not wait. */
export function slip(right: Move, stand: Stand, at: number): Move {
  const { script } = stand.job.frozen;
  const state = stand.job.snapshot.context;
  switch (right.type) {
    case "answer": {
      const gate = indexOf(script).gates.get(right.gate)!;
      const isCondition = indexOf(script).conditions.has(gate.id);
      if (meetsLimit(gate.check, right.value, state)) {
        const random = seeded(at, "slip");
        if (right.value.kind === "measure" && random.int(0, 1) === 1) return { ...right, value: { ...right.value, n: right.value.n + 1 } };
        const wrong = amiss(gate, random);
        return wrong && !isCondition ? { ...right, value: wrong } : right;
      }
      return isCondition && state.answers[gate.id] ? { type: "next" } : { ...right, value: orderly(gate, state, stand.seed) };
    }
    case "wait":
      if (attentionState(stand.job) !== "working") return { type: "carryOn", became: state.hurt ? "fine" : null };
      return windReading(breeze(stand), at);
    case "next":
    case "carryOn":
    case "backInUse":
      return right;
    default:
      return { type: "next" };
  }
}

/** Does what is right, and errs at random, the same for the same seed. */
export const errs = (seed: number): Player => {
  const random = seeded(seed, "errs");
  return (right, stand, at) => (random.int(1, oneIn(right, stand)) === 1 ? slip(right, stand, at) : right);
};

function oneIn(right: Move, { job }: Stand): number {
  if (right.type === "next") return ONE_IN.routine;
  if (right.type !== "answer") return ONE_IN.stakes;
  const gate = indexOf(job.frozen.script).gates.get(right.gate)!;
  return meetsLimit(gate.check, right.value, job.snapshot.context) ? ONE_IN.routine : ONE_IN.stakes;
}
