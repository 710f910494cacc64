import { applyAmendment } from "./amend.ts";
import { unbelievable } from "./checks/values.ts";
import type { Command, Did } from "./commands.ts";
import { allSteps, type Job } from "./job.ts";
import type { Outcome, Refusal } from "./refusals.ts";
import { transition } from "./transition.ts";

/** Commands that mean something only against what the screen was showing. A hold, a reading or a note always counts. */
const REVISION_BOUND: ReadonlySet<Command["type"]> = new Set(["next", "back", "carryOn", "answer", "waive", "standDown"]);

/** The chart's one outcome for a command, at a job whose clock was set. Throws where there is not exactly one: that is a mistake in the chart. */
export function judge(job: Job, command: Command): [Job, Outcome] {
  const { revision } = job.snapshot.context;
  // No screen has shown what is not there yet: to take such a number for new would let everything through, at once and twice.
  if (REVISION_BOUND.has(command.type) && command.seen >= command.entry)
    return [job, { refused: [{ why: "notThereYet", seen: command.seen, last: command.entry - 1 }] }];
  if (REVISION_BOUND.has(command.type) && command.seen < revision) return [job, { refused: [{ why: "movedOn", revision }] }];
  const wrong = command.type === "answer" || command.type === "waive" ? wrongAnswer(job, command) : null;
  if (wrong) return [job, { refused: [wrong] }];
  const [after, effects] = transition(job.machine, job.snapshot, command);
  const outcomes = effects.flatMap(({ type, params }): Outcome[] => {
    if (type === "did") return [{ did: (params as { what: Did }).what }];
    return type === "refuse" ? [{ refused: (params as { reasons: Refusal[] }).reasons }] : [];
  });
  const [outcome] = outcomes;
  if (outcomes.length !== 1 || !outcome) throw new Error(`"${command.type}" got ${outcomes.length} outcomes, wanted exactly one`);
  const next: Job = { ...job, snapshot: after, proposed: proposedBy(command, outcome, job) };
  return ["did" in outcome && outcome.did === "amended" ? applyAmendment(next, job.proposed!) : next, outcome];
}

/** A gate that no call of this job asks, or a number that nobody can mean: no call could say anything better to it. */
function wrongAnswer({ frozen }: Job, command: Extract<Command, { type: "answer" | "waive" }>): Refusal | null {
  const { gate } = command;
  if (!allSteps(frozen.script).some((step) => step.gate?.id === gate)) return { why: "noSuchGate", gate };
  const beyond = command.type === "answer" ? unbelievable(command.value) : null;
  return beyond && { why: "unbelievable", gate, ...beyond };
}

function proposedBy(command: Command, outcome: Outcome, job: Job): Job["proposed"] {
  if (!("did" in outcome)) return job.proposed;
  if (command.type === "amend") return command.to;
  return outcome.did === "amended" || outcome.did === "discarded" ? null : job.proposed;
}
