import { isSure, phaseOf } from "./course.ts";
import { NO_PLACES, type Places, seconds, withPlace } from "./doubt.ts";
import { isOwn, type Said } from "./said.ts";
import type { Watch } from "./watch.ts";

/**
 * Soonest that a call can be read and answered, in milliseconds: 1 s, whatever it says, as its words are not known here. The
 * shortest call has six words: 1.1 s at 320 words a minute, the top of what most adults read, and that of the easier kind of
 * text. Source: Brysbaert 2019, "How many words do we read per minute?", Journal of Memory and Language 109:104047: silent
 * reading of fiction 200 to 320 words a minute, of other text 175 to 300. The press itself is left out.
 */
export const MIN_READING_MS = 1000;
export const MAX_WORDS_A_MINUTE = 320;

/** Fewest such answers in a phase. One is a thumb that was ready, or a call known by heart. Common practice, no source. */
export const MIN_UNREAD = 3;

type Unread = Places & { readonly fastestMs: number };
type State = { readonly byPhase: Readonly<Record<string, Unread>> /** The question that was counted last. */; readonly askedFrom: number };

/** Questions that were answered, and calls gone on from, sooner than they can be read or heard, in each phase. */
export const tooFastReading: Watch<State> = {
  kind: "tooFastReading",
  open: { byPhase: {}, askedFrom: 0 },
  add: (state, said) => {
    const { before, after, frozen, entry, command } = said;
    const { askedFrom, isNew } = before;
    const ms = after.at - askedFrom.at;
    if (!isNew || ms >= MIN_READING_MS || !isSure(after, askedFrom) || askedFrom.no === state.askedFrom || !isReply(said)) return state;
    const phase = phaseOf(before, frozen);
    const was = state.byPhase[phase] ?? { ...NO_PLACES, fastestMs: ms };
    const unread = { ...withPlace(was, entry.no, command.by), fastestMs: Math.min(was.fastestMs, ms) };
    return { byPhase: { ...state.byPhase, [phase]: unread }, askedFrom: askedFrom.no };
  },
  doubts: ({ byPhase }) =>
    Object.entries(byPhase).flatMap(([phase, { entries, by, count, fastestMs }]) => {
      const facts = { count, fastestSeconds: seconds(fastestMs), minSeconds: seconds(MIN_READING_MS) };
      return count < MIN_UNREAD ? [] : [{ kind: "tooFastReading", entries, phase, by, facts } as const];
    }),
};

/** An answer to what is asked, or "next". What is said in passing, on another phone, answers nothing that was just read. */
function isReply(said: Said): boolean {
  const { answered, before, command, did } = said;
  if (answered) return isOwn(said) || answered.gate.id === before.asks;
  return command.type === "next" && (did.includes("moved") || did.includes("closed"));
}
