import { type Change, changesOf } from "../install/changes.ts";
import { finding, isCumulative } from "../install/checks/any-check.ts";
import type { Finding } from "../install/checks/registry.ts";
import type { BindingIntent, Command, Did } from "../install/commands.ts";
import type { Answer, Value } from "../install/gates.ts";
import type { GateId, Instant } from "../install/ids.ts";
import { allSteps } from "../install/job.ts";
import type { Refusal } from "../install/refusals.ts";
import type { JobState } from "../install/state.ts";
import { status } from "../install/status.ts";
import type { Script, Step } from "../install/step.ts";
import { own } from "../lookup/own.ts";
import { answerValue, type EntryLookup, effectiveCommandBy } from "../record/effective-command.ts";
import { lookupIn } from "../record/entries.ts";
import type { CommandEntry } from "../record/entry.ts";
import { frozenBefore } from "../record/findings.ts";
import type { LiveJob } from "./live-job.ts";

/** One reason why not, with what a sentence about it needs: the call whose gate it is, the answer there, what that comes to. */
export type Reason = {
  readonly refusal: Refusal;
  readonly step: Step | null;
  readonly value: Value | null;
  readonly finding: Finding | null;
};

/** What the guide says back to an entry, as facts; `views/text` has the sentences. */
export type Reply =
  | { readonly is: "refused"; readonly reasons: readonly Reason[] }
  /** Done, and no more to say than that. */
  | { readonly is: "done"; readonly did: Did }
  /** An answer that is good, with what it comes to. */
  | { readonly is: "answered"; readonly did: Did; readonly finding: Finding }
  /** An answer that was recorded and keeps its gate shut. */
  | { readonly is: "notGood"; readonly reason: Reason }
  /** Heard and waiting for "correct". `step` asks for it; `wanted` where the answer is outside of its limit; `takenAt` for a reading of earlier. */
  | {
      readonly is: "readBack";
      readonly intent: BindingIntent;
      readonly step: Step | null;
      readonly outOfLimit: boolean;
      readonly takenAt: Instant | null;
    }
  | { readonly is: "proposed"; readonly changes: readonly Change[] };

/** How things stood when an entry was said: the script then in force, by its gates, and what had been answered. */
export type ReplyContext = {
  readonly gates: ReadonlyMap<GateId, Step>;
  readonly answers: JobState["answers"];
  readonly state: JobState;
  readonly earlier: EntryLookup;
};

/** A reading this old is read back with the time it was taken at, in ms. */
const TOLD_WITH_TIME_MS = 60_000;

/** How things stood when an entry of a job was said, by the script in force now. */
export function contextOf({ job, entries }: Pick<LiveJob, "job" | "entries">, entry: CommandEntry): ReplyContext {
  const { context: state } = job.snapshot;
  const answers = Object.fromEntries(Object.entries(state.answers).filter(([, a]) => a.entry <= entry.no));
  return { gates: stepsByGate(job.frozen.script), answers, state, earlier: lookupIn(entries) };
}

/**
 * What the guide says back to one entry. Told from the entry itself, so that it is the same when a key is sent again later.
 * An answer out of limits is recorded, and said to be so at once.
 */
export function replyTo(entry: CommandEntry, then: ReplyContext): Reply {
  const { outcome } = entry;
  if ("refused" in outcome) return { is: "refused", reasons: outcome.refused.map((refusal) => reasonFor(refusal, then)) };
  const command = effectiveCommandBy(entry, then.earlier);
  if (command.type === "amend") return { is: "proposed", changes: changesOf(frozenBefore(entry.no, then.earlier), command.to) };
  const said = command.type === "readBack" ? command.intent : command;
  const answered = said.type === "answer" ? answerGiven(entry, command, said, then) : null;
  if (command.type === "readBack") {
    const step = said.type === "answer" || said.type === "waive" ? (then.gates.get(said.gate) ?? null) : null;
    return readBackOf(command.intent, step, answered?.unmet != null, command.at);
  }
  if (answered?.unmet) return { is: "notGood", reason: answered.unmet };
  return answered?.finding ? { is: "answered", did: outcome.did, finding: answered.finding } : { is: "done", did: outcome.did };
}

function reasonFor(refusal: Refusal, { gates, answers }: Pick<ReplyContext, "gates" | "answers">): Reason {
  const step = "gate" in refusal ? (gates.get(refusal.gate) ?? null) : null;
  const value = step?.gate ? (own(answers, step.gate.id)?.value ?? null) : null;
  return { refusal, step, value, finding: step?.gate && value ? finding(step.gate.check, value, { answers }) : null };
}

/** What an answer comes to at its gate, with all that had been answered when it was given. */
function answerGiven(
  entry: CommandEntry,
  { by, device, at }: Command,
  said: Extract<BindingIntent, { type: "answer" }>,
  then: ReplyContext,
) {
  const gate = then.gates.get(said.gate)?.gate;
  if (!gate) return null;
  const value = answerValue(entry, gate.check, then.earlier) ?? said.value;
  const answer: Answer = { gate: gate.id, value, by, device, at, entry: entry.no };
  const answers = { ...then.answers, [gate.id]: answer };
  const is = status(gate, { ...then.state, answers, waived: {}, lastAt: at }, at);
  const good = is === "good" || is === "waived";
  return {
    finding: finding(gate.check, value, { answers }),
    unmet: good ? null : reasonFor({ why: "gate", gate: gate.id, status: is }, { gates: then.gates, answers }),
  };
}

/** What is answered bit by bit is not held against its limit until all of it is there. */
function readBackOf(intent: BindingIntent, step: Step | null, unmet: boolean, at: Instant): Reply {
  const cumulative = step?.gate != null && isCumulative(step.gate.check);
  const taken = intent.type === "reading" ? intent.reading.takenAt : at;
  return {
    is: "readBack",
    intent,
    step: cumulative ? null : step,
    outOfLimit: unmet && !cumulative,
    takenAt: at - taken < TOLD_WITH_TIME_MS ? null : taken,
  };
}

const known = new WeakMap<Script, ReadonlyMap<GateId, Step>>();
/** The calls of a script by their gates, made once a script. */
export function stepsByGate(script: Script): ReadonlyMap<GateId, Step> {
  const before = known.get(script);
  if (before) return before;
  const gates = new Map(allSteps(script).flatMap((s) => (s.gate ? [[s.gate.id, s] as const] : [])));
  known.set(script, gates);
  return gates;
}
