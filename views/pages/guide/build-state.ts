import { SPOKEN } from "../../../machines/install/commands.ts";
import type { Answer, Gate } from "../../../machines/install/gates.ts";
import { attentionOf, type Job, stepOf } from "../../../machines/install/job.ts";
import { READ_BACK_S, waiting } from "../../../machines/install/read-back.ts";
import { countsWanted, status } from "../../../machines/install/status.ts";
import type { Step } from "../../../machines/install/step.ts";
import { weatherAt } from "../../../machines/install/weather.ts";
import type { Said } from "../../../machines/record/entry.ts";
import { effectText } from "../../parts/effect.ts";
import { type Held, replyTo, words } from "../../reply.ts";
import { foundText } from "../../text/en/found.ts";
import { limitText, sourceText, valueText } from "../../text/en/limits.ts";
import { statusText } from "../../text/en/refusals.ts";
import { phaseName, roleName, weatherWords } from "../../text/en/roles.ts";
import { saidText } from "../../text/en/said.ts";
import type { GateState, GuideState, ThreadLine } from "./state.ts";

const THREAD = 12;

/** Everything a screen shows of a job at a moment, in words; `device` is whose screen it is, for what was heard there. */
export function guideOf(held: Held, at: number, device: string | null = null): GuideState {
  const { job, entries, names, readOnly } = held;
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
    call: step ? callWords(step) : null,
    rehearsal: brief.rehearsal === true,
    gate: step?.gate ? gateState(step, step.gate, job, at, name) : null,
    held: attentionOf(job) === "working" ? null : { by: name(context.heldBy ?? ""), only: attentionOf(job) === "paused" ? "paused" : null },
    weather: { is: weather, words: weatherWords(weather, context.wind, context.thunderAt, at) },
    readBack: device === null ? null : readBackOn(device, held, at, name),
    makingSafe: context.goOnAt !== null,
    closed: step === null,
    proposed: context.proposed &&
      job.proposed && { ...context.proposed, by: name(context.proposed.by), ...effectText(job, job.proposed, name) },
    people: brief.crew.map((p) => ({ id: p.id, name: name(p.id), role: p.role, roleName: roleName(p.role) })),
    thread: entries
      .flatMap((e) => (e.entry.kind === "command" ? [e.entry] : []))
      .slice(-THREAD)
      .map((e) => threadLine(e, held, name)),
    readOnly,
  };
}

function callWords(step: Step): NonNullable<GuideState["call"]> {
  const { say, why, wrong, well } = words(step);
  return { say: say(step.of), why, wrong, well };
}

function readBackOn(device: string, held: Held, at: number, name: (id: string) => string): GuideState["readBack"] {
  const waits = waiting(held.job, device, at);
  const heard = waits && held.entries[waits.entry - 1]?.entry;
  if (!waits || heard?.kind !== "command") return null;
  return { entry: waits.entry, words: replyTo(heard, held, name).reply, leftS: Math.ceil((waits.at - at) / 1000 + READ_BACK_S) };
}

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
    given: answer?.value.kind === "lengths" ? answer.value.ft : answer?.value.kind === "counts" ? answer.value.n : {},
    want: gate.asks.kind === "counts" ? countsWanted(gate.asks, context) : {},
    found: answer ? foundText(gate.asks, answer.value, context) : null,
    ifNot: said.ifNot ?? "",
    otherwise: is === "outOfLimit" ? otherwiseOn(step, answer) : null,
    paper: gate.paper,
    who: gate.who,
    notBy: first ? name(first.by) : null,
  };
}

/** Rings are what the cloth has, whatever the plan says. */
const otherwiseOn = ({ call, of }: Step, answer: Answer | undefined): string | null =>
  (call === "marked.edge" || call === "rings.edge") && answer?.value.kind === "count"
    ? `otherwise?what=rings&edge=${of.edge}&counted=${answer.value.n}`
    : null;

function threadLine(entry: Said, held: Held, name: (id: string) => string): ThreadLine {
  const { job } = held;
  const { command, outcome } = entry;
  const step = [...job.frozen.script.steps, ...Object.values(job.frozen.script.ways).flat()].find((s) => s.id === entry.step);
  return {
    no: entry.no,
    time: new Intl.DateTimeFormat("en-GB", { timeZone: job.frozen.brief.zone, hour: "2-digit", minute: "2-digit" }).format(entry.at),
    who: name(command.by),
    call: step ? words(step).say(step.of) : "",
    said: command.heard ?? saidText(command),
    spoken: (SPOKEN as readonly string[]).includes(command.source),
    reply: replyTo(entry, held, name).reply,
    refused: "refused" in outcome,
  };
}
