import { finding, isComplete } from "./checks/any-check.ts";
import type { Answer, Gate, Value } from "./gates.ts";
import type { JobState } from "./state.ts";

/** Whether the lengths say that the corner marks are square, or that one has to move; `null` while they can't tell. */
function squaringOf({ check }: Gate, value: Value, state: Pick<JobState, "answers">): "square" | "out" | null {
  if (check.kind !== "lengths" || !isComplete(check, value, state)) return null;
  const found = finding(check, value, state);
  return found?.kind === "lengths" && (found.squared.is === "square" || found.squared.is === "out") ? found.squared.is : null;
}

/** The answer, flagged if a corner mark has to move. The flag stays until the marks are square. */
export function withMoved(gate: Gate, answer: Answer, state: Pick<JobState, "answers">): Answer {
  const squaring = squaringOf(gate, answer.value, state);
  const moved = squaring === "out" || (squaring === null && state.answers[gate.id]?.moved === true);
  return moved ? { ...answer, moved: true } : answer;
}

/** Whether the marks are square now after one had to move: distances taken from its old place no longer count. */
export const cornerMoved = (gate: Gate, answer: Answer, state: Pick<JobState, "answers">): boolean =>
  state.answers[gate.id]?.moved === true && squaringOf(gate, answer.value, state) === "square";
