import { airStops } from "../install/air.ts";
import { type Change, changesOf } from "../install/changes.ts";
import { finding, isCumulative } from "../install/checks/any-check.ts";
import type { Shortfall } from "../install/checks/computed.ts";
import type { Finding } from "../install/checks/registry.ts";
import type { BindingIntent, Command, Did, Reading } from "../install/commands.ts";
import type { Found } from "../install/found.ts";
import { shutBy } from "../install/found-in.ts";
import type { Answer, Value } from "../install/gates.ts";
import type { GateId, Instant, WallTime } from "../install/ids.ts";
import { currentStep, type Job, missingNow, stepsIn } from "../install/job.ts";
import type { MissingGate, Refusal, UnmetStatus } from "../install/refusals.ts";
import { indexOf, type Question } from "../install/script-index.ts";
import type { JobState, Wind } from "../install/state.ts";
import { gustAllowed, isPassed, status } from "../install/status.ts";
import type { Frozen, Script, Step } from "../install/step.ts";
import type { Thing } from "../install/thing.ts";
import { AGREED, agreedMph, canOnlyStop, worstMph } from "../install/weather.ts";
import { callInWind } from "../install/windward-call.ts";
import { own } from "../lookup/own.ts";
import { answerValue, effectiveCommandBy } from "../record/effective-command.ts";
import { type EntryLookup, lookupIn } from "../record/entries.ts";
import type { CommandEntry } from "../record/entry.ts";
import { frozenBefore, waitedBefore } from "../record/in-force.ts";
import { isBegun, isPoleInHand } from "./in-hand.ts";
import type { LiveJob } from "./live-job.ts";
import { type Stop, stopsOf } from "./stops.ts";

/** One reason why not, with what a sentence about it needs: what is asked, the answer there, what that comes to. */
export type Reason = {
  readonly refusal: Refusal;
  readonly question: Question | null;
  readonly value: Value | null;
  readonly finding: Finding | null;
  /** Whether it was said with a pole or people in hand: that is finished first. */
  readonly inHand: boolean;
  /** Where a wind is in the way. */
  readonly wind: WindInTheWay | null;
};

/** What was read, as far as it is known; the gust that is allowed; and whether anything lies or stands there that could be made safe. */
export type WindInTheWay = {
  readonly read: Pick<Wind, "mph" | "gustMph"> | null;
  readonly limitMph: number;
  readonly standing: boolean;
};

/** What the guide says back to an entry, as facts; `views/text` has the sentences. */
export type Reply =
  | { readonly is: "refused"; readonly reasons: readonly Reason[] }
  /** Done, and no more to say than that. */
  | { readonly is: "done"; readonly did: Did }
  /** On to the next call, or the job is closed; with the answer that led on, where one did. */
  | {
      readonly is: "wentOn";
      readonly did: Did;
      readonly answer: Value | Reading | null;
      readonly finding: Finding | null;
      readonly to: Step | null;
    }
  /** Good, and something else is asked before it goes on. */
  | { readonly is: "asks"; readonly answer: Value | Reading; readonly finding: Finding | null; readonly reason: Reason }
  /** An answer that is good, with what it comes to. */
  | { readonly is: "answered"; readonly did: Did; readonly finding: Finding | null }
  /** All work stops; `shelter` where the crew goes from lightning, as far as anybody knows. */
  | {
      readonly is: "stopped";
      readonly inHand: boolean;
      readonly shelter: { readonly place: string | null } | null;
      /** What was given for the seconds from flash to bang, and is none. */
      readonly notSeconds: string | null;
    }
  /** A gust at which nothing goes up, though not all is stopped. */
  | { readonly is: "overRaise"; readonly limitMph: number }
  /** An answer that was recorded and keeps its gate shut. */
  | { readonly is: "notGood"; readonly reason: Reason }
  /** Heard and waiting for "correct". `question` asks for it; `outOfLimit` where the answer is; `takenAt` for a reading of earlier, by the wall clock. */
  | {
      readonly is: "readBack";
      readonly intent: BindingIntent;
      readonly question: Question | null;
      readonly outOfLimit: boolean;
      readonly takenAt: WallTime | null;
    }
  /** A thing out of use, with what that stops from here on. */
  | { readonly is: "outOfUse"; readonly thing: Thing; readonly stops: readonly Stop[] }
  /** Back, all but so many. */
  | { readonly is: "backInUse"; readonly thing: Thing; readonly left: number }
  /** On the plan from now on, with what it shuts: what of the tent stands too near to it. `dropped`: a change waited, and does no more. */
  | { readonly is: "found"; readonly what: Found; readonly shuts: readonly Shortfall[]; readonly dropped: boolean }
  | { readonly is: "proposed"; readonly changes: readonly Change[] }
  /** At the standing tent, a wind at or over what was agreed for it: everybody out, or the walls off. */
  | { readonly is: "overAgreed"; readonly what: Agreed; readonly mph: number; readonly agreedMph: number }
  /** Somebody is hurt: where help is sent to, and where first aid is. */
  | { readonly is: "hurt"; readonly address: string; readonly firstAid: string | null };

