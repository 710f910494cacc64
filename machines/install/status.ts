import { inForce, isComplete, meetsLimit } from "./checks/any-check.ts";
import { kindOf } from "./checks/registry.ts";
import type { WindCheck } from "./checks/wind.ts";
import type { Answer, Gate } from "./gates.ts";
import type { Instant } from "./ids.ts";
import type { Status } from "./refusals.ts";
import type { JobState } from "./state.ts";
import { wallTime } from "./wall-time.ts";
import { agreedMph, fresh, thundery, worstMph } from "./weather.ts";

/** How a gate stands at a moment. */
export function status(gate: Gate, state: JobState, at: Instant): Status {
  const { answeredBy } = kindOf(gate.check);
  if (answeredBy === "time") return thundery(state, at) ? "outOfLimit" : "good";
  if (answeredBy === "windReading") return windStatus(gate, state, at);
  const is = answerStatus(gate, state);
  return is === "good" ? agedStatus(gate, state, at) : is;
}

/** Whether nothing more is to be asked. */
export const isPassed = (is: Status): is is "good" | "waived" => is === "good" || is === "waived";

/** Too much wind stays too much until a new reading says otherwise; a mean alone never opens a gate. */
function windStatus({ check, validForS }: Gate, state: JobState, at: Instant): Status {
  const { wind, lastAt } = state;
  if (check.kind !== "wind" || !wind) return "open";
  if (worstMph(wind) >= gustAllowed(check, state)) return wind.gustMph === null ? "noGust" : "outOfLimit";
  if (!fresh(wind.takenAt, at, validForS ?? 0, lastAt)) return "stale";
  return wind.gustMph === null ? "noGust" : "good";
}

/** The gust that a check allows: its own, or a lower one that was agreed with the customer's person. */
export const gustAllowed = (check: WindCheck, state: Pick<JobState, "answers">): number =>
  Math.min(check.belowMph, agreedMph(state, check.agreed) ?? check.belowMph);

/** How an answer stands, its age aside: the same at any moment until something is said. */
export function answerStatus(gate: Gate, state: JobState): Exclude<Status, "early" | "stale" | "recheckDue" | "noGust"> {
  if (!gate.hard && state.waived[gate.id]) return "waived";
  const answer = state.answers[gate.id];
  if (!answer) return gate.dormant && !state.reopened[gate.id] ? "good" : "open";
  if (answer.value.kind === "unknown") return "unknown";
  if (!isComplete(gate.check, answer.value, state)) return "open";
  if (!meetsLimit(gate.check, answer.value, state)) return "outOfLimit";
  if (answer.value.kind === "paper" && !answer.seen) return "unseen";
  if (gate.secondPersonTo === null) return "good";
  const first = state.answers[gate.secondPersonTo];
  if (!first) return "open";
  return first.by === answer.by ? "samePerson" : "good";
}

function agedStatus(gate: Gate, state: JobState, at: Instant): Status {
  const answer = state.answers[gate.id];
  // Dormant, and nothing has happened.
  if (!answer) return "good";
  if (gate.validForS !== null && !fresh(answer.at, at, gate.validForS, state.lastAt)) return "stale";
  if (gate.session && answer.at < sessionSince(state, at)) return "stale";
  if (isRecheckDue(gate, state, at)) return "recheckDue";
  const dates = inForce(gate.check, answer.value, wallTime(at, state));
  return dates === "yes" ? "good" : dates;
}

/**
 * Whether a gate was answered too early and its waiting time is up by now. Judged by the job's time, and again without the time
 * in doubt: a clock that was set ahead does not make an early answer a late one.
 */
export function isRecheckDue({ id, recheck }: Gate, { answers, doubtMs = 0 }: JobState, at: Instant): boolean {
  if (!recheck) return false;
  const [answer, after] = [answers[id], answers[recheck.after]];
  if (!answer || !after) return false;
  const due = (answeredAt: Instant, afterAt: Instant, now: Instant) => {
    const dueAt = afterAt + recheck.afterS * 1000;
    return answeredAt < dueAt && now >= dueAt;
  };
  const certain = (a: Answer) => a.at - (a.doubtMs ?? 0);
  return due(answer.at, after.at, at) || due(certain(answer), certain(after), at - doubtMs);
}

/** Since when the crew has kept at it, at a moment: a silence that is long enough by then ends the session. */
export const sessionSince = ({ sessionAt, lastAt, limits }: JobState, at: Instant): Instant =>
  at - lastAt > limits.sessionS * 1000 ? at : sessionAt;
