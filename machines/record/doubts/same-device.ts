import { phaseOf } from "./course.ts";
import { NO_PLACES, type Places, withPlace } from "./doubt.ts";
import type { Watch } from "./watch.ts";

type ByPhase = Readonly<Record<string, Places>>;

/**
 * Two people's answers from one phone, in each phase. Pressed, that is allowed: by voice it is refused, and so is a paper. It
 * needs no threshold.
 */
export const sameDevice: Watch<ByPhase> = {
  kind: "sameDevice",
  open: {},
  add: (state, { second, command, before, frozen, entry }) => {
    if (!second || second.first.device !== command.device) return state;
    const phase = phaseOf(before, frozen);
    return { ...state, [phase]: withPlace(state[phase] ?? NO_PLACES, entry.no, second.first.by, command.by) };
  },
  doubts: (state) =>
    Object.entries(state).map(([phase, { entries, by, count }]) => ({ kind: "sameDevice", entries, phase, by, facts: { count } })),
};
