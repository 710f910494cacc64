import { LENGTHS, squared } from "../site/squaring.ts";
import type { Check, Gate, Value } from "./gates.ts";
import type { Instant } from "./ids.ts";
import type { Refusal, Status } from "./refusals.ts";
import type { JobState } from "./state.ts";
import type { Step } from "./step.ts";
import { fresh, weatherAt } from "./weather.ts";

/** Whether a gate takes this kind of answer at all. The wind gate takes none: it reads the last reading. */
export function accepts({ check, paper }: Gate, value: Value, state: Pick<JobState, "answers">): boolean {
  if (value.kind === "paper") return paper !== null;
  if (value.kind === "unknown") return check.kind !== "wind";
  switch (check.kind) {
    case "yesNo":
      return value.kind === "yesNo";
    case "count":
    case "sameCount":
      return value.kind === "count" && Number.isSafeInteger(value.n) && value.n >= 0;
    case "measure":
      return value.kind === "none" ? check.noneIsGood : value.kind === "measure" && value.unit === check.unit && Number.isFinite(value.n);
    case "square":
      return value.kind === "lengths" && named(value.ft, LENGTHS) && Object.values(value.ft).every((ft) => Number.isFinite(ft) && ft > 0);
    case "counts":
      return (
        value.kind === "counts" &&
        named(value.n, Object.keys(wantedCounts(check, state))) &&
        Object.values(value.n).every((n) => Number.isSafeInteger(n) && n >= 0)
      );
    case "document":
      return value.kind === "document";
    case "wind":
    case "paperOnly":
      return false;
  }
}

/** The only place where a value meets a limit. */
export function meetsLimit(asks: Check, value: Value, state: JobState): boolean {
  if (value.kind === "paper") return value.by.trim() !== "" && value.document.trim() !== "";
  switch (asks.kind) {
    case "yesNo":
      return value.kind === "yesNo" && value.yes === asks.good;
    case "count":
      return value.kind === "count" && value.n >= asks.from && value.n <= (asks.to ?? value.n);
    case "sameCount": {
      const other = state.answers[asks.as]?.value;
      return value.kind === "count" && other?.kind === "count" && other.n === value.n;
    }
    case "measure":
      return value.kind === "none"
        ? asks.noneIsGood
        : value.kind === "measure" && value.n >= (asks.from ?? value.n) && value.n <= (asks.to ?? value.n);
    case "square":
      return value.kind === "lengths" && squared(value.ft, asks).is === "square";
    case "counts":
      return (
        value.kind === "counts" &&
        Object.entries(wantedCounts(asks, state)).every(([item, want]) => {
          const n = value.n[item];
          return n !== undefined && (asks.as === null ? n >= want : n === want);
        })
      );
    case "document":
      return (
        value.kind === "document" && value.named.trim() !== "" && (asks.expected === null || plain(value.named) === plain(asks.expected))
      );
    case "wind":
    case "paperOnly":
      return false;
  }
}

/** How a gate stands at a moment. */
export function status(gate: Gate, state: JobState, at: Instant): Status {
  return gate.check.kind === "wind" ? windStatus(gate, state, at) : answerStatus(gate, state, at);
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
  if (gate.check.kind === "document" && answer.value.kind === "document") {
    if (gate.check.validFrom !== null && at < gate.check.validFrom) return "early";
    if (gate.check.validTo !== null && at > gate.check.validTo) return "stale";
  }
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

/** Gates that are answered bit by bit: the bits are put together. */
export const isCumulative = ({ kind }: Check): boolean => kind === "square" || kind === "counts";

/**
 * An answer as it counts at a gate that is answered bit by bit: what is newly said, over what was said before. Anywhere
 * else, and where the earlier answer was "not known" or a paper, it is what was said.
 */
export function mergeAnswers(asks: Check, before: Value | undefined, value: Value): Value {
  if (asks.kind === "square" && value.kind === "lengths" && before?.kind === "lengths")
    return { ...value, ft: { ...before.ft, ...value.ft } };
  if (asks.kind === "counts" && value.kind === "counts" && before?.kind === "counts") return { ...value, n: { ...before.n, ...value.n } };
  return value;
}

/** Whether there is enough of an answer to be judged. */
export function isComplete(asks: Check, value: Value, state: Pick<JobState, "answers">): boolean {
  if (asks.kind === "square" && value.kind === "lengths") return Object.keys(value.ft).length >= asks.taping.minLengths;
  if (asks.kind === "counts" && value.kind === "counts") return Object.keys(wantedCounts(asks, state)).every((item) => item in value.n);
  return true;
}

/** What is wanted of each thing counted: as many as were counted before, where a gate looks back at another. */
export function wantedCounts(asks: Extract<Check, { kind: "counts" }>, state: Pick<JobState, "answers">): Readonly<Record<string, number>> {
  const before = asks.as === null ? undefined : state.answers[asks.as]?.value;
  return before?.kind === "counts" ? { ...asks.want, ...before.n } : asks.want;
}

const named = (given: object, known: readonly string[]) =>
  Object.keys(given).length > 0 && Object.keys(given).every((k) => known.includes(k));
const plain = (named: string) => named.trim().replaceAll(/\s+/g, " ").toLowerCase();
