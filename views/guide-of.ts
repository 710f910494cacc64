import type { Gate } from "../machines/install/gates.ts";
import { isHeld, type Job, stepOf } from "../machines/install/job.ts";
import type { Refusal } from "../machines/install/refusals.ts";
import type { Step } from "../machines/install/script.ts";
import type { JobState } from "../machines/install/state.ts";
import { status } from "../machines/install/status.ts";
import { weatherAt } from "../machines/install/weather.ts";
import type { Said, Sealed } from "../machines/record/entry.ts";
import type { GateState, GuideState, Reason, ThreadLine } from "./guide-state.ts";
import { calls } from "./text/en/calls.ts";
import { limitText, sourceText, valueText } from "./text/en/limits.ts";
import { didText, refusalText, statusText } from "./text/en/refusals.ts";
import { phaseName, roleName, weatherWords } from "./text/en/roles.ts";
import { saidText } from "./text/en/said.ts";
import type { CallWords } from "./text/en/words.ts";

/** A job with its record and its people, as the server holds it. */
export type Held = {
  readonly job: Job;
  readonly entries: readonly Sealed[];
  readonly names: Readonly<Record<string, string>>;
  readonly readOnly: string | null;
};

const THREAD = 12;

/** Everything a screen shows of a job at a moment, in words. */
export function guideOf({ job, entries, names, readOnly }: Held, at: number): GuideState {
  const { context } = job.snapshot;
  const { brief, script } = job.frozen;
  const step = stepOf(job);
  const name = (id: string) => names[id] ?? id;
  const weather = weatherAt(context, at);
  return {
    job: entries[0]!.entry.job,
    title: brief.title,
    entry: entries.at(-1)!.entry.no,
    turn: context.turn,
    phase: step?.phase ?? "closed",
    phaseName: phaseName(step?.phase ?? "closed"),
    step: step?.id ?? "closed",
    progress: { at: script.steps.findIndex((s) => s.id === (context.goOnAt ?? step?.id)) + 1, of: script.steps.length },
    call: step ? { say: words(step).say(step.of), why: words(step).why } : null,
    gate: step?.gate ? gateState(step, step.gate, job, at, name) : null,
    held: isHeld(job) ? { by: name(context.heldBy ?? "") } : null,
    weather: { is: weather, words: weatherWords(weather, context.wind, context.thunderAt, at) },
    makingSafe: context.goOnAt !== null,
    closed: step === null,
    proposed: context.proposed && { ...context.proposed, by: name(context.proposed.by) },
    people: brief.crew.map((p) => ({ id: p.id, name: name(p.id), role: p.role, roleName: roleName(p.role) })),
    thread: entries
      .flatMap((e) => (e.entry.kind === "command" ? [e.entry] : []))
      .slice(-THREAD)
      .map((e) => threadLine(e, job, name)),
    readOnly,
  };
}

const words = (step: Step): CallWords => calls[step.call] ?? { say: () => step.id, why: "", wrong: "", well: "" };

function gateState(step: Step, gate: Gate, job: Job, at: number, name: (id: string) => string): GateState {
  const { context } = job.snapshot;
  const is = status(gate, context, at);
  const answer = context.answers[gate.id];
  const said = words(step);
  const first = gate.otherThan === null ? undefined : context.answers[gate.otherThan];
  return {
    id: gate.id,
    hard: gate.hard,
    asks: gate.asks,
    ask: said.ask?.(step.of) ?? "",
    limit: limitText(gate),
    source: sourceText(gate.source),
    status: is,
    statusWords: statusText(is),
    value: answer ? valueText(answer.value) : null,
    ifNot: said.ifNot ?? "",
    paper: gate.paper,
    who: gate.who,
    notBy: first ? name(first.by) : null,
  };
}

/** Why something was refused, each with what to do. `answers` are those that stood then. */
function reasonsFor(refused: readonly Refusal[], job: Job, answers: JobState["answers"], name: (id: string) => string): Reason[] {
  return refused.map((refusal) => {
    const id = "gate" in refusal ? refusal.gate : null;
    const step = id === null ? null : (allGates(job).get(id) ?? null);
    const answer = id === null ? undefined : answers[id];
    const about = {
      ask: step ? (words(step).ask?.(step.of) ?? null) : null,
      ifNot: step ? (words(step).ifNot ?? null) : null,
      limit: step?.gate ? limitText(step.gate) : null,
      value: answer ? valueText(answer.value) : null,
      name,
    };
    return {
      ...("gate" in refusal ? { gate: refusal.gate } : {}),
      ...("status" in refusal ? { status: refusal.status } : {}),
      why: refusal.why,
      text: refusalText(refusal, about),
    };
  });
}

/**
 * What the guide says back to one entry, and the reasons where it refused. Told from the entry itself, so that it is the
 * same when a key is sent again later. An answer out of limits is taken down, and said to be so at once.
 */
export function replyTo(entry: Said, job: Job, name: (id: string) => string): { reply: string; reasons: Reason[] } {
  const { command, outcome } = entry;
  const { context } = job.snapshot;
  const stood = Object.fromEntries(Object.entries(context.answers).filter(([, a]) => a.entry <= entry.no));
  const joined = (reasons: Reason[]) => reasons.map((r) => r.text).join(" ");
  if ("refused" in outcome) {
    const reasons = reasonsFor(outcome.refused, job, stood, name);
    return { reply: joined(reasons), reasons };
  }
  const gate = command.type === "answer" ? allGates(job).get(command.gate)?.gate : undefined;
  if (!gate || command.type !== "answer") return { reply: didText(outcome.did), reasons: [] };
  const { value, by, device, at } = command;
  const answers = { ...stood, [gate.id]: { gate: gate.id, value, by, device, at, entry: entry.no } };
  const is = status(gate, { ...context, answers, waived: {}, lastAt: at }, at);
  if (is === "good" || is === "waived") return { reply: didText(outcome.did), reasons: [] };
  return { reply: joined(reasonsFor([{ why: "gate", gate: gate.id, status: is }], job, answers, name)), reasons: [] };
}

const allGates = ({ frozen }: Job) =>
  new Map([...frozen.script.steps, ...Object.values(frozen.script.ways).flat()].flatMap((s) => (s.gate ? [[s.gate.id, s] as const] : [])));

function threadLine(entry: Said, job: Job, name: (id: string) => string): ThreadLine {
  const { command, outcome } = entry;
  const step = [...job.frozen.script.steps, ...Object.values(job.frozen.script.ways).flat()].find((s) => s.id === entry.step);
  return {
    no: entry.no,
    time: new Intl.DateTimeFormat("en-GB", { timeZone: job.frozen.brief.zone, hour: "2-digit", minute: "2-digit" }).format(entry.at),
    who: name(command.by),
    call: step ? words(step).say(step.of) : "",
    said: command.heard ?? saidText(command),
    reply: replyTo(entry, job, name).reply,
    refused: "refused" in outcome,
  };
}
