import { isSure, phaseOf } from "./course.ts";
import { type Doubt, seconds } from "./doubt.ts";
import type { Said } from "./said.ts";
import type { Found, Watch } from "./watch.ts";

/**
 * Soonest that a second look can follow the first, in milliseconds: 5 s, in which a question of ten words is read (2 s at 300
 * words a minute), the eyes go to what is asked about and back, and a thumb goes to the answer. It is counted from when the
 * first was spoken to when the second counted. Common practice, no source.
 */
export const MIN_SECOND_LOOK_MS = 5000;

/** A second person's answer, agreement, or look at a paper, sooner after the first than anybody can look. */
export const quickSecond: Watch<Found> = {
  kind: "quickSecond",
  open: { found: [] },
  add: (state, said) => {
    const doubt = doubtIn(said);
    return doubt ? { found: [...state.found, doubt] } : state;
  },
  doubts: ({ found }) => found,
};

function doubtIn({ second, after, before, frozen, command, entry }: Said): Doubt | null {
  if (!second || !isSure(after, second.first)) return null;
  const ms = after.at - second.first.said;
  if (ms >= MIN_SECOND_LOOK_MS) return null;
  return {
    kind: "quickSecond",
    entries: [second.first.no, entry.no],
    phase: phaseOf(before, frozen),
    by: [second.first.by, command.by],
    facts: {
      to: second.to,
      ...(second.gate === null ? {} : { gate: second.gate }),
      seconds: seconds(ms),
      minSeconds: seconds(MIN_SECOND_LOOK_MS),
    },
  };
}