/** What is agreed for a standing tent: the wind at which everybody leaves it, and the one at which its walls come off. The graver first. */
type Agreed = keyof typeof AGREED;
const KINDS_AGREED: readonly Agreed[] = ["evacuate", "walls"];

/** How things stood when an entry was said: the script then in force, and what had been answered. */
export type ReplyContext = {
  readonly script: Script;
  readonly answers: JobState["answers"];
  readonly state: JobState;
  readonly earlier: EntryLookup;
  /** The wind as it was then. Only for the last entry: told later, there may have been another. */
  readonly wind: Wind | null;
  /** Puts the windward side into the call that it led to. Only for the last entry: told later, the wind may have turned. */
  readonly saidThen?: (step: Step) => Step;
};

/** A reading this old is read back with the time it was taken at, in ms. */
const TOLD_WITH_TIME_MS = 60_000;

/** How things stood when an entry of a job was said, by the script in force now. */
export function contextOf({ job, entries, now }: Pick<LiveJob, "job" | "entries" | "now">, entry: CommandEntry): ReplyContext {
  const { context: state } = job.snapshot;
  const isLast = entries.at(-1)?.entry.no === entry.no;
  const answers = isLast ? state.answers : Object.fromEntries(Object.entries(state.answers).filter(([, a]) => a.entry <= entry.no));
  const saidThen = (step: Step) => (isLast ? callInWind(step, job.frozen.brief, state, now.at) : step);
  return { script: job.frozen.script, answers, state, earlier: lookupIn(entries), wind: isLast ? state.wind : null, saidThen };
}

/**
 * What the guide says back to one entry. Told from the entry itself, so that it is the same when a key is sent again later.
 * An answer out of limits is recorded, and said to be so at once.
 */
export function replyTo(entry: CommandEntry, then: ReplyContext): Reply {
  const { outcome } = entry;
  const reason = (refusal: Refusal) => reasonFor(refusal, entry, then);
  if ("refused" in outcome) return { is: "refused", reasons: outcome.refused.map(reason) };
  const command = effectiveCommandBy(entry, then.earlier);
  if (command.type === "amend") return { is: "proposed", changes: changesOf(frozenBefore(entry.no, then.earlier), command.to) };
  if (command.type === "hurt") {
    const { address, firstAid } = frozenBefore(entry.no, then.earlier).brief.site;
    return { is: "hurt", address, firstAid };
  }
  const said = command.type === "readBack" ? command.intent : command;
  const answered = said.type === "answer" ? answerGiven(entry, command, said, then) : null;
  if (command.type === "readBack") {
    const question = said.type === "answer" || said.type === "waive" ? questionOf(said.gate, then) : null;
    return readBackOf(command.intent, question, answered?.unmet != null, command);
  }
  if (said.type === "outOfUse") return { is: "outOfUse", thing: said.thing, stops: stopsOf(then.script, entry.step, said.thing) };
  if (said.type === "backInUse") return { is: "backInUse", thing: said.thing, left: outcome.left ?? 0 };
  if (said.type === "found") return foundReply(said, entry, then);
  const over = said.type === "reading" ? overAgreed(said.reading, entry, then) : null;
  if (over) return over;
  const { did } = outcome;
  const answer = said.type === "answer" ? said.value : said.type === "reading" ? said.reading : null;
  if (outcome.and) return { is: "wentOn", did: outcome.and, answer, finding: answered?.finding ?? null, to: callSaid(entry, then) };
  if (answered?.unmet) return { is: "notGood", reason: answered.unmet };
  if (did === "moved" || did === "closed") return { is: "wentOn", did, answer: null, finding: null, to: callSaid(entry, then) };
  const shut = said.type === "reading" ? stopBy(said.reading, entry, then) : null;
  if (shut?.is === "stopped") return shut;
  if (answer && outcome.asks) return { is: "asks", answer, finding: answered?.finding ?? null, reason: reason(outcome.asks) };
  if (shut) return shut;
  return answered?.finding ? { is: "answered", did, finding: answered.finding } : { is: "done", did };
}

/** What a wind at the standing tent calls for, by what was agreed; by its gust, or what the mean may gust to. */
function overAgreed(reading: Reading, entry: CommandEntry, then: ReplyContext): Reply | null {
  if (reading.kind !== "wind" || stepIn(entry, then)?.phase !== "standing") return null;
  const mph = worstMph(reading);
  for (const what of KINDS_AGREED) {
    const agreed = agreedMph(then, AGREED[what]);
    // Over the stop level nobody is sent to a wall: everybody goes out.
    if (what === "walls" && canOnlyStop(reading, then.state)) return null;
    if (agreed !== null && mph >= agreed) return { is: "overAgreed", what, mph, agreedMph: agreed };
  }
  return null;
}

function foundReply({ what, to }: { what: Found; to: Frozen }, { no }: CommandEntry, { earlier }: ReplyContext): Reply {
  return { is: "found", what, shuts: shutBy(what, to.script), dropped: waitedBefore(no, earlier) !== null };
}

