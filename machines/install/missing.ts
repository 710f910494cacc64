import type { Gate } from "./gates.ts";
import type { GateId, Instant, StepId } from "./ids.ts";
import { lackedBy } from "./out-of-use.ts";
import type { Missing, MissingGate, Status } from "./refusals.ts";
import type { JobState } from "./state.ts";
import { answerStatus, isPassed, isRecheckDue, status } from "./status.ts";
import type { Condition, EscapeId, Script, Step, Work } from "./step.ts";
import { wallTime } from "./wall-time.ts";
import { thundery, WARNING, warned, weatherAt } from "./weather.ts";

/** A gate as it is asked in words: those of the call whose gate it is, or of the condition. */
export type Question = Pick<Step, "wordsKey" | "params"> & { readonly gate: Gate };

/** What is known of a script beside its calls. Made once a script. */
type Index = {
  readonly at: ReadonlyMap<StepId, number>;
  readonly gates: ReadonlyMap<GateId, Gate>;
  readonly questions: ReadonlyMap<GateId, Question>;
  readonly over: ReadonlyMap<Work, readonly Condition[]>;
  readonly conditions: ReadonlySet<GateId>;
  /** Gates that two people answer, by each other. */
  readonly pairs: ReadonlyMap<GateId, readonly GateId[]>;
  /** Gates that are asked again some time after another. */
  readonly recheck: readonly Gate[];
  /** Counts of who went under, with the count of who came out. */
  readonly under: readonly { readonly into: GateId; readonly out: Gate }[];
};
const indexes = new WeakMap<Script, Index>();

export function indexOf(script: Script): Index {
  const known = indexes.get(script);
  if (known) return known;
  const all = [...script.steps, ...Object.values(script.escapes).flat()];
  const asking = all.flatMap((step) => (step.gate ? [{ gate: step.gate, step }] : []));
  const gates = new Map([...script.conditions.map((c) => c.gate), ...asking.map(({ gate }) => gate)].map((g) => [g.id, g]));
  const over = new Map<Work, Condition[]>();
  for (const condition of script.conditions) for (const work of condition.over) over.set(work, [...(over.get(work) ?? []), condition]);
  const pairs = new Map<GateId, GateId[]>();
  const pair = (a: GateId, b: GateId) => pairs.set(a, [...(pairs.get(a) ?? []), b]);
  for (const { id, secondPersonTo } of gates.values())
    if (secondPersonTo !== null) {
      pair(id, secondPersonTo);
      pair(secondPersonTo, id);
    }
  const index: Index = {
    at: new Map(script.steps.map((s, i) => [s.id, i])),
    gates,
    questions: new Map<GateId, Question>([
      ...script.conditions.map((c) => [c.gate.id, c] as const),
      ...asking.map(({ gate, step: { wordsKey, params } }) => [gate.id, { wordsKey, params, gate }] as const),
    ]),
    over,
    conditions: new Set(script.conditions.map((c) => c.gate.id)),
    pairs,
    recheck: script.steps.flatMap(({ gate }) => (gate?.recheck ? [gate] : [])),
    under: [...gates.values()].flatMap((out) => (out.check.kind === "sameCount" ? [{ into: out.check.as, out }] : [])),
  };
  indexes.set(script, index);
  return index;
}

/** Whether somebody was counted under the cloth and not out again: nothing but what finishes that is asked. */
export const peopleUnder = (script: Script, state: JobState): boolean =>
  indexOf(script).under.some(({ into, out }) => state.answers[into] !== undefined && !isPassed(answerStatus(out, state)));

/** The call a job stands at: where the chart is, or one that an amendment put behind it and that is being done. */
export const callAt = (script: Script, step: Step, { doing }: JobState): Step =>
  doing === null || !indexOf(script).at.has(step.id) ? step : script.steps[indexOf(script).at.get(doing)!]!;

