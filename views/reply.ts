import { changesOf } from "../machines/install/changes.ts";
import type { BindingIntent, Command } from "../machines/install/commands.ts";
import type { GateId, Instant } from "../machines/install/ids.ts";
import { allSteps, type Job } from "../machines/install/job.ts";
import type { Refusal } from "../machines/install/refusals.ts";
import type { JobState } from "../machines/install/state.ts";
import { isCumulative, status } from "../machines/install/status.ts";
import type { Script, Step } from "../machines/install/step.ts";
import { answerValue, type EntryLookup, effectiveCommand } from "../machines/record/effective-command.ts";
import type { CommandEntry, Sealed } from "../machines/record/entry.ts";
import { frozenBefore } from "../machines/record/findings.ts";
import type { Reason } from "./pages/guide/state.ts";
import type { ReadOnly } from "./parts/read-only.ts";
import type { CallText } from "./text/call-text.ts";
import type { Words } from "./text/words.ts";

/** A job with its record and its people, as the server holds it. */
export type LiveJob = {
  readonly job: Job;
  readonly entries: readonly Sealed[];
  readonly names: Readonly<Record<string, string>>;
  readonly readOnly: ReadOnly | null;
};

/** The words of a call. */
export const wordsOf = (step: Step, { calls }: Words): CallText =>
  calls[step.wordsKey] ?? { say: () => step.id, why: "", wrong: "", well: "" };

/** Where an entry was said: the calls by their gates, and what had been answered. */
export type ReplyContext = {
  readonly gates: ReadonlyMap<GateId, Step>;
  readonly answers: JobState["answers"];
  readonly context: JobState;
  readonly earlier: EntryLookup;
  readonly zone: string;
};
type Name = (id: string) => string;

/** Why something was refused, each with what to do. */
function reasonsFor(
  refused: readonly Refusal[],
  { gates, answers }: Pick<ReplyContext, "gates" | "answers">,
  name: Name,
  words: Words,
): Reason[] {
  return refused.map((refusal) => {
    const id = "gate" in refusal ? refusal.gate : null;
    const step = id === null ? null : (gates.get(id) ?? null);
    const answer = id === null ? undefined : answers[id];
    const about = {
      ask: step ? (wordsOf(step, words).ask?.(step.params) ?? null) : null,
      ifNot: step ? (wordsOf(step, words).ifNot ?? null) : null,
      limit: step?.gate ? words.limitText(step.gate) : null,
      value: answer ? words.valueText(answer.value) : null,
      found: answer && step?.gate ? words.foundText(step.gate.check, answer.value, { answers }) : null,
      name,
    };
    return {
      ...("gate" in refusal ? { gate: refusal.gate } : {}),
      ...("status" in refusal ? { status: refusal.status } : {}),
      why: refusal.why,
      text: words.refusalText(refusal, about),
    };
  });
}

/**
 * What the guide says back to one entry, and the reasons where it refused. Told from the entry itself, so that it is the
 * same when a key is sent again later. An answer out of limits is taken down, and said to be so at once.
 */
export function replyTo(entry: CommandEntry, { job, entries }: LiveJob, name: Name, words: Words): { reply: string; reasons: Reason[] } {
  const { context } = job.snapshot;
  const answers = Object.fromEntries(Object.entries(context.answers).filter(([, a]) => a.entry <= entry.no));
  return replyThen(
    entry,
    effectiveCommand(entry, entries),
    { gates: gatesOf(job.frozen.script), answers, context, earlier: (no) => entries[no - 1]?.entry, zone: job.frozen.brief.zone },
    name,
    words,
  );
}

/** The same for an entry anywhere in a record: `command` is as it counts, and `then` is how things stood when it was said. */
export function replyThen(
  entry: CommandEntry,
  command: Command,
  then: ReplyContext,
  name: Name,
  words: Words,
): { reply: string; reasons: Reason[] } {
  const { outcome } = entry;
  const { gates, context } = then;
  const joined = (reasons: Reason[]) => reasons.map((r) => r.text).join(" ");
  if ("refused" in outcome) {
    const reasons = reasonsFor(outcome.refused, then, name, words);
    return { reply: joined(reasons), reasons };
  }
  const said = command.type === "readBack" ? command.intent : command;
  const step = said.type === "answer" || said.type === "waive" ? gates.get(said.gate) : undefined;
  const gate = step?.gate;
  const did = { reply: words.didText(outcome.did), reasons: [] };
  const { by, device, at } = command;
  const value = gate && said.type === "answer" ? (answerValue(entry, gate.check, then.earlier) ?? said.value) : null;
  const answers = gate && value ? { ...then.answers, [gate.id]: { gate: gate.id, value, by, device, at, entry: entry.no } } : then.answers;
  const is = gate && said.type === "answer" ? status(gate, { ...context, answers, waived: {}, lastAt: at }, at) : "good";
  const good = is === "good" || is === "waived";
  if (command.type === "readBack") {
    const heard = bindingText(command.intent, at, then.zone, words);
    if (gate && isCumulative(gate.check)) return { ...did, reply: words.readBackText(heard) };
    return {
      ...did,
      reply: words.readBackText(heard, step && wordsOf(step, words).ask?.(step.params), gate && !good ? words.limitText(gate) : undefined),
    };
  }
  if (command.type === "amend") return { ...did, reply: `${did.reply} ${changedBy(entry, command, then, name, words)}` };
  const found = gate && value ? words.foundText(gate.check, value, { answers }) : null;
  if (good || !gate) return found === null ? did : { ...did, reply: `${did.reply} ${found}` };
  return { reply: joined(reasonsFor([{ why: "gate", gate: gate.id, status: is }], { gates, answers }, name, words)), reasons: [] };
}

/** A changed plan told against the one that was in force when it was put forward. */
function changedBy(
  entry: CommandEntry,
  { to }: Extract<Command, { type: "amend" }>,
  { earlier, zone }: ReplyContext,
  name: Name,
  words: Words,
): string {
  const texts = changesOf(frozenBefore(entry.no, earlier), to).map((change) => words.changeText(change, { name, zone }));
  return texts.length === 0 ? words.changes.nothing : words.changes.some(texts, MAX_CHANGES);
}
const MAX_CHANGES = 8;

/** What is said back: a lean with its way, a reading with the time at which it was taken. */
function bindingText(ask: BindingIntent, at: Instant, zone: string, words: Words): string {
  if (ask.type === "answer" && ask.value.kind === "measure" && ask.value.unit === "deg") return words.leanText(ask.value.n);
  if (ask.type !== "reading" || at - ask.reading.takenAt < 60_000) return words.askText(ask);
  return words.takenText(words.askText(ask), words.when.clock(zone, ask.reading.takenAt));
}

const known = new WeakMap<Script, ReadonlyMap<GateId, Step>>();
/** The calls of a script by their gates, made once a script. */
export function gatesOf(script: Script): ReadonlyMap<GateId, Step> {
  const before = known.get(script);
  if (before) return before;
  const gates = new Map(allSteps(script).flatMap((s) => (s.gate ? [[s.gate.id, s] as const] : [])));
  known.set(script, gates);
  return gates;
}
