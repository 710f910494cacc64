import { initialTransition } from "xstate";
import type { Hash } from "../digest/digest.ts";
import { digest } from "../digest/digest.ts";
import type { BindingIntent } from "./commands.ts";
import type { DeviceId, EntryNo, Instant, PersonId, StepId } from "./ids.ts";
import { type Machine, machineOf } from "./machine.ts";
import { stateKey } from "./state-key.ts";
import type { Frozen, Script, Step } from "./step.ts";

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

/** A job at its first call, opened at `at`. */
export function openJob(frozen: Frozen, at: Instant): Job {
  const machine = machineOf(frozen);
  const [snapshot] = initialTransition(machine);
  const opened = machine.resolveState({ value: snapshot.value, context: { ...snapshot.context, lastAt: at } });
  return { frozen, machine, snapshot: opened, proposed: null, readBacks: {} };
}

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

/** The call a job stands at; `null` when it is closed. */
export function currentStep({ frozen, snapshot }: Job): Step | null {
  const value = (snapshot.value as { procedure: object | string }).procedure;
  const leaf = deepest(value);
  return stepsIn(frozen.script).byState.get(leaf) ?? null;
}

export type Attention = "working" | "paused" | "held";
export const attentionState = ({ snapshot }: Job): Attention => (snapshot.value as { attention: Attention }).attention;

/** The levels from a job's state down to a single answer: state, context, answers. */
const ANSWER_DEPTH = 3;
/** The digest of all there is to a job's state: replay is checked against it line by line. */
export const stateDigest = ({ snapshot: { value, context } }: Job): Hash => digest.ofGrowing({ value, context }, ANSWER_DEPTH);

const deepest = (value: object | string): string =>
  typeof value === "string" ? value : deepest(Object.values(value)[0] as object | string);