/** Whether "next" leads to a call that an amendment put behind the job, or on from one. With people under, they wait. */
export const toAdded = (script: Script, step: Step, state: JobState): boolean =>
  indexOf(script).at.has(step.id) && (state.doing !== null || (state.added.length > 0 && !peopleUnder(script, state)));

/** The call that "next" leads to from where the chart is; `null` where it closes the job. */
export function following(script: Script, step: Step, state: JobState): Step | null {
  const { at } = indexOf(script);
  const call = (id: StepId | null | undefined) => script.steps[at.get(id ?? "") ?? -1] ?? null;
  const here = at.get(step.id);
  if (here === undefined) {
    const way = script.escapes[step.phase as EscapeId];
    return way[way.indexOf(step) + 1] ?? call(state.resumeAt);
  }
  if (toAdded(script, step, state)) return call(state.added[state.doing === null ? 0 : 1] ?? step.id);
  let next = here + 1;
  while (script.steps[next] && isLeftOut(script.steps[next]!, state)) next++;
  return script.steps[next] ?? null;
}

/** Whether a call has nothing to do: nobody ever went under for its line. One that was gone back over may still stand. */
const isLeftOut = ({ onlyAfter }: Step, state: JobState): boolean => onlyAfter !== null && !wasAnswered(onlyAfter, state);

/** Whether a gate was ever answered, open again or not. */
export const wasAnswered = (gate: GateId, { answers, reopened }: JobState): boolean =>
  answers[gate] !== undefined || reopened[gate] !== undefined;

/**
 * The first thing that is missing where a job stands: what "next" asks for. With nobody under and no load up: gates of earlier
 * calls that were reopened, the call's own gate, and what the work of the next call needs. Else: the call's own gate, and
 * what the next call needs, which for a call that finishes is nothing. A thing out of use comes before conditions: however long
 * it takes to mend, they are fresh then. Guard, reply, tile, speech and record read this.
 */
export function asked(script: Script, step: Step, state: JobState, at: Instant): Missing | null {
  const call = callAt(script, step, state);
  // Where calls were put behind the job, its own comes after them.
  const waits = state.doing === null && toAdded(script, step, state);
  const own = waits ? null : ownMissing(script, call, state, at);
  const again = peopleUnder(script, state) || loadUp(script, call) ? null : reopened(script, call, state, at);
  return again ?? own ?? entry(script, following(script, step, state), state, at);
}

/** Calls whose answer is the work itself: going under, and the walk around a tent in use. Their conditions are asked first. */
const ANSWER_IS_WORK: ReadonlySet<Work | null> = new Set(["under", "use"]);

function ownMissing(script: Script, call: Step, state: JobState, at: Instant): Missing | null {
  const { gate } = call;
  const missing = gate && missingAs("here", gate, status(gate, state, at), state);
  if (!missing) return null;
  return (ANSWER_IS_WORK.has(call.work) && entry(script, call, state, at)) || missing;
}

/** Whether something is up and not yet secured: inside a block of calls that is redone as one, past its first and before its last. */
function loadUp(script: Script, { id, resumeFrom }: Step): boolean {
  const after = script.steps[(indexOf(script).at.get(id) ?? Number.NaN) + 1];
  return resumeFrom !== null && resumeFrom !== id && after?.resumeFrom === resumeFrom;
}

/** What a call needs and does not have: things, and conditions of its work. */
export function entry(script: Script, call: Pick<Step, "phase" | "work" | "needs"> | null, state: JobState, at: Instant): Missing | null {
  if (call === null) return null;
  const lacked = lackedBy(call, state);
  if (lacked || call.work === null) return lacked;
  for (const { gate, notIn } of indexOf(script).over.get(call.work) ?? []) {
    if (notIn === call.phase) continue;
    const missing = missingAs("before", gate, status(gate, state, at), state);
    if (missing) return missing;
  }
  return null;
}

/**
 * The first earlier gate of this run that is open again, or else one that is due again. Any other age is left to conditions,
 * and so are gates that are ones. While all is stopped nobody is sent to look: then it is the stop that is missing. On a way
 * out its own gates count.
 */
