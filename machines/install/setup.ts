import { assign, setup, stateIn } from "xstate";
import { without } from "../lookup/without.ts";
import { airOpens, airTooOld } from "./air.ts";
import { accepts, meetsLimit, mergeAnswers } from "./checks/any-check.ts";
import { type Command, type Did, type Reading, SPOKEN } from "./commands.ts";
import { cornerMoved, withMoved } from "./corner-moved.ts";
import type { Gate, Happening } from "./gates.ts";
import type { EntryNo, GateId, Instant, StepId } from "./ids.ts";
import { asked, callAt, following, entry as needed, peopleUnder, toAdded } from "./missing.ts";
import type { Moment } from "./moment.ts";
import { type Neighbor, nearest } from "./neighbors.ts";
import { putBack, takenOut } from "./out-of-use.ts";
import { isSecondLook, paperRefusal } from "./paper.ts";
import { inALee, onlyWarns, withReading } from "./reading.ts";
import { windsAnd } from "./recent-winds.ts";
import type { Refusal } from "./refusals.ts";
import { arrived, reopen, reopenFor } from "./reopen.ts";
import { mayAsk } from "./rights.ts";
import { indexOf } from "./script-index.ts";
import type { JobState } from "./state.ts";
import { answerStatus, isPassed, sessionSince } from "./status.ts";
import type { Script, Step } from "./step.ts";
import { keyOf } from "./thing.ts";
import { clocksIn } from "./wall-time.ts";
import { isOlderWatch, onlyWatches, watchedAnd } from "./watched.ts";
import { canOnlyStop, thundery, weatherAt } from "./weather.ts";

export type Event =
  | Command
  | ({ readonly type: "clock" } & Moment)
  /** The question has changed: what a screen showed before is out of date. */
  | { readonly type: "questionChanged"; readonly at: Instant; readonly entry: EntryNo };
export type Judged = { context: JobState; event: Event };
/** A leaf of the chart: the call that it stands for, in its script. */
export type Leaf = { readonly script: Script; readonly step: Step };

/**
 * The gate that a command speaks of, where it may be answered: the one that is asked, the call's own, and at any time a
 * condition.
 */
export function gateSpokenOf({ script, step }: Leaf, { context, event }: Judged): Gate | null {
  if (event.type !== "answer" && event.type !== "waive") return null;
  const call = callAt(script, step, context);
  const { conditions, gates } = indexOf(script);
  const listens = call.gate?.id === event.gate || conditions.has(event.gate) || asked(script, step, context, event.at)?.gate === event.gate;
  return listens ? (gates.get(event.gate) ?? null) : null;
}

/** What can only stop work counts whoever says it: a bad answer to a condition. */
function shutsOnly({ script }: Leaf, gate: Gate, { context, event }: Judged): boolean {
  if (event.type !== "answer" || !indexOf(script).conditions.has(gate.id)) return false;
  return accepts(gate, event.value, context) && !meetsLimit(gate.check, event.value, context);
}

