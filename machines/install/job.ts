import { initialTransition } from "xstate";
import type { Hash } from "../digest/digest.ts";
import { digest } from "../digest/digest.ts";
import type { BindingIntent } from "./commands.ts";
import type { DeviceId, EntryNo, Instant, PersonId, StepId } from "./ids.ts";
import { type Machine, machineOf } from "./machine.ts";
import { asked, callAt, following, workAhead } from "./missing.ts";
import type { Moment } from "./moment.ts";
import type { Missing } from "./refusals.ts";
import { indexOf, type Question } from "./script-index.ts";
import { stateKey } from "./state-key.ts";
import type { Frozen, Script, Step, Work } from "./step.ts";
import { clocksIn } from "./wall-time.ts";

export type Snapshot = ReturnType<typeof initialTransition<Machine>>[0];

/** A job as it stands: what it was frozen as, its chart, and where it is. */
export type Job = {
  readonly frozen: Frozen;
  readonly machine: Machine;
  readonly snapshot: Snapshot;
  /** The amendment that waits for a second person. */
  readonly proposed: Frozen | null;
  /** Answers that were heard and said back, and wait for "correct": at most one a device. */
  readonly readBacks: Readonly<Record<DeviceId, ReadBack>>;
};

/** A spoken answer that counts for nothing until it is confirmed. */
export type ReadBack = {
  readonly entry: EntryNo;
  readonly intent: BindingIntent;
  readonly by: PersonId;
  readonly seen: EntryNo;
  readonly at: Instant;
};

/** A job at its first call, opened at `at`: its own time begins with the wall clock. */
export function openJob(frozen: Frozen, at: Instant): Job {
  const machine = machineOf(frozen);
  const [snapshot] = initialTransition(machine);
  const opened = machine.resolveState({ value: snapshot.value, context: { ...snapshot.context, lastAt: at, sessionAt: at } });
  return { frozen, machine, snapshot: opened, proposed: null, readBacks: {} };
}

/** A job as it is looked at in a moment, with nothing said. */
export const jobAt = (job: Job, moment: Moment): Job => ({
  ...job,
  snapshot: { ...job.snapshot, context: { ...job.snapshot.context, ...clocksIn(job.snapshot.context, moment) } },
});

/** Every call of a script, ways out included. */
export const allSteps = (script: Script): Step[] => [...script.steps, ...Object.values(script.escapes).flat()];

type Steps = { readonly byId: ReadonlyMap<StepId, Step>; readonly byState: ReadonlyMap<string, Step> };
const known = new WeakMap<Script, Steps>();
/** The calls of a script by their ids, and by their names in the chart. Made once a script: every page asks for them often. */
export function stepsIn(script: Script): Steps {
  const before = known.get(script);
  if (before) return before;
  const steps = allSteps(script);
  const made = { byId: new Map(steps.map((s) => [s.id, s])), byState: new Map(steps.map((s) => [stateKey(s.id), s])) };
  known.set(script, made);
  return made;
}

/** Where the chart of a job is; `null` when it is closed. */
export function leafOf({ frozen, snapshot }: Job): Step | null {
  const value = (snapshot.value as { procedure: object | string }).procedure;
  return stepsIn(frozen.script).byState.get(deepest(value)) ?? null;
}

/** The call a job stands at; `null` when it is closed. */
export function currentStep(job: Job): Step | null {
  const leaf = leafOf(job);
  return leaf && callAt(job.frozen.script, leaf, job.snapshot.context);
}

/** What "next" would ask for at a moment; `null` where it leads on, or the job is closed. */
export function missingNow(job: Job, at: Instant): Missing | null {
  const leaf = leafOf(job);
  return leaf && asked(job.frozen.script, leaf, job.snapshot.context, at);
}

/** What kind of work a condition is asked before at a moment; `null` where that has none, or the job is closed. */
export function workAheadOf(job: Job, at: Instant): Work | null {
  const leaf = leafOf(job);
  return leaf && workAhead(job.frozen.script, leaf, job.snapshot.context, at);
}

/**
 * What a job asks at a moment, to be answered: what is missing, else the call's own gate; `null` where it asks nothing, or waits
 * for a thing that is out of use.
 */
export function questionAt(job: Job, at: Instant): Question | null {
  const missing = missingNow(job, at);
  const gate = missing ? missing.gate : currentStep(job)?.gate?.id;
  return gate === undefined ? null : (indexOf(job.frozen.script).questions.get(gate) ?? null);
}

/** The call that "next" leads to; `null` where it closes the job, or it is closed. */
export function nextStep(job: Job): Step | null {
  const leaf = leafOf(job);
  return leaf && following(job.frozen.script, leaf, job.snapshot.context);
}

export type Attention = "working" | "paused" | "held";
export const attentionState = ({ snapshot }: Job): Attention => (snapshot.value as { attention: Attention }).attention;

/** The levels from a job's state down to a single answer: state, context, answers. */
const ANSWER_DEPTH = 3;
/** The digest of all there is to a job's state: replay is checked against it line by line. */
export const stateDigest = ({ snapshot: { value, context } }: Job): Hash => digest.ofGrowing({ value, context }, ANSWER_DEPTH);

const deepest = (value: object | string): string =>
  typeof value === "string" ? value : deepest(Object.values(value)[0] as object | string);