/** What a reading shuts: everything, or whatever would go up. */
function stopBy(reading: Reading, entry: CommandEntry, then: ReplyContext): Reply | null {
  // Heat and cold shut no more than the work: what they ask for stands beside the call, and why at "next".
  if (airStops(reading)) return null;
  if (canOnlyStop(reading, then.state)) {
    const { stormShelter } = frozenBefore(entry.no, then.earlier).brief.site;
    return { is: "stopped", inHand: isBegun(stepIn(entry, then)), ...thunderIn(reading, stormShelter) };
  }
  const { raiseGustMph } = then.state.limits;
  return reading.kind === "wind" && worstMph(reading) >= raiseGustMph ? { is: "overRaise", limitMph: raiseGustMph } : null;
}

const thunderIn = (reading: Reading, place: string | null) =>
  reading.kind === "thunder" ? { shelter: { place }, notSeconds: reading.notSeconds ?? null } : { shelter: null, notSeconds: null };

const questionOf = (gate: GateId, { script }: Pick<ReplyContext, "script">): Question | null => indexOf(script).questions.get(gate) ?? null;

/** Where the job stood after an entry. */
const stepIn = ({ step }: CommandEntry, { script }: ReplyContext): Step | null => stepsIn(script).byId.get(step) ?? null;

/** The call after an entry, as it is said. */
function callSaid(entry: CommandEntry, then: ReplyContext): Step | null {
  const step = stepIn(entry, then);
  return step && (then.saidThen?.(step) ?? step);
}

function reasonFor(refusal: Refusal, entry: CommandEntry, then: ReplyContext): Reason {
  const said = effectiveCommandBy(entry, then.earlier);
  const wind = said.type === "reading" && said.reading.kind === "wind" ? said.reading : then.wind;
  return reasonAt(refusal, stepIn(entry, then), { ...then, wind });
}

/** Where nothing but marks and stakes is on the site, nothing can be made safe. */
const BARE: readonly (Step["site"] | undefined)[] = ["clear", "staked"];

type ReasonContext = Pick<ReplyContext, "script" | "answers"> & { readonly wind: WindInTheWay["read"] };
function reasonAt(refusal: Refusal, step: Step | null, then: ReasonContext): Reason {
  const { answers } = then;
  const question = "gate" in refusal && refusal.gate !== undefined ? questionOf(refusal.gate, then) : null;
  const value = question ? (own(answers, question.gate.id)?.value ?? null) : null;
  const found = question && value ? finding(question.gate.check, value, { answers }) : null;
  const check = question?.gate.check;
  const wind =
    check?.kind === "wind" ? { read: then.wind, limitMph: gustAllowed(check, then), standing: !BARE.includes(step?.site) } : null;
  return { refusal, question, value, finding: found, inHand: isPoleInHand(step), wind };
}

/** What keeps "next" from leading on, at a moment, with all that its sentence speaks about; `null` where it leads on. */
export function reasonNow(job: Job, at: Instant): Reason | null {
  const missing = missingNow(job, at);
  const { answers, wind } = job.snapshot.context;
  return missing && reasonAt(missing, currentStep(job), { script: job.frozen.script, answers, wind });
}

/** What an answer comes to at its gate, with all that had been answered when it was given. */
function answerGiven(
  entry: CommandEntry,
  { by, device, at, wall }: Command,
  said: Extract<BindingIntent, { type: "answer" }>,
  then: ReplyContext,
) {
  const gate = questionOf(said.gate, then)?.gate;
  if (!gate) return null;
  const value = answerValue(entry, then.earlier) ?? said.value;
  const looked = "did" in entry.outcome && entry.outcome.did === "seen";
  const seen = looked ? { seen: { by, device, entry: entry.no } } : {};
  const answer: Answer = { gate: gate.id, value, by, device, at, entry: entry.no, ...seen };
  const answers = { ...then.answers, [gate.id]: answer };
  const is = status(gate, { ...then.state, answers, waived: {}, lastAt: at, wallAheadMs: wall - at, sessionAt: 0 }, at);
  const missing: MissingGate = { why: "gate", gate: gate.id, status: is as UnmetStatus, asked: "here", because: null, notBefore: null };
  return {
    finding: finding(gate.check, value, { answers }),
    unmet: isPassed(is) ? null : reasonFor(missing, entry, { ...then, answers }),
  };
}

/** What is answered bit by bit is not held against its limit until all of it is there. */
function readBackOf(intent: BindingIntent, question: Question | null, unmet: boolean, { at, wall }: Command): Reply {
  const cumulative = question !== null && isCumulative(question.gate.check);
  const taken = intent.type === "reading" ? intent.reading.takenAt : at;
  return {
    is: "readBack",
    intent,
    question: cumulative ? null : question,
    outOfLimit: unmet && !cumulative,
    takenAt: at - taken < TOLD_WITH_TIME_MS ? null : taken + wall - at,
  };
}