/** Guards and actions by name. Those that are candidates for a refusal say when to refuse. */
export const install = setup({
  types: {} as { context: JobState; events: Event },
  guards: {
    clear: ({ context, event }, { script, step }: Leaf) => asked(script, step, context, event.at) === null,
    clearFor: ({ context, event }, { id, script, step }: Leaf & { id: StepId }) =>
      asked(script, step, context, event.at) === null && (following(script, step, context)?.id ?? null) === id,
    mayGoBackTo: ({ context, event }, { among, script, step }: Leaf & { among: readonly Neighbor[] }) =>
      nearest(among, context) === step && needed(script, step, context, event.at) === null,
    mayNotAsk: ({ event }) => !("role" in event) || !mayAsk(event.type).includes(event.role),
    held: stateIn({ attention: "held" }),
    hurt: ({ context }) => context.hurt !== null,
    hurtAndSilent: ({ context, event }) => context.hurt !== null && event.type === "carryOn" && event.became === null,
    paused: stateIn({ attention: "paused" }),
    peopleUnder: ({ context }, { script }: { script: Script }) => peopleUnder(script, context),
    weatherIs: ({ context, event }, { is }: { is: string }) =>
      weatherAt(event.type === "reading" ? withReading(context, event) : context, event.at) === is,
    notAskedHere: (judged, leaf: Leaf) => gateSpokenOf(leaf, judged) === null,
    mayNotAnswer: (judged, leaf: Leaf) => {
      const gate = gateSpokenOf(leaf, judged);
      return !("role" in judged.event) || !gate || !(gate.roles.includes(judged.event.role) || shutsOnly(leaf, gate, judged));
    },
    wrongKind: (judged, leaf: Leaf) => {
      const gate = gateSpokenOf(leaf, judged);
      return judged.event.type !== "answer" || !gate || !accepts(gate, judged.event.value, judged.context);
    },
    /** By voice, the second of two people answers on a device of their own: one voice is heard on both ends of a room. */
    firstDevice: ({ context, event }, { script }: Leaf) =>
      event.type === "answer" &&
      (SPOKEN as readonly string[]).includes(event.source) &&
      (indexOf(script).pairs.get(event.gate) ?? []).some((id) => context.answers[id]?.device === event.device),
    mayNotShow: ({ context, event }) => event.type === "answer" && paperRefusal(context.answers, event) !== null,
    looksAtPaper: ({ context, event }) => event.type === "answer" && isSecondLook(context.answers, event),
    hardGate: (judged, leaf: Leaf) => gateSpokenOf(leaf, judged)?.hard !== false,
    atTheBeginning: ({ context }, { id }: { id: StepId }) => context.startedFrom === id,
    raised: ({ context }) => context.site === "raised",
    siteIs: ({ context }, { is }: { is: string }) => context.site === is,
    comesDownFrom: ({ context, event }, { is, script, step }: Leaf & { is: string }) =>
      context.site === is && needed(script, step, context, event.at) === null,
    notCountedOut: ({ context }, { step }: Leaf) => step.gate !== null && !isPassed(answerStatus(step.gate, context)),
    doingAdded: ({ context }) => context.doing !== null,
    addedAndClear: ({ context, event }, { script, step }: Leaf) =>
      toAdded(script, step, context) && asked(script, step, context, event.at) === null,
    goesOnHere: ({ context, event }, { id, script, step }: Leaf & { id: StepId }) =>
      context.resumeAt === id && asked(script, step, context, event.at) === null,
    readingByWhoMayNot: ({ context, event }, { script }: { script: Script }) =>
      event.type === "reading" &&
      !onlyWatches(event, context, script) &&
      (!OPENS_NOTHING.includes(event.reading.kind) || airOpens(event.reading, context)) &&
      !canOnlyStop(event.reading, context) &&
      !mayAsk(event.type).includes(event.role) &&
      !onlyWarns(event, context),
    onlyWatches: ({ context, event }, { script }: { script: Script }) => event.type === "reading" && onlyWatches(event, context, script),
    /** Judged after who may: a lee that is over a limit in force counts, as it can only stop. */
    readingInALee: ({ context, event }) =>
      event.type === "reading" && inALee(event.reading) && !canOnlyStop(event.reading, context) && !onlyWarns(event, context),
    readingFromTheFuture: ({ context, event }) =>
      event.type === "reading" && !canOnlyStop(event.reading, context) && !onlyWarns(event, context) && event.reading.takenAt > event.at,
    readingOlder: ({ context, event }, { script }: { script: Script }) =>
      event.type === "reading" &&
      (airTooOld(event.reading, context, event.at) ||
        (event.reading.kind === "wind" &&
          !canOnlyStop(event.reading, context) &&
          !onlyWarns(event, context) &&
          (event.reading.takenAt < (context.wind?.takenAt ?? event.reading.takenAt) || isOlderWatch(event, context, script)))),
    noThunderNear: ({ context, event }) => event.type === "reading" && event.reading.kind === "noThunder" && !thundery(context, event.at),
    noSuchProposal: ({ context, event }) => !("target" in event) || context.proposed?.entry !== event.target,
    notOutOfUse: ({ context, event }) => !("thing" in event) || !(keyOf(event.thing) in context.outOfUse),
    sameAsProposer: ({ context, event }) => "by" in event && context.proposed?.by === event.by,
  },
  actions: {
    // These two are never run: `transition()` hands them back as data, and `decide` reads the outcome from them.
    did: (_, _outcome: { what: Did }) => {},
    refuse: (_, _outcome: { reasons: readonly Refusal[] }) => {},
    revise: assign(({ event }) => ("entry" in event ? { revision: event.entry } : {})),
    arrive: assign(({ context, event }, leaf: Leaf) => arrived(leaf.script, context, leaf.step, entryOf(event))),
    /** To the first call that was put behind the job, on to the next, and back to where the job stands. */
    throughAdded: assign(({ context, event }, { script, step }: Leaf) => {
      const added = context.doing === null ? context.added : context.added.slice(1);
      const after = { ...context, added, doing: added[0] ?? null };
      return arrived(script, after, following(script, step, context)!, entryOf(event));
    }),
    answer: assign(({ context, event: e }, { script }: Leaf) => {
      if (e.type !== "answer") return {};
      const gate = indexOf(script).gates.get(e.gate)!;
      const value = mergeAnswers(gate.check, context.answers[e.gate]?.value, e.value);
      const doubt = context.doubtMs === undefined ? {} : { doubtMs: context.doubtMs };
      const answer = withMoved(gate, { gate: e.gate, value, by: e.by, device: e.device, at: e.at, entry: e.entry, ...doubt }, context);
      const answered = {
        ...context,
        answers: { ...context.answers, [e.gate]: answer },
        waived: without(context.waived, [e.gate]),
        reopened: without(context.reopened, [e.gate]),
      };
      return cornerMoved(gate, answer, context) ? reopenFor(script, answered, "corner", e.entry) : answered;
    }),
    see: assign(({ context, event: e }) => {
      if (e.type !== "answer") return {};
      const seen = { by: e.by, device: e.device, entry: e.entry };
      return { answers: { ...context.answers, [e.gate]: { ...context.answers[e.gate]!, seen } } };
    }),
    waive: assign(({ context, event: e }) =>
      e.type === "waive"
        ? {
            waived: { ...context.waived, [e.gate]: { because: e.because, by: e.by, entry: e.entry } },
            reopened: without(context.reopened, [e.gate]),
          }
        : {},
    ),
    reopen: assign(({ context, event }, { steps }: { steps: readonly Step[] }) => reopen(context, gateIds(steps), "back", entryOf(event))),
    leaveFor: assign(({ context, event }, leaf: Leaf) => left(leaf, context, entryOf(event))),
    backToWork: assign({ resumeAt: null }),
    /** From here on, as if for the first time: what was answered of it on an earlier way down is asked again. */
    beginAgain: assign(({ context, event }, { script, step }: Leaf) => ({
      ...reopen(context, gateIds(script.steps.slice(indexOf(script).at.get(step.id))), "strike", entryOf(event)),
      startedFrom: step.id,
      resumeAt: null,
      added: [],
      doing: null,
    })),
    hold: assign(({ event }) => ("by" in event ? { heldBy: event.by, revision: event.entry } : {})),
    hurt: assign(({ event }) => ("by" in event ? { hurt: { by: event.by, at: event.at, entry: event.entry } } : {})),
    carryOn: assign(({ event }) => ("entry" in event ? { heldBy: null, hurt: null, revision: event.entry } : {})),
    read: assign(({ context, event }, { script }: { script: Script }) => {
      if (event.type !== "reading") return {};
      const winds = script.watch ? { winds: windsAnd(context.winds ?? [], event.reading) } : {};
      const read = { ...withReading(context, event), ...winds, ...watchedAnd(event, context, script) };
      const happened = happeningOf(event.reading, context);
      return happened ? reopenFor(script, read, happened, event.entry) : read;
    }),
    watchOver: assign(({ context, event }, { script }: { script: Script }) =>
      event.type === "reading"
        ? { winds: windsAnd(context.winds ?? [], event.reading, "watch"), ...watchedAnd(event, context, script) }
        : {},
    ),
    passTime: assign(({ context, event }) => ({
      lastAt: Math.max(context.lastAt, event.at),
      sessionAt: sessionSince(context, event.at),
      ...(event.type === "clock" ? clocksIn(context, event) : {}),
    })),
    propose: assign(({ event: e }) => (e.type === "amend" ? { proposed: { entry: e.entry, by: e.by, because: e.because } } : {})),
    settle: assign({ proposed: null }),
    takeOut: assign(({ context, event: e }) => (e.type === "outOfUse" ? { outOfUse: takenOut(context, e) } : {})),
    putBack: assign(({ context, event: e }) => (e.type === "backInUse" ? { outOfUse: putBack(context, e) } : {})),
  },
});

