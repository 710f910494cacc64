import type { LiveJob } from "../../../machines/conversation/live-job.ts";
import { contextOf, reasonNow, replyTo } from "../../../machines/conversation/reply-to.ts";
import { finding, givenParts, tileInput, wantedParts } from "../../../machines/install/checks/any-check.ts";
import { type Answer, COMPETENT } from "../../../machines/install/gates.ts";
import type { Instant, StepId } from "../../../machines/install/ids.ts";
import { attentionState, currentStep, type Job, missingNow, questionAt, workAheadOf } from "../../../machines/install/job.ts";
import { peopleUnder } from "../../../machines/install/missing.ts";
import { pendingReadBack } from "../../../machines/install/read-back.ts";
import type { Status } from "../../../machines/install/refusals.ts";
import { status } from "../../../machines/install/status.ts";
import { PHASES, type PhaseId, type Script, type Step } from "../../../machines/install/step.ts";
import { type Weather, weatherAt } from "../../../machines/install/weather.ts";
import { callInWind } from "../../../machines/install/windward-call.ts";
import { type HandWorkId, handWorkAt } from "../../../machines/picture/hand-work.ts";
import { lookupIn } from "../../../machines/record/entries.ts";
import type { CommandEntry } from "../../../machines/record/entry.ts";
import { alongTent } from "../../../machines/tent/along.ts";
import { effectText } from "../../parts/effect.ts";
import { hurtState } from "../../parts/hurt-state.ts";
import { lightningFacts } from "../../parts/lightning-state.ts";
import { askText, callText, reasonText, replyText, sayText } from "../../text/replies.ts";
import type { Words } from "../../text/words.ts";
import { takesNone } from "./asked.ts";
import { cureOf } from "./cure.ts";
import { siteState } from "./site-state.ts";
import { skyLines } from "./sky-lines.ts";
import type { GateState, GuideState, Milestone } from "./state.ts";
import { stopState } from "./stop.ts";
import { threadLine } from "./thread-line.ts";
import { watchState } from "./watch-state.ts";
import { watchedWind, weatherFacts } from "./weather.ts";

const THREAD = 12;

/** Everything a screen shows of a job as it is now, in its words; `device` is whose screen it is, for what was heard there, or `null`. */
export function buildGuideState(live: LiveJob, device: string | null, words: Words): GuideState {
  const { job, entries, names, readOnly, warning, jump } = live;
  const { at } = live.now;
  const { context } = job.snapshot;
  const { brief, script } = job.frozen;
  const step = currentStep(job);
  const name = (id: string) => names[id] ?? id;
  const told: Told = { live, name, words };
  const weather = weatherAt(context, at);
  return {
    job: entries.at(0)!.entry.job,
    title: brief.title,
    entry: entries.at(-1)!.entry.no,
    revision: context.revision,
    phase: step?.phase ?? "closed",
    phaseName: words.phaseName(step?.phase ?? "closed"),
    step: step?.id ?? "closed",
    progress: progressOf(script, context.resumeAt ?? step?.id ?? null),
    milestones: milestonesOf(script, context.resumeAt ?? step?.id ?? null, words),
    toward: towardText(step, context.resumeAt !== null, words),
    call: step ? callState(step, live, words) : null,
    handWork: handWorkHere(job, at),
    rehearsal: brief.rehearsal === true,
    site: siteState(live, words),
    gate: gateState(job, at, name, words),
    held: holdState(live, name, words),
    hurt: hurtState(live, words),
    weather: weatherState(live, weather, words),
    watch: watchState(job, at, words),
    ...missingState(job, at, told),
    readBack: device === null ? null : readBackOn(device, told),
    outOfUse: Object.values(context.outOfUse).map(({ thing, because, by }) => ({
      thing,
      line: words.trouble.line(thing, because, name(by)),
    })),
    makingSafe: context.resumeAt !== null,
    closed: step === null,
    // Nobody agrees to a change of a job that is closed.
    proposed: step &&
      context.proposed &&
      job.proposed && {
        ...context.proposed,
        by: name(context.proposed.by),
        byId: context.proposed.by,
        later: peopleUnder(script, context),
        ...effectText(job, job.proposed, name, words),
      },
    people: brief.crew.map((p) => ({ id: p.id, name: name(p.id), role: p.role, roleName: words.roleName(p.role) })),
    thread: entries.slice(-THREAD).flatMap((e) => (e.entry.kind === "command" ? [threadLine(e.entry, told)] : [])),
    readOnly: readOnly && words.notRecordedText(readOnly),
    warning: warning && words.errors.low(warning),
    clock: jump && words.guide.clock[jump.is](words.duration(jump.ms)),
  };
}

function progressOf({ steps }: Script, at: StepId | null): GuideState["progress"] {
  return { at: at === null ? steps.length : steps.findIndex((s) => s.id === at) + 1, of: steps.length };
}

/** The seven of a raise: all of them are reached once the tent stands. */
function milestonesOf({ steps }: Script, at: StepId | null, { phaseName }: Words): Milestone[] {
  const here = steps.find((s) => s.id === at)?.phase;
  const now = here === undefined ? PHASES.length : PHASES.indexOf(here as PhaseId);
  return RAISE.map((phase, i) => ({ phase, name: phaseName(phase), is: i < now ? "reached" : i === now ? "toward" : "ahead" }));
}
const RAISE = PHASES.slice(0, PHASES.indexOf("standing"));

function towardText(step: Step | null, makingSafe: boolean, { guide, phaseName }: Words): string {
  if (makingSafe) return guide.makingSafe;
  return step === null ? phaseName("closed") : guide.toward(step.phase, phaseName(step.phase));
}

