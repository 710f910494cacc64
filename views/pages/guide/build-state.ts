import type { LiveJob } from "../../../machines/conversation/live-job.ts";
import { contextOf, replyTo } from "../../../machines/conversation/reply-to.ts";
import { finding, givenParts, tileInput, wantedParts } from "../../../machines/install/checks/any-check.ts";
import { SPOKEN } from "../../../machines/install/commands.ts";
import type { Answer, Gate } from "../../../machines/install/gates.ts";
import { attentionState, currentStep, type Job } from "../../../machines/install/job.ts";
import { pendingReadBack } from "../../../machines/install/read-back.ts";
import { status } from "../../../machines/install/status.ts";
import type { Step } from "../../../machines/install/step.ts";
import { thundery, weatherAt } from "../../../machines/install/weather.ts";
import type { CommandEntry } from "../../../machines/record/entry.ts";
import { effectText } from "../../parts/effect.ts";
import { callText } from "../../text/en/calls.ts";
import { findingText, limitText, sourceText, valueText } from "../../text/en/limits.ts";
import { statusText } from "../../text/en/refusals.ts";
import { askText, replyText } from "../../text/en/replies.ts";
import { phaseName, roleName, weatherWords } from "../../text/en/roles.ts";
import { saidText } from "../../text/en/said.ts";
import { clock } from "../../text/en/times.ts";
import type { GateState, GuideState, ThreadLine } from "./state.ts";

const THREAD = 12;

/** Everything a screen shows of a job at a moment, in words; `device` is whose screen it is, for what was heard there. */
export function buildGuideState(held: LiveJob, at: number, device: string | null = null): GuideState {
  const { job, entries, names, readOnly } = held;
  const { context } = job.snapshot;
  const { brief, script } = job.frozen;
  const step = currentStep(job);
  const name = (id: string) => names[id] ?? id;
  const weather = weatherAt(context, at);
  return {
    job: entries[0]!.entry.job,
    title: brief.title,
    entry: entries.at(-1)!.entry.no,
    revision: context.revision,
    phase: step?.phase ?? "closed",
    phaseName: phaseName(step?.phase ?? "closed"),
    step: step?.id ?? "closed",
    progress: { at: script.steps.findIndex((s) => s.id === (context.resumeAt ?? step?.id)) + 1, of: script.steps.length },
    call: step ? callWords(step) : null,
    rehearsal: brief.rehearsal === true,
    gate: step?.gate ? gateState(step, step.gate, job, at, name) : null,
    held:
      attentionState(job) === "working"
        ? null
        : { by: name(context.heldBy ?? ""), only: attentionState(job) === "paused" ? "paused" : null },
    weather: { is: weather, words: weatherWords(weather, context.wind, thundery(context, at) ? context.thunderAt : null, at) },
    readBack: device === null ? null : readBackOn(device, held, at, name),
    makingSafe: context.resumeAt !== null,
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
  const { say, why, wrong, well } = callText(step);
  return { say: say(step.params), why, wrong, well };
}

function readBackOn(device: string, held: LiveJob, at: number, name: (id: string) => string): GuideState["readBack"] {
  const waits = pendingReadBack(held.job, device, at);
  const heard = waits && held.entries[waits.entry - 1]?.entry;
  if (!waits || heard?.kind !== "command") return null;
  return {
    entry: waits.entry,
    words: replied(heard, held, name),
    leftS: Math.ceil((waits.at - at) / 1000 + held.job.frozen.limits.readBackS.is),
  };
}

function gateState(step: Step, gate: Gate, job: Job, at: number, name: (id: string) => string): GateState {
  const { context } = job.snapshot;
  const is = status(gate, context, at);
  const answer = context.answers[gate.id];
  const { ifNot } = callText(step);
  const found = answer ? finding(gate.check, answer.value, context) : null;
  const first = gate.secondPersonTo === null ? undefined : context.answers[gate.secondPersonTo];
  return {
    id: gate.id,
    hard: gate.hard,
    check: gate.check,
    ask: askText(step) ?? "",
    limit: limitText(gate),
    source: sourceText(gate.source),
    status: is,
    statusWords: statusText(is),
    value: answer ? valueText(answer.value) : null,
    given: givenParts(gate.check, answer?.value),
    want: wantedParts(gate.check, context),
    found: found && findingText(found),
    tile: tileInput(gate.check, answer?.value),
    ifNot: ifNot ?? "",
    discrepancy: is === "outOfLimit" ? discrepancyLink(step, answer) : null,
    paper: gate.paper,
    roles: gate.roles,
    notBy: first ? name(first.by) : null,
  };
}

/** Rings are what the cloth has, whatever the plan says. */
const discrepancyLink = ({ wordsKey, params }: Step, answer: Answer | undefined): string | null =>
  (wordsKey === "marked.edge" || wordsKey === "rings.edge") && answer?.value.kind === "count"
    ? `discrepancy?what=rings&edge=${params.edge}&counted=${answer.value.n}`
    : null;

function threadLine(entry: CommandEntry, held: LiveJob, name: (id: string) => string): ThreadLine {
  const { job } = held;
  const { command, outcome } = entry;
  const step = [...job.frozen.script.steps, ...Object.values(job.frozen.script.escapes).flat()].find((s) => s.id === entry.step);
  return {
    no: entry.no,
    time: clock(job.frozen.brief.zone)(entry.at),
    who: name(command.by),
    call: step ? callText(step).say(step.params) : "",
    said: command.heard ?? saidText(command),
    spoken: (SPOKEN as readonly string[]).includes(command.source),
    reply: replied(entry, held, name),
    refused: "refused" in outcome,
  };
}

const replied = (entry: CommandEntry, live: LiveJob, name: (id: string) => string): string =>
  replyText(replyTo(entry, contextOf(live, entry)), { name, zone: live.job.frozen.brief.zone });