/** Readings that open nothing are taken from anybody; of heat and cold those that open nothing that they keep shut. */
const OPENS_NOTHING: readonly Reading["kind"][] = ["rain", "heat", "cold"];

const entryOf = (event: Event): EntryNo => ("entry" in event ? event.entry : 0);
const gateIds = (steps: readonly Step[]): GateId[] => steps.flatMap((s) => (s.gate ? [s.gate.id] : []));

/** What a reading is besides a reading: something that reopens gates. */
function happeningOf(reading: Reading, state: Pick<JobState, "limits">): Happening | null {
  if (reading.kind === "rain") return "rain";
  return reading.kind === "wind" && canOnlyStop(reading, state) ? "blow" : null;
}

/** Off the call to a way out: the whole lift is gone over again afterward, and everybody is counted and told before. */
function left({ script, step }: Leaf, context: JobState, entry: EntryNo): JobState {
  const { steps } = script;
  const { at } = indexOf(script);
  const call = callAt(script, step, context);
  const from = at.get(call.resumeFrom ?? call.id)!;
  const goneOver = steps.slice(from, at.get(call.id)! + 1);
  const added = call === step ? context.added : [...goneOver.slice(0, -1).map((s) => s.id), ...context.added];
  const open = reopen(context, gateIds(goneOver), "back", entry);
  const resumeAt = call === step ? steps[from]!.id : step.id;
  return { ...reopenFor(script, open, "clearing", entry), added, doing: null, resumeAt };
}
