import { COMPETENT } from "./gates.ts";
import { inALee, onlyWarns, type ReadingCommand } from "./reading.ts";
import type { JobState, Wind } from "./state.ts";
import type { Script } from "./step.ts";
import { canOnlyStop } from "./weather.ts";

/** A wind as whoever watches the standing tent read it. */
export type WatchedWind = Pick<Wind, "mph" | "gustMph" | "takenAt">;

/** The call at which the tent is handed over: from its answer on it is watched by its plan. */
const HANDED_OVER = "handover";

/** Whether a wind was read by whom the weather plan names, of a tent that was handed over. */
const byTheWatch = ({ reading, role }: ReadingCommand, { answers }: Pick<JobState, "answers">, { watch }: Script): boolean =>
  reading.kind === "wind" && !inALee(reading) && watch?.plan?.watchedBy === role && answers[HANDED_OVER] !== undefined;

/** Whether a plan names somebody for the watch who may clear no work with a wind. */
export const isWatchedByOthers = ({ watch }: Script): boolean => watch?.plan != null && !COMPETENT.includes(watch.plan.watchedBy);

/**
 * Whether a wind counts as a reading that the watch owes and as nothing else: the plan names who reads it, and that is nobody who may
 * clear work with a wind. It ends no stop and lets nobody in.
 */
export const onlyWatches = (command: ReadingCommand, state: JobState, script: Script): boolean =>
  isWatchedByOthers(script) && byTheWatch(command, state, script) && !canOnlyStop(command.reading, state) && !onlyWarns(command, state);

/** Whether a wind of the watch is older than the last one of the watch. */
export const isOlderWatch = (command: ReadingCommand, state: JobState, script: Script): boolean =>
  byTheWatch(command, state, script) && command.reading.takenAt < (state.watched?.takenAt ?? command.reading.takenAt);

/** What a reading leaves of the watch: the wind of whoever watches, with its own time. An older one leaves the newer in place. */
export function watchedAnd(command: ReadingCommand, state: JobState, script: Script): Pick<JobState, "watched"> {
  const { reading } = command;
  if (reading.kind !== "wind" || !byTheWatch(command, state, script) || isOlderWatch(command, state, script)) return {};
  return { watched: { mph: reading.mph, gustMph: reading.gustMph, takenAt: Math.min(reading.takenAt, command.at) } };
}
