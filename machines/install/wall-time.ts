import type { Instant, WallTime } from "./ids.ts";
import type { Moment } from "./moment.ts";
import type { JobState } from "./state.ts";

/** What a moment changes of a job's state: how wall time is told from its own, and thunder, which what is in doubt does not make older. */
export const clocksIn = ({ thunderAt }: JobState, { at, wall, doubtMs }: Moment): Pick<JobState, "wallAheadMs" | "thunderAt"> => ({
  wallAheadMs: wall - at,
  thunderAt: thunderAt === null ? null : thunderAt + doubtMs,
});

/** An instant of a job, as the wall clock of its state tells it. */
export const wallTime = (at: Instant, { wallAheadMs }: Pick<JobState, "wallAheadMs">): WallTime => at + wallAheadMs;

/** What the wall clock of a job's state shows at some time, as an instant of that job. */
export const instantAt = (wall: WallTime, { wallAheadMs }: Pick<JobState, "wallAheadMs">): Instant => wall - wallAheadMs;
