import type { EntryNo, Instant } from "../../install/ids.ts";
import { levelsOf, type Watch as Watched } from "../../install/watch.ts";
import { AGREED, worstMph } from "../../install/weather.ts";
import { isSure } from "./course.ts";
import { NO_PLACES, type Places, seconds, withPlace } from "./doubt.ts";
import type { Said } from "./said.ts";
import type { Watch } from "./watch.ts";

/** From how many intervals without a reading on one was missed: the second of them should have brought one. Common practice, no source. */
export const MISSED_AFTER_INTERVALS = 2;

/** The last reading, or the beginning of the stand, with the gust that says how soon the next one is due; `null` where none was read. */
type Due = { readonly no: EntryNo; readonly at: Instant; readonly gustMph: number | null };
type State = {
  readonly last: Due | null;
  readonly agreedMph: number | null;
  /** Where one came too late, and how many were due before it and did not come, in all. */
  readonly missed: Places;
  readonly due: number;
  readonly longestMs: number;
  readonly everyMin: number;
};

/** Wind readings of a standing tent that its weather plan asked for and that nobody made. */
export const missedReadings: Watch<State> = {
  kind: "missedReadings",
  open: { last: null, agreedMph: null, missed: NO_PLACES, due: 0, longestMs: 0, everyMin: 0 },
  add: (before, said) => {
    const state = withAgreed(before, said);
    const { watch } = said.frozen.script;
    if (!watch?.plan) return state;
    const gust = gustRead(said);
    const ends = said.before.phase === "standing" && said.after.phase !== "standing";
    const begins = said.before.phase !== "standing" && said.after.phase === "standing";
    if (gust === null && !ends && !begins) return state;
    const counted = said.before.phase === "standing" ? withGap(state, said, watch) : state;
    return { ...counted, last: ends ? null : { no: said.entry.no, at: said.after.at, gustMph: gust ?? state.last?.gustMph ?? null } };
  },
  doubts: ({ missed, due, longestMs, everyMin }) =>
    missed.count === 0
      ? []
      : [
          {
            kind: "missedReadings",
            entries: missed.entries,
            phase: "standing",
            by: missed.by,
            facts: { count: missed.count, due, longestSeconds: seconds(longestMs), everyMin },
          },
        ],
};

/** The gust of a wind that was read; `null` of anything else. */
const gustRead = ({ command, did }: Said): number | null =>
  command.type === "reading" && command.reading.kind === "wind" && (did.includes("read") || did.includes("watched"))
    ? worstMph(command.reading)
    : null;

/** The gust that clears the tent, where one was agreed. */
function withAgreed(state: State, { command, did }: Said): State {
  if (command.type !== "answer" || command.gate !== AGREED.evacuate || !did.includes("answered")) return state;
  return { ...state, agreedMph: command.value.kind === "measure" ? command.value.n : null };
}

function everyMinAt(gustMph: number | null, { plan, limitMph }: Watched, agreedMph: number | null): number {
  const isWindy = gustMph !== null && gustMph >= levelsOf(Math.min(limitMph, agreedMph ?? limitMph)).at60;
  return isWindy ? plan!.readWindyMin : plan!.readEveryMin;
}

/** With the time since the last reading, where that was too long; a clock that was set says nothing. */
function withGap(state: State, { after, entry, command }: Said, watch: Watched): State {
  const { last } = state;
  if (!last || !isSure(after, last)) return state;
  const ms = after.at - last.at;
  const everyMin = everyMinAt(last.gustMph, watch, state.agreedMph);
  if (ms < MISSED_AFTER_INTERVALS * everyMin * 60_000) return state;
  const isLongest = ms > state.longestMs;
  return {
    ...state,
    missed: withPlace(state.missed, entry.no, command.by),
    // The last of them came, if late, or the stand ended.
    due: state.due + Math.ceil(ms / (everyMin * 60_000)) - 1,
    longestMs: isLongest ? ms : state.longestMs,
    everyMin: isLongest ? everyMin : state.everyMin,
  };
}
