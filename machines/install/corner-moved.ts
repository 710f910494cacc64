import { finding, isComplete } from "./checks/any-check.ts";
import type { Answer, Gate, Value } from "./gates.ts";
import type { JobState } from "./state.ts";

/** What the lengths between the corner marks say: the marks stand square, one has to move, or nothing yet. */
function squaringOf({ check }: Gate, value: Value, state: Pick<JobState, "answers">): "square" | "out" | null {
  if (check.kind !== "lengths" || !isComplete(check, value, state)) return null;
  const found = finding(check, value, state);
  return found?.kind === "lengths" && (found.squared.is === "square" || found.squared.is === "out") ? found.squared.is : null;
}

/** An answer with what it says of the corner marks: that one had to move is kept until they stand square. */
export function withMoved(gate: Gate, answer: Answer, state: Pick<JobState, "answers">): Answer {
  const squaring = squaringOf(gate, answer.value, state);
  const moved = squaring === "out" || (squaring === null && state.answers[gate.id]?.moved === true);
  return moved ? { ...answer, moved: true } : answer;
}

/** Whether the marks stand square now, and one had to move for it: what was measured from where it stood is measured again. */
export const cornerMoved = (gate: Gate, answer: Answer, state: Pick<JobState, "answers">): boolean =>
  state.answers[gate.id]?.moved === true && squaringOf(gate, answer.value, state) === "square";
