import type { GateId } from "./ids.ts";
import type { JobState } from "./state.ts";
import type { Script, Step } from "./step.ts";

/** Whether a gate was ever answered, open again or not. */
const wasAnswered = (gate: GateId, { answers, reopened }: JobState): boolean => answers[gate] !== undefined || reopened[gate] !== undefined;

/** Whether a call has nothing to do: nobody ever went under for its line. One that was gone back over may still stand. */
export const isLeftOut = ({ onlyAfter }: Step, state: JobState): boolean => onlyAfter !== null && !wasAnswered(onlyAfter, state);

/** A call that may be next to another, and the gate without whose answer it is left out there; `null` where it never is. */
export type Neighbor = { readonly step: Step; readonly after: GateId | null };

/** The calls that may follow one, nearest first: of each line that may be left out the first, up to a call that never is. Empty after the last. */
export const ahead = ({ steps }: Script, at: number): Neighbor[] => nextTo(steps[at]!, steps.slice(at + 1), (step) => step);

/** The calls that "back" may lead to, nearest first: the one before, or the beginning of a lift that was finished. */
export function behind({ steps }: Script, at: number): Neighbor[] {
  // A strike is not gone back out of: what was checked on the way up is coming down.
  const ownWay = (step: Step) => steps[at]!.phase !== "struck" || step.phase === "struck";
  const begins = (step: Step) => (step.gate?.check.kind === "sameCount" ? steps.find((s) => s.id === step.resumeFrom)! : step);
  return nextTo(steps[at]!, steps.slice(0, at).filter(ownWay).reverse(), begins);
}

function nextTo(here: Step, others: readonly Step[], entered: (step: Step) => Step): Neighbor[] {
  const found: Neighbor[] = [];
  let line = here.onlyAfter;
  for (const step of others) {
    const sameLine = step.onlyAfter !== null && step.onlyAfter === line;
    if (step.onlyAfter === null || (sameLine && found.length === 0)) return [...found, { step: entered(step), after: null }];
    if (!sameLine) found.push({ step: entered(step), after: step.onlyAfter });
    line = step.onlyAfter;
  }
  return found;
}

/** The first of them that is not left out in a state; `null` where all are. */
export const nearest = (among: readonly Neighbor[], state: JobState): Step | null =>
  among.find(({ after }) => after === null || wasAnswered(after, state))?.step ?? null;