function reopened(script: Script, call: Step, state: JobState, at: Instant): MissingGate | null {
  const here = indexOf(script).at.get(call.id);
  if (here === undefined) return reopenedOnWayOut(script, call, state);
  const first = firstOpen(script, state);
  const again =
    first !== null && first < here
      ? missingAs("again", script.steps[first]!.gate!, answerStatus(script.steps[first]!.gate!, state), state)
      : recheckDue(script, call, state, at);
  return again && (stopped(script, state, at) ?? again);
}

/** What is asked again by now, behind the call and in this run; not where the tent comes down next. */
function recheckDue(script: Script, call: Step, state: JobState, at: Instant): MissingGate | null {
  const { at: places, recheck } = indexOf(script);
  const [from, here] = [places.get(state.startedFrom) ?? 0, places.get(call.id)!];
  if (script.steps[here + 1]?.begins === "strike") return null;
  const due = recheck.find((gate) => {
    const place = places.get(gate.id)!;
    return place >= from && place < here && isRecheckDue(gate, state, at);
  });
  return due ? missingAs("again", due, "recheckDue", state) : null;
}

function reopenedOnWayOut(script: Script, call: Step, state: JobState): MissingGate | null {
  for (const { id, gate } of script.escapes[call.phase as EscapeId]) {
    if (id === call.id) return null;
    const missing = gate && missingAs("again", gate, answerStatus(gate, state), state);
    if (missing) return missing;
  }
  return null;
}

/** What stops all work, as the condition that says so. */
function stopped(script: Script, state: JobState, at: Instant): MissingGate | null {
  if (weatherAt(state, at) !== "stop") return null;
  const id = thundery(state, at) ? "thunder" : warned(state) ? WARNING : "wind.lower";
  const gate = indexOf(script).gates.get(id);
  return gate ? missingAs("before", gate, status(gate, state, at), state) : null;
}

type ByWaived = WeakMap<JobState["waived"], Map<string, number | null>>;
const firstsOpen = new WeakMap<Script, WeakMap<JobState["answers"], ByWaived>>();

/** The place of the first call of this run whose gate is not passed; an added call is asked at its own place, a condition before its work. */
function firstOpen(script: Script, state: JobState): number | null {
  const { answers, waived, startedFrom, added } = state;
  const byAnswers = firstsOpen.get(script) ?? new WeakMap<JobState["answers"], ByWaived>();
  firstsOpen.set(script, byAnswers);
  const byWaived = byAnswers.get(answers) ?? (new WeakMap() as ByWaived);
  byAnswers.set(answers, byWaived);
  const known = byWaived.get(waived) ?? new Map<string, number | null>();
  byWaived.set(waived, known);
  const key = `${startedFrom} ${added.join()}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  const { at, conditions } = indexOf(script);
  const from = at.get(startedFrom) ?? 0;
  const open = script.steps.findIndex(
    (step, i) => i >= from && isOwn(step, added, conditions) && !isLeftOut(step, state) && !isPassed(answerStatus(step.gate!, state)),
  );
  const first = open < 0 ? null : open;
  known.set(key, first);
  return first;
}

/** Whether a call has a gate that is asked at its own place. */
const isOwn = ({ id, gate }: Step, added: readonly StepId[], conditions: ReadonlySet<GateId>): boolean =>
  gate !== null && !added.includes(id) && !conditions.has(gate.id);

function missingAs(asked: MissingGate["asked"], gate: Gate, is: Status, state: JobState): MissingGate | null {
  if (isPassed(is)) return null;
  const { thunderAt, limits, reopened } = state;
  const quietAt = gate.check.kind === "quiet" && thunderAt !== null ? wallTime(thunderAt + limits.thunderS * 1000, state) : null;
  return { why: "gate", gate: gate.id, status: is, asked, because: reopened[gate.id]?.by ?? null, notBefore: quietAt };
}
