import { onSite } from "../../install/crew.ts";
import type { Frozen, Step } from "../../install/step.ts";
import { phaseOf } from "./course.ts";
import { seconds } from "./doubt.ts";
import { drivingMs } from "./fastest.ts";
import { NO_ROUND, type Round, roundAfter } from "./round.ts";
import type { Found, Watch } from "./watch.ts";

type State = Found & { readonly round: Round };

/** An edge of stakes in the ground sooner than this crew can drive it, with all it had for the edges before. */
export const tooFastDriving: Watch<State> = {
  kind: "tooFastDriving",
  open: { found: [], round: NO_ROUND },
  add: (state, said) => {
    const { call, frozen, before, entry, command } = said;
    const stakes = call ? stakesAt(call, frozen) : 0;
    const people = onSite(frozen.brief.crew).length;
    const needMs = stakes > 0 ? drivingMs(stakes, people) : null;
    const { round, tookMs } = roundAfter(state.round, said, needMs);
    if (tookMs === null || !call || needMs === null) return { ...state, round };
    const facts = { call: call.id, stakes, people, seconds: seconds(tookMs), minSeconds: seconds(needMs) };
    const doubt = { kind: "tooFastDriving", entries: [entry.no], phase: phaseOf(before, frozen), by: [command.by], facts } as const;
    return { found: [...state.found, doubt], round };
  },
  doubts: ({ found }) => found,
};

/** Stakes that are driven at a call: those of its edge, with the corner that begins it. 0 where none are. */
const stakesAt = ({ wordsKey, params }: Step, { plan }: Frozen): number =>
  wordsKey === "drive.edge" ? plan.stations.reduce((n, s) => (s.edge === params.edge ? n + s.stakes : n), 0) : 0;
