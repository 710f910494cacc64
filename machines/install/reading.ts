import type { Command, Reading, WarningReading } from "./commands.ts";
import { COMPETENT } from "./gates.ts";
import type { Instant } from "./ids.ts";
import type { JobState } from "./state.ts";
import { canOnlyStop, isWorse, WARNING, warned } from "./weather.ts";

export type ReadingCommand = Extract<Command, { type: "reading" }>;
/** What readings change of a job, and what they are judged by. */
export type WeatherState = Pick<
  JobState,
  "limits" | "wind" | "thunderAt" | "thunderBefore" | "answers" | "flash" | "heat" | "cold" | "warnings"
>;

/** A wind in a lee: what it reads the site has more of, so that it clears nothing. */
export const inALee = (reading: Reading): boolean => reading.kind === "wind" && reading.exposure === "lee";

/** A wind that counts and clears nothing: from somebody who may not clear work with it, or from a lee. */
export const onlyWarns = ({ reading, role }: ReadingCommand, state: WeatherState): boolean =>
  reading.kind === "wind" && !canOnlyStop(reading, state) && (!COMPETENT.includes(role) || inALee(reading)) && isWorse(reading, state);

/** What can only stop counts from now, whatever its time says. A wind that only warns keeps the age of the reading before it. */
export function withReading<S extends WeatherState>(state: S, command: ReadingCommand): S {
  const { reading, at, by, device, entry } = command;
  const stale = at - state.limits.windOtherwiseS * 1000 - 1;
  const warns = onlyWarns(command, state);
  const takenAt = warns ? Math.min(at, state.wind?.takenAt ?? stale) : canOnlyStop(reading, state) ? at : reading.takenAt;
  switch (reading.kind) {
    case "wind":
      return { ...state, wind: { mph: reading.mph, gustMph: reading.gustMph, fromDeg: reading.fromDeg, takenAt } };
    case "thunder": {
      const told = reading.seconds === undefined ? state : { ...state, flash: { at: takenAt, seconds: reading.seconds } };
      return withThunders(told, thundersAnd(state, takenAt));
    }
    case "noThunder":
      return withThunders(state, thunders(state).slice(0, -1));
    case "warning": {
      const answer = { gate: WARNING, value: { kind: "yesNo", yes: false }, by, device, at, entry } as const;
      return { ...state, ...warningsAnd(state, reading), answers: { ...state.answers, [WARNING]: answer } };
    }
    case "rain":
      return state;
    case "heat": {
      const { airF, humidity, sun } = reading;
      return { ...state, heat: { airF, humidity, sun, takenAt } };
    }
    case "cold": {
      const { airF, windMph } = reading;
      return { ...state, cold: { airF, windMph, takenAt } };
    }
  }
}

/** Warnings that are kept with their words: more are not read on a phone. Common practice, no source. */
const MAX_WARNINGS = 3;

/** Those in force and one more; a warning that was called off goes with the next. Nothing is named where none had a word. */
function warningsAnd(state: WeatherState, { kind, ...told }: WarningReading): Pick<WeatherState, "warnings"> {
  const before = warned(state) ? (state.warnings ?? []) : [];
  const worded = told.what !== undefined || told.until !== undefined || told.issuer !== undefined;
  const all = worded ? [...before, told].slice(-MAX_WARNINGS) : before;
  return all.length > 0 ? { warnings: all } : state.warnings === undefined ? {} : { warnings: undefined };
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
