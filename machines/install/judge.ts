import { applyAmendment } from "./amend.ts";
import { unbelievable } from "./checks/values.ts";
import type { Command, Did } from "./commands.ts";
import type { GateId } from "./ids.ts";
import type { Job } from "./job.ts";
import type { Outcome, Refusal } from "./refusals.ts";
import type { Step } from "./step.ts";
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
  if ((command.type === "answer" || command.type === "waive") && !hasGate(job, command.gate))
    return [job, { refused: [{ why: "noSuchGate", gate: command.gate }] }];
  const [after, effects] = transition(job.machine, job.snapshot, command);
  const outcomes = effects.flatMap(({ type, params }): Outcome[] => {
    if (type === "did") return [{ did: (params as { what: Did }).what }];
    return type === "refuse" ? [{ refused: (params as { reasons: Refusal[] }).reasons }] : [];
  });
  const [outcome] = outcomes;
  if (outcomes.length !== 1 || !outcome) throw new Error(`"${command.type}" got ${outcomes.length} outcomes, wanted exactly one`);
  if (command.type === "answer" && "did" in outcome) {
    const beyond = unbelievable(command.value);
    if (beyond) return [job, { refused: [{ why: "unbelievable", gate: command.gate, ...beyond }] }];
  }
  const next: Job = { ...job, snapshot: after, proposed: proposedBy(command, outcome, job) };
  return ["did" in outcome && outcome.did === "amended" ? applyAmendment(next, job.proposed!) : next, outcome];
}

function hasGate({ frozen }: Job, gate: GateId): boolean {
  const asks = (step: Step) => step.gate?.id === gate;
  return frozen.script.steps.some(asks) || Object.values(frozen.script.escapes).some((way) => way.some(asks));
}

function proposedBy(command: Command, outcome: Outcome, job: Job): Job["proposed"] {
  if (!("did" in outcome)) return job.proposed;
  if (command.type === "amend") return command.to;
  return outcome.did === "amended" || outcome.did === "discarded" ? null : job.proposed;
}
