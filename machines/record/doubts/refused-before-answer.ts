import type { GateId, Instant } from "../../install/ids.ts";
import { worstMph } from "../../install/weather.ts";
import { without } from "../../lookup/without.ts";
import { phaseOf } from "./course.ts";
import { type Doubt, NO_PLACES, type Places, withPlace } from "./doubt.ts";
import type { Said } from "./said.ts";
import type { Found, Watch } from "./watch.ts";

/** Fewest refusals of "next" at one gate. One is a try, two a slip of the thumb. Common practice, no source. */
export const MIN_REFUSALS = 3;

/** Presses nearer together than this count once, in milliseconds: a glove presses twice. Common practice, no source. */
export const MIN_BETWEEN_PRESSES_MS = 2000;

type Pressed = { readonly phase: string; readonly lastAt: Instant; readonly places: Places };
export type RefusedState = Found & { readonly pressed: Readonly<Record<GateId, Pressed>> };

/** "Next" refused at a gate again and again before it was answered. One that is not answered yet is no doubt yet. */
export const refusedBeforeAnswer: Watch<RefusedState> = {
  kind: "refusedBeforeAnswer",
  open: { found: [], pressed: {} },
  add: (state, said) => {
    const refusedAt = refusedGate(said);
    if (refusedAt !== null) return { ...state, pressed: { ...state.pressed, [refusedAt]: pressedOnce(state.pressed[refusedAt], said) } };
    const passed = Object.keys(state.pressed).filter((gate) => isAnswered(gate, said));
    if (passed.length === 0) return state;
    return {
      found: [...state.found, ...passed.flatMap((gate) => doubtOf(gate, state.pressed[gate]!, said))],
      pressed: without(state.pressed, passed),
    };
  },
  doubts: ({ found }) => found,
};

/** Gates that were answered between two states, with how often "next" had been refused there, from the first time on. */
export const refusalsEnded = (before: RefusedState, after: RefusedState): readonly { gate: GateId; phase: string; count: number }[] =>
  Object.entries(before.pressed).flatMap(([gate, { phase, places }]) =>
    Object.hasOwn(after.pressed, gate) ? [] : [{ gate, phase, count: places.count }],
  );

function refusedGate({ entry: { command, outcome } }: Said): GateId | null {
  if (command.type !== "next" || !("refused" in outcome)) return null;
  return outcome.refused.find((reason) => reason.why === "gate")?.gate ?? null;
}

function pressedOnce(pressed: Pressed | undefined, { before, after, frozen, command, entry }: Said): Pressed {
  if (pressed && after.at - pressed.lastAt < MIN_BETWEEN_PRESSES_MS) return { ...pressed, lastAt: after.at };
  const was = pressed ?? { phase: phaseOf(before, frozen), places: NO_PLACES };
  return { ...was, lastAt: after.at, places: withPlace(was.places, entry.no, command.by) };
}

/** Whether a gate has its good answer now. A wind is answered by a reading under its limit. */
function isAnswered(gate: GateId, { answered, command, did, frozen }: Said): boolean {
  if (answered) return answered.gate.id === gate && answered.is === "good";
  if (command.type !== "reading" || command.reading.kind !== "wind" || !did.includes("read")) return false;
  const check = frozen.script.conditions.find((c) => c.gate.id === gate)?.gate.check;
  return check?.kind === "wind" && worstMph(command.reading) < check.belowMph;
}

function doubtOf(gate: GateId, { phase, places: { entries, by, count } }: Pressed, { entry, command }: Said): Doubt[] {
  if (count < MIN_REFUSALS) return [];
  const who = by.includes(command.by) ? by : [...by, command.by];
  return [{ kind: "refusedBeforeAnswer", entries: [...entries, entry.no], phase, by: who, facts: { gate, count } }];
}
