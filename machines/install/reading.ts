import type { Command } from "./commands.ts";
import { COMPETENT } from "./gates.ts";
import type { Instant } from "./ids.ts";
import type { JobState } from "./state.ts";
import { canOnlyStop, isWorse, WARNING } from "./weather.ts";

export type ReadingCommand = Extract<Command, { type: "reading" }>;
/** What readings change of a job, and what they are judged by. */
export type WeatherState = Pick<JobState, "limits" | "wind" | "thunderAt" | "thunderBefore" | "answers">;

/** A wind from somebody who may report it, but may not clear work with it. */
export const onlyWarns = ({ reading, role }: ReadingCommand, state: WeatherState): boolean =>
  reading.kind === "wind" && !canOnlyStop(reading, state) && !COMPETENT.includes(role) && isWorse(reading, state);

/** What can only stop counts from now, whatever its time says. A wind that only warns keeps the age of the reading before it. */
export function withReading<S extends WeatherState>(state: S, command: ReadingCommand): S {
  const { reading, at, by, device, entry } = command;
  const stale = at - state.limits.windOtherwiseS * 1000 - 1;
  const warns = onlyWarns(command, state);
  const takenAt = warns ? Math.min(at, state.wind?.takenAt ?? stale) : canOnlyStop(reading, state) ? at : reading.takenAt;
  switch (reading.kind) {
    case "wind":
      return { ...state, wind: { mph: reading.mph, gustMph: reading.gustMph, fromDeg: reading.fromDeg, takenAt } };
    case "thunder":
      return withThunders(state, thundersAnd(state, takenAt));
    case "noThunder":
      return withThunders(state, thunders(state).slice(0, -1));
    case "warning": {
      const answer = { gate: WARNING, value: { kind: "yesNo", yes: false }, by, device, at, entry } as const;
      return { ...state, answers: { ...state.answers, [WARNING]: answer } };
    }
    case "rain":
      return state;
  }
}

/** All that may stop work, oldest first. */
const thunders = ({ thunderAt, thunderBefore = [] }: WeatherState): readonly Instant[] =>
  thunderAt === null ? [] : [...thunderBefore, thunderAt];

/** Kept are those that would still stop work at the last one: each may be taken back on its own. */
const thundersAnd = (state: WeatherState, at: Instant): readonly Instant[] => [
  ...thunders(state).filter((before) => at - before < state.limits.thunderS * 1000),
  at,
];

/** Where there is one or none, those before it are named as absent: a state that is merged keeps what is not named. */
const withThunders = <S extends WeatherState>(state: S, all: readonly Instant[]): S => ({
  ...state,
  thunderAt: all.at(-1) ?? null,
  thunderBefore: all.length > 1 ? all.slice(0, -1) : undefined,
});
