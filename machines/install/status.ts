import { inForce, isComplete, meetsLimit } from "./checks/any-check.ts";
import { kindOf } from "./checks/registry.ts";
import type { Gate } from "./gates.ts";
import type { Instant } from "./ids.ts";
import type { Refusal, Status } from "./refusals.ts";
import type { JobState } from "./state.ts";
import type { Step } from "./step.ts";
import { fresh, weatherAt } from "./weather.ts";

/** How a gate stands at a moment. */
export function status(gate: Gate, state: JobState, at: Instant): Status {
  return kindOf(gate.check).answeredBy === "windReading" ? windStatus(gate, state, at) : answerStatus(gate, state, at);
}

function windStatus(gate: Gate, state: JobState, at: Instant): Status {
  const weather = weatherAt(state, at);
  if (weather === "stop" || weather === "caution") return "outOfLimit";
  if (!state.wind) return "open";
  return fresh(state.wind.takenAt, at, gate.validForS ?? 0, state.lastAt) ? "good" : "stale";
}

function answerStatus(gate: Gate, state: JobState, at: Instant): Status {
  if (!gate.hard && state.waived[gate.id]) return "waived";
  const answer = state.answers[gate.id];
  if (!answer) return "open";
  if (answer.value.kind === "unknown") return "unknown";
  if (!isComplete(gate.check, answer.value, state)) return "open";
  if (!meetsLimit(gate.check, answer.value, state)) return "outOfLimit";
  if (gate.validForS !== null && !fresh(answer.at, at, gate.validForS, state.lastAt)) return "stale";
  const dates = inForce(gate.check, answer.value, at);
  if (dates !== "yes") return dates;
  if (gate.secondPersonTo === null) return "good";
  const first = state.answers[gate.secondPersonTo];
  if (!first) return "open";
  return first.by === answer.by ? "samePerson" : "good";
}

/** What stands between a call and the next one. Guard, refusal, tile and finding all read this list. */
export function blockers(step: Step, state: JobState, at: Instant): Refusal[] {
  if (!step.gate) return [];
  const is = status(step.gate, state, at);
  return is === "good" || is === "waived" ? [] : [{ why: "gate", gate: step.gate.id, status: is }];
}