function weatherState(live: LiveJob, is: Weather, words: Words): GuideState["weather"] {
  const { job } = live;
  const { at } = live.now;
  const facts = weatherFacts(job, is, at);
  const sky = is === "stop" ? [] : skyLines(live, words);
  const watched = watchedWind(job, at);
  return {
    is,
    words: words.weatherWords(facts),
    reading: words.weatherShort(facts),
    watched: watched && { short: words.weatherPlan.readShort(watched), words: words.weatherPlan.read(watched) },
    stop: stopState(job, facts, words, missingNow(job, at)),
    lightning: lightningFacts(job, at, words),
    sky: sky.map(({ line }) => line),
    skyBrief: sky[0]?.brief ?? null,
  };
}

function missingState(job: Job, at: Instant, { name, words }: Told): Pick<GuideState, "missing" | "lacks"> {
  const reason = reasonNow(job, at);
  return {
    missing: reason && reasonText(reason, { name, zone: job.frozen.brief.zone }, words),
    lacks: reason?.refusal.why === "outOfUse",
  };
}

/** Whose hold it is. One that could not be recorded holds as well, and says so. */
function holdState({ job, unrecorded }: LiveJob, name: (id: string) => string, words: Words): GuideState["held"] {
  const only = (is: string) => (is === "paused" ? "paused" : null);
  const is = attentionState(job);
  // "Wait" never releases a hold, recorded or not.
  if (unrecorded && !(unrecorded.is === "paused" && is === "held"))
    return { by: name(unrecorded.by), only: only(unrecorded.is), unrecorded: words.notRecordedText(unrecorded.why) };
  return is === "working" ? null : { by: name(job.snapshot.context.heldBy ?? ""), only: only(is), unrecorded: null };
}

function callState(step: Step, { job: { frozen, snapshot }, now }: LiveJob, words: Words): NonNullable<GuideState["call"]> {
  const { why, wrong, well } = callText(step, words);
  const along = step.params.poles === undefined ? null : alongTent(frozen.plan, String(step.params.poles).split(" "));
  return {
    say: sayText(callInWind(step, frozen.brief, snapshot.context, now.at), words),
    place: along && words.picture.along(along),
    why,
    wrong,
    well,
    asks: step.gate !== null,
  };
}

/** What is asked first, and then the call that it stands at: each drawing once. */
function handWorkHere(job: Job, at: Instant): readonly HandWorkId[] {
  const told = [questionAt(job, at), currentStep(job)].flatMap((one) => (one ? handWorkAt(one.wordsKey) : []));
  return [...new Set(told)];
}

/** A job, what its people are called, and the language of a screen. */
type Told = { readonly live: LiveJob; readonly name: (id: string) => string; readonly words: Words };

function readBackOn(device: string, told: Told): GuideState["readBack"] {
  const { live } = told;
  const { at } = live.now;
  const waits = pendingReadBack(live.job, device, at);
  const heard = waits && lookupIn(live.entries)(waits.entry);
  if (!waits || heard?.kind !== "command") return null;
  return {
    entry: waits.entry,
    words: replied(heard, told),
    leftS: Math.ceil((waits.at - at) / 1000 + live.job.frozen.limits.readBackS.is),
  };
}

function gateState(job: Job, at: number, name: (id: string) => string, words: Words): GateState | null {
  const question = questionAt(job, at);
  if (!question) return null;
  const { gate } = question;
  const { context } = job.snapshot;
  const missing = missingNow(job, at);
  const is = status(gate, context, at);
  const answer = context.answers[gate.id];
  const { ifNot, none } = callText(question, words);
  const tile = tileInput(gate.check, answer?.value);
  const found = answer ? finding(gate.check, answer.value, context) : null;
  const first = gate.secondPersonTo === null ? undefined : context.answers[gate.secondPersonTo];
  const ahead = workAheadOf(job, at);
  const because = is === "good" ? null : (context.reopened[gate.id]?.by ?? null);
  return {
    id: gate.id,
    asked: missing?.why === "gate" ? missing.asked : "here",
    before: missing?.why === "gate" && missing.asked === "before" && ahead !== null ? words.guide.askedBefore(ahead) : null,
    because: because && words.becauseText(because),
    hard: gate.hard,
    check: gate.check,
    say: sayText(question, words),
    ask: askText(question, words) ?? sayText(question, words),
    limit: words.limitText(gate),
    source: words.sourceText(gate.source),
    status: is,
    statusWords: words.statusText(is),
    value: answer ? words.valueText(answer.value) : null,
    answered: answer?.entry ?? 0,
    given: givenParts(gate.check, answer?.value),
    want: wantedParts(gate.check, context),
    found: found && words.findingText(found),
    tile,
    ifNot: ifNot ?? "",
    none: takesNone(tile) ? (none ?? words.guide.noneAtAll) : null,
    cure: cureOf(gate, is, found),
    paper: gate.paper,
    shown: shownPaper(is, answer, name),
    roles: is === "unseen" ? COMPETENT : gate.roles,
    notBy: is === "unseen" ? name(answer!.by) : first ? name(first.by) : null,
  };
}

/** The paper on a tile that nobody but its shower has seen. */
function shownPaper(is: Status, answer: Answer | undefined, name: (id: string) => string): GateState["shown"] {
  if (is !== "unseen" || answer?.value.kind !== "paper") return null;
  return { by: answer.by, name: name(answer.by), fields: answer.value };
}

const replied = (entry: CommandEntry, { live, name, words }: Told): string =>
  replyText(replyTo(entry, contextOf(live, entry)), { name, zone: live.job.frozen.brief.zone }, words);
