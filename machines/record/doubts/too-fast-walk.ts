import { METERS_PER_FOOT } from "../../install/checks/units.ts";
import { onSite } from "../../install/crew.ts";
import { phaseOf } from "./course.ts";
import { seconds } from "./doubt.ts";
import { NO_ROUND, type Round, roundAfter } from "./round.ts";
import { walkOf } from "./walks.ts";
import type { Found, Watch } from "./watch.ts";

/**
 * Fastest walk that is believed, in meters a second: 2.533, the highest mean of any group told to walk as fast as they can, men
 * in their twenties on an indoor floor. Source: Bohannon 1997, "Comfortable and maximum walking speed of adults aged 20-79
 * years", Age and Ageing 26:15-19. Nobody who looks at every station keeps it up.
 */
export const MAX_WALK_MPS = 2.533;
export const MAX_WALK_FT_PER_S = MAX_WALK_MPS / METERS_PER_FOOT;

type State = Found & { readonly round: Round };

/** A walk that was answered for sooner than it can be walked, by as many people as were there where they may share it. */
export const tooFastWalk: Watch<State> = {
  kind: "tooFastWalk",
  open: { found: [], round: NO_ROUND },
  add: (state, said) => {
    const { call, frozen, before, entry, command } = said;
    const walk = call && walkOf(call, frozen);
    const people = walk?.isAlone ? 1 : Math.max(1, onSite(frozen.brief.crew).length);
    const needMs = walk && walkMs(walk.feet / people);
    // One who goes alone goes after the crew: the crew's time is not theirs, nor theirs the crew's.
    const alone = (round: Round): Round => (walk?.isAlone ? { ...round, spareMs: 0 } : round);
    const judged = roundAfter(alone(state.round), said, needMs);
    const [round, tookMs] = [alone(judged.round), judged.tookMs];
    if (tookMs === null || !call || !walk || needMs === null) return { ...state, round };
    const facts = { call: call.id, feet: Math.round(walk.feet), people, seconds: seconds(tookMs), minSeconds: seconds(needMs) };
    const doubt = { kind: "tooFastWalk", entries: [entry.no], phase: phaseOf(before, frozen), by: [command.by], facts } as const;
    return { found: [...state.found, doubt], round };
  },
  doubts: ({ found }) => found,
};

/**
 * Milliseconds in which so many feet can be walked at the fastest.
 *
 * @example Math.round(walkMs(360)) // 43319
 */
export const walkMs = (feet: number): number => (feet / MAX_WALK_FT_PER_S) * 1000;
