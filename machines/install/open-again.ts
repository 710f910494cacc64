import type { Gate } from "./gates.ts";
import type { GateId, Instant, StepId } from "./ids.ts";
import { isLeftOut } from "./neighbors.ts";
import type { MissingGate, Status } from "./refusals.ts";
import { indexOf } from "./script-index.ts";
import type { JobState } from "./state.ts";
import { answerStatus, isPassed, isRecheckDue, status } from "./status.ts";
import type { EscapeId, Script, Step } from "./step.ts";
import { wallTime } from "./wall-time.ts";
import { thundery, WARNING, warned, weatherAt } from "./weather.ts";

/**
 * The first earlier gate of this run that is open again, or else one that is due again. Any other age is left to conditions,
 * and so are gates that are ones. While all is stopped nobody is sent to look: then it is the stop that is missing. On a way
 * out its own gates count.
 */
export function reopened(script: Script, call: Step, state: JobState, at: Instant): MissingGate | null {
  const here = indexOf(script).at.get(call.id);
  if (here === undefined) return reopenedOnWayOut(script, call, state);
  const first = firstShut(script, state, here) ?? firstOpen(script, state);
  const again =
    first !== null && first < here
      ? missingAs("again", script.steps[first]!.gate!, answerStatus(script.steps[first]!.gate!, state), state)
      : recheckDue(script, call, state, at);
  return again && (stopped(script, state, at) ?? again);
}

const computedIn = new WeakMap<Script, readonly number[]>();
/**
 * The place of the first earlier call of this run that was worked out to be shut: it comes before all else, and is not entered by
 * going on, as nothing but a change of the plan takes it away.
 */
function firstShut(script: Script, { startedFrom }: JobState, here: number): number | null {
  const known = computedIn.get(script) ?? script.steps.flatMap(({ gate }, i) => (gate?.check.kind === "computed" ? [i] : []));
  computedIn.set(script, known);
  const from = indexOf(script).at.get(startedFrom) ?? 0;
  return known.find((place) => place >= from && place < here) ?? null;
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

export function missingAs(asked: MissingGate["asked"], gate: Gate, is: Status, state: JobState): MissingGate | null {
  if (isPassed(is)) return null;
  const { thunderAt, limits, reopened } = state;
  const quietAt = gate.check.kind === "quiet" && thunderAt !== null ? wallTime(thunderAt + limits.thunderS * 1000, state) : null;
  return { why: "gate", gate: gate.id, status: is, asked, because: reopened[gate.id]?.by ?? null, notBefore: quietAt };
}
