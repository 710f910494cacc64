import { assign, setup, stateIn } from "xstate";
import { accepts, mergeAnswers } from "./checks/any-check.ts";
import { type Command, type Did, type Reading, SPOKEN } from "./commands.ts";
import { DRIVERS } from "./crew.ts";
import { type Check, COMPETENT, type Gate } from "./gates.ts";
import type { Instant, StepId } from "./ids.ts";
import type { Refusal } from "./refusals.ts";
import type { JobState, Wind } from "./state.ts";
import { blockers } from "./status.ts";
import type { Step } from "./step.ts";
import { SITE_STATES } from "./step.ts";
import { weatherAt } from "./weather.ts";

export type Event = Command | { readonly type: "clock"; readonly at: Instant };
export type Judged = { context: JobState; event: Event };

/** The gate of this call, if it is the one the command speaks of. */
const gateSpokenOf = (step: Step, event: Event): Gate | null => ("gate" in event && step.gate?.id === event.gate ? step.gate : null);
const without = <T>(record: Readonly<Record<string, T>>, ids: readonly string[]) =>
  Object.fromEntries(Object.entries(record).filter(([id]) => !ids.includes(id)));
const gateIds = (steps: readonly Step[]) => steps.flatMap((s) => (s.gate ? [s.gate.id] : []));

function withReading(state: JobState, reading: Reading): JobState {
  if (reading.kind === "thunder") return { ...state, thunderAt: reading.takenAt };
  const wind: Wind = { mph: reading.mph, gustMph: reading.gustMph, takenAt: reading.takenAt };
  return { ...state, wind };
}

/** An older reading of the same kind never takes the place of a newer one. */
const lastReadingAt = (state: JobState, of: Reading["kind"]): Instant | null =>
  of === "wind" ? (state.wind?.takenAt ?? null) : state.thunderAt;

/** Guards and actions by name. Those that are candidates for a refusal say when to refuse. */
export const install = setup({
  types: {} as { context: JobState; events: Event },
  guards: {
    clear: ({ context, event }, { step }: { step: Step }) => blockers(step, context, event.at).length === 0,
    notDriver: ({ event }) => !("role" in event) || !DRIVERS.includes(event.role),
    notCompetent: ({ event }) => !("role" in event) || !COMPETENT.includes(event.role),
    held: stateIn({ attention: "held" }),
    paused: stateIn({ attention: "paused" }),
    stopped: stateIn({ weather: "stop" }),
    weatherIs: ({ context, event }, { is }: { is: string }) =>
      weatherAt(event.type === "reading" ? withReading(context, event.reading) : context, event.at) === is,
    notAskedHere: ({ event }, { step }: { step: Step }) => gateSpokenOf(step, event) === null,
    mayNotAnswer: ({ event }, { step }: { step: Step }) =>
      !("role" in event) || gateSpokenOf(step, event)?.roles.includes(event.role) !== true,
    wrongKind: ({ context, event }, { step }: { step: Step }) =>
      event.type !== "answer" || !step.gate || !accepts(step.gate, event.value, context),
    /** By voice, the second of two people answers on a device of their own: one voice is heard on both ends of a room. */
    firstDevice: ({ context, event }, { gates }: { gates: readonly string[] }) =>
      event.type === "answer" &&
      (SPOKEN as readonly string[]).includes(event.source) &&
      gates.some((id) => context.answers[id]?.device === event.device),
    hardGate: ({ event }, { step }: { step: Step }) => gateSpokenOf(step, event)?.hard !== false,
    atTheBeginning: ({ context }, { id }: { id: StepId }) => context.startedFrom === id,
    raised: ({ context }) => context.site === "raised",
    siteIs: ({ context }, { is }: { is: string }) => context.site === is,
    goesOnHere: ({ context, event }, { id, step }: { id: StepId; step: Step }) =>
      context.resumeAt === id && blockers(step, context, event.at).length === 0,
    readingFromTheFuture: ({ event }) => event.type === "reading" && event.reading.takenAt > event.at,
    readingOlder: ({ context, event }) =>
      event.type === "reading" && event.reading.takenAt < (lastReadingAt(context, event.reading.kind) ?? event.reading.takenAt),
    noSuchProposal: ({ context, event }) => !("target" in event) || context.proposed?.entry !== event.target,
    sameAsProposer: ({ context, event }) => "by" in event && context.proposed?.by === event.by,
  },
  actions: {
    // These two are never run: `transition()` hands them back as data, and `decide` reads the outcome from them.
    did: (_, _outcome: { what: Did }) => {},
    refuse: (_, _outcome: { reasons: readonly Refusal[] }) => {},
    revise: assign(({ event }) => ("entry" in event ? { revision: event.entry } : {})),
    arrive: assign(({ context }, { step }: { step: Step }) => ({
      site: step.phase === "struck" || SITE_STATES.indexOf(step.site) > SITE_STATES.indexOf(context.site) ? step.site : context.site,
    })),
    answer: assign(({ context, event: e }, { asks }: { asks: Check }) =>
      e.type === "answer"
        ? {
            answers: {
              ...context.answers,
              [e.gate]: {
                gate: e.gate,
                value: mergeAnswers(asks, context.answers[e.gate]?.value, e.value),
                by: e.by,
                device: e.device,
                at: e.at,
                entry: e.entry,
              },
            },
            waived: without(context.waived, [e.gate]),
          }
        : {},
    ),
    waive: assign(({ context, event: e }) =>
      e.type === "waive" ? { waived: { ...context.waived, [e.gate]: { because: e.because, by: e.by, entry: e.entry } } } : {},
    ),
    reopen: assign(({ context }, { steps }: { steps: readonly Step[] }) => ({
      answers: without(context.answers, gateIds(steps)),
      waived: without(context.waived, gateIds(steps)),
    })),
    leaveFor: assign((_, { resumeAt }: { resumeAt: StepId }) => ({ resumeAt })),
    backToWork: assign({ resumeAt: null }),
    beginAgain: assign((_, { id }: { id: StepId }) => ({ startedFrom: id, resumeAt: null })),
    hold: assign(({ event }) => ("by" in event ? { heldBy: event.by, revision: event.entry } : {})),
    carryOn: assign(({ event }) => ("entry" in event ? { heldBy: null, revision: event.entry } : {})),
    read: assign(({ context, event }) => (event.type === "reading" ? withReading(context, event.reading) : {})),
    passTime: assign(({ context, event }) => ({ lastAt: Math.max(context.lastAt, event.at) })),
    propose: assign(({ event: e }) => (e.type === "amend" ? { proposed: { entry: e.entry, by: e.by, because: e.because } } : {})),
    settle: assign({ proposed: null }),
  },
});
