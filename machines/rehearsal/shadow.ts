import { meetsLimit } from "../install/checks/any-check.ts";
import type { Command, Intent } from "../install/commands.ts";
import { decide } from "../install/decide.ts";
import type { Value } from "../install/gates.ts";
import type { GateId, Instant } from "../install/ids.ts";
import { attentionState, type Job } from "../install/job.ts";
import type { Outcome } from "../install/refusals.ts";
import { indexOf } from "../install/script-index.ts";
import { wallTime } from "../install/wall-time.ts";
import { begunIn, lasts, type Stand, seenAt } from "./stand.ts";
import { untold } from "./untold.ts";

/** An answer on record that is good, at a gate where something is wrong. */
export type Contradicted = { readonly gate: GateId; readonly seen: Value };

/** Answers on record that what is to be seen speaks against, in the order in which that began. */
export function contradicted(stand: Stand, at: Instant): Contradicted[] {
  const state = stand.job.snapshot.context;
  const { gates, conditions } = indexOf(stand.job.frozen.script);
  return begunIn(stand).flatMap(({ brings }) => {
    if (brings.kind !== "look" && brings.kind !== "tooFast") return [];
    const gate = gates.get(brings.gate)!;
    const [answer, seen] = [state.answers[gate.id], seenAt(stand, gate, at)];
    const isGood = answer !== undefined && meetsLimit(gate.check, answer.value, state);
    if (conditions.has(gate.id) || !isGood || state.reopened[gate.id] || meetsLimit(gate.check, seen, state)) return [];
    return [{ gate: gate.id, seen }];
  });
}

/** Whether somebody still sees what they called a hold for, or waits for help. */
export const isHeldFor = (stand: Stand, at: Instant): boolean =>
  begunIn(stand).some(
    (scene) =>
      (scene.brings.kind === "hold" && stand.world.said[scene.id] && lasts(stand, scene, at)) ||
      (scene.brings.kind === "hurt" && stand.world.told[scene.id] !== undefined && lasts(stand, scene, at)),
  );

/**
 * The job as it would stand had the guide been told all that is to be seen: what is safe at a moment is what the same chart
 * takes there. Where there is nothing that it does not know, the job itself.
 */
export function shadowOf(stand: Stand, at: Instant): Job {
  const told = untold(stand, at).reduce((job, { tell }) => afterIntent(job, tell, at)[0], stand.job);
  const wrong = contradicted(stand, at);
  const looked = wrong.length === 0 ? told : withAnswers(told, wrong);
  const holds = isHeldFor(stand, at) && attentionState(looked) !== "held";
  return holds ? afterIntent(looked, { type: "hold" }, at)[0] : looked;
}

/** What the lead says to a job that is nobody's record. */
export function afterIntent(job: Job, intent: Intent, at: Instant): [Job, Outcome] {
  const { revision } = job.snapshot.context;
  const lead = job.frozen.brief.crew.find(({ role }) => role === "lead")!;
  const said: Command = {
    ...intent,
    at,
    wall: wallTime(at, job.snapshot.context),
    doubtMs: 0,
    key: "shadow",
    seen: revision,
    source: "press",
    heard: null,
    by: lead.id,
    role: lead.role,
    device: "shadow",
    entry: revision + 1,
  };
  return decide(job, said);
}

/** With what is to be seen in place of what was answered, and asked again as if it had been gone back over. */
function withAnswers(job: Job, wrong: readonly Contradicted[]): Job {
  const { context } = job.snapshot;
  const answers = Object.fromEntries(wrong.map(({ gate, seen }) => [gate, { ...context.answers[gate]!, value: seen }]));
  const reopened = Object.fromEntries(wrong.map(({ gate }) => [gate, { by: "back" as const, entry: context.revision }]));
  const known = { ...context, answers: { ...context.answers, ...answers }, reopened: { ...context.reopened, ...reopened } };
  return { ...job, snapshot: job.machine.resolveState({ value: job.snapshot.value, context: known }) };
}
