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
import { lookupIn } from "../../../machines/record/entries.ts";
import type { CommandEntry } from "../../../machines/record/entry.ts";
import { effectText } from "../../parts/effect.ts";
import { askText, callText, replyText } from "../../text/replies.ts";
import type { Words } from "../../text/words.ts";
import type { GateState, GuideState, ThreadLine } from "./state.ts";

const THREAD = 12;

/** Everything a screen shows of a job at a moment, in its words; `device` is whose screen it is, for what was heard there, or `null`. */
export function buildGuideState(live: LiveJob, at: number, device: string | null, words: Words): GuideState {
  const { job, entries, names, readOnly, warning } = live;
  const { context } = job.snapshot;
  const { brief, script } = job.frozen;
  const step = currentStep(job);
  const name = (id: string) => names[id] ?? id;
  const weather = weatherAt(context, at);
  return {
    job: entries.at(0)!.entry.job,
    title: brief.title,
    entry: entries.at(-1)!.entry.no,
    revision: context.revision,
    phase: step?.phase ?? "closed",
    phaseName: words.phaseName(step?.phase ?? "closed"),
    step: step?.id ?? "closed",
    progress: { at: script.steps.findIndex((s) => s.id === (context.resumeAt ?? step?.id)) + 1, of: script.steps.length },
    call: step ? callState(step, words) : null,
    rehearsal: brief.rehearsal === true,
    gate: step?.gate ? gateState(step, step.gate, job, at, name, words) : null,
    held: holdState(live, name, words),
    weather: { is: weather, words: words.weatherWords(weather, context.wind, thundery(context, at) ? context.thunderAt : null, at) },
    readBack: device === null ? null : readBackOn(device, live, at, name, words),
    makingSafe: context.resumeAt !== null,
    closed: step === null,
    proposed: context.proposed &&
      job.proposed && { ...context.proposed, by: name(context.proposed.by), ...effectText(job, job.proposed, name, words) },
    people: brief.crew.map((p) => ({ id: p.id, name: name(p.id), role: p.role, roleName: words.roleName(p.role) })),
    thread: entries.slice(-THREAD).flatMap((e) => (e.entry.kind === "command" ? [threadLine(e.entry, live, name, words)] : [])),
    readOnly: readOnly && words.notRecordedText(readOnly),
    warning: warning && words.errors.low(warning),
  };
}

/** Whose hold it is. One that could not be recorded holds as well, and says so. */
function holdState({ job, unrecorded }: LiveJob, name: (id: string) => string, words: Words): GuideState["held"] {
  const only = (is: string) => (is === "paused" ? "paused" : null);
  if (unrecorded) return { by: name(unrecorded.by), only: only(unrecorded.is), unrecorded: words.notRecordedText(unrecorded.why) };
  const is = attentionState(job);
  return is === "working" ? null : { by: name(job.snapshot.context.heldBy ?? ""), only: only(is), unrecorded: null };
}

function callState(step: Step, words: Words): NonNullable<GuideState["call"]> {
  const { say, why, wrong, well } = callText(step, words);
  return { say: say(step.params), why, wrong, well };
}

function readBackOn(device: string, live: LiveJob, at: number, name: (id: string) => string, words: Words): GuideState["readBack"] {
  const waits = pendingReadBack(live.job, device, at);
  const heard = waits && lookupIn(live.entries)(waits.entry);
  if (!waits || heard?.kind !== "command") return null;
  return {
    entry: waits.entry,
    words: replied(heard, live, name, words),
    leftS: Math.ceil((waits.at - at) / 1000 + live.job.frozen.limits.readBackS.is),
  };
}

function gateState(step: Step, gate: Gate, job: Job, at: number, name: (id: string) => string, words: Words): GateState {
  const { context } = job.snapshot;
  const is = status(gate, context, at);
  const answer = context.answers[gate.id];
  const { ifNot } = callText(step, words);
  const found = answer ? finding(gate.check, answer.value, context) : null;
  const first = gate.secondPersonTo === null ? undefined : context.answers[gate.secondPersonTo];
  return {
    id: gate.id,
    hard: gate.hard,
    check: gate.check,
    ask: askText(step, words) ?? "",
    limit: words.limitText(gate),
    source: words.sourceText(gate.source),
    status: is,
    statusWords: words.statusText(is),
    value: answer ? words.valueText(answer.value) : null,
    given: givenParts(gate.check, answer?.value),
    want: wantedParts(gate.check, context),
    found: found && words.findingText(found),
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

function threadLine(entry: CommandEntry, live: LiveJob, name: (id: string) => string, words: Words): ThreadLine {
  const { job } = live;
  const { command, outcome } = entry;
  const step = [...job.frozen.script.steps, ...Object.values(job.frozen.script.escapes).flat()].find((s) => s.id === entry.step);
  return {
    no: entry.no,
    time: words.when.clock(job.frozen.brief.zone, entry.at),
    who: name(command.by),
    call: step ? callText(step, words).say(step.params) : "",
    said: command.heard ?? words.saidText(command),
    spoken: (SPOKEN as readonly string[]).includes(command.source),
    reply: replied(entry, live, name, words),
    refused: "refused" in outcome,
  };
}

const replied = (entry: CommandEntry, live: LiveJob, name: (id: string) => string, words: Words): string =>
  replyText(replyTo(entry, contextOf(live, entry)), { name, zone: live.job.frozen.brief.zone }, words);
