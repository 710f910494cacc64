import type { EntryNo, Instant } from "../../install/ids.ts";
import { isSure, phaseOf } from "./course.ts";
import { type Doubt, NO_PLACES, type Places, seconds, withPlace } from "./doubt.ts";
import type { Said } from "./said.ts";
import type { Found, Watch } from "./watch.ts";

/**
 * Fewest equal wind readings in a row, and the time that they span, in milliseconds: 4 over an hour. Wind is never steady: if one
 * reading in four had the mean of the one before, and one in four its gust, three more equal ones would follow about once in
 * 4,000 (16 to the 3rd). Common practice, no source.
 */
export const MIN_SAME_READINGS = 4;
export const MIN_SAME_SPAN_MS = 3_600_000;

/**
 * Wind under which readings are not compared, in mph: in a calm a small meter stands still, and shows the same all day. From
 * memory; it leaves readings out, and finds none.
 */
export const MIN_WIND_MPH = 3;

type Run = {
  readonly mph: number;
  readonly gustMph: number | null;
  readonly from: { readonly no: EntryNo; readonly at: Instant };
  readonly ms: number;
  readonly phase: string;
  readonly places: Places;
};
type State = Found & { readonly run: Run | null };

/** The same wind to the decimal, again and again. */
export const sameReading: Watch<State> = {
  kind: "sameReading",
  open: { found: [], run: null },
  add: (state, said) => {
    const { command, did, after, entry } = said;
    if (command.type !== "reading" || command.reading.kind !== "wind" || !did.includes("read")) return state;
    const { mph, gustMph } = command.reading;
    const { run } = state;
    if (run && run.mph === mph && run.gustMph === gustMph && isSure(after, run.from))
      return { ...state, run: { ...run, ms: after.at - run.from.at, places: withPlace(run.places, entry.no, command.by) } };
    return { found: [...state.found, ...doubtOf(run)], run: begun(said, mph, gustMph) };
  },
  doubts: ({ found, run }) => [...found, ...doubtOf(run)],
};

const begun = ({ after, before, frozen, entry, command }: Said, mph: number, gustMph: number | null): Run | null =>
  Math.max(mph, gustMph ?? 0) < MIN_WIND_MPH
    ? null
    : {
        mph,
        gustMph,
        from: { no: entry.no, at: after.at },
        ms: 0,
        phase: phaseOf(before, frozen),
        places: withPlace(NO_PLACES, entry.no, command.by),
      };

function doubtOf(run: Run | null): Doubt[] {
  if (!run || run.places.count < MIN_SAME_READINGS || run.ms < MIN_SAME_SPAN_MS) return [];
  const { mph, gustMph, ms, phase, places } = run;
  const { entries, by, count } = places;
  const wind: Doubt["facts"] = gustMph === null ? { mph } : { mph, gustMph };
  return [{ kind: "sameReading", entries, phase, by, facts: { ...wind, count, seconds: seconds(ms) } }];
}
