import type { Gate } from "../../install/gates.ts";
import { type Question as Asked, indexOf } from "../../install/script-index.ts";
import type { Frozen } from "../../install/step.ts";
import { type Worded, worded } from "./question.ts";

export const gateOf = ({ script }: Frozen, id: string): Gate | null => indexOf(script).gates.get(id) ?? null;

/** Every gate and condition of a job, as it is asked in words, but for those of the ways out: what they ask sounds like others. */
export const asking = ({ script }: Frozen): Asked[] => {
  const ofWaysOut = new Set(Object.values(script.escapes).flat().map((step) => step.id)); // biome-ignore format: one line reads best
  return [...indexOf(script).questions.values()].filter(({ gate }) => !ofWaysOut.has(gate.id));
};

/** The call or condition that says why, by its id or else its words; `null` where this job has none of it. */
export function becauseAt({ script }: Frozen, id: string): Worded | null {
  const found =
    script.steps.find((s) => s.id === id) ??
    script.steps.find((s) => s.wordsKey === id) ??
    script.conditions.find((c) => c.wordsKey === id) ??
    indexOf(script).questions.get(id);
  return found ? worded(found) : null;
}
