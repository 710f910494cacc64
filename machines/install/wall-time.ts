import type { Instant, WallTime } from "./ids.ts";
import type { Moment } from "./moment.ts";
import type { JobState } from "./state.ts";

/** What a moment changes of a job's state: how wall time is told from its own, thunder, which doubtful time does not make older, and the total in doubt. */
export const clocksIn = (
  state: JobState,
  { at, wall, doubtMs }: Moment,
): Pick<JobState, "wallAheadMs" | "thunderAt" | "thunderBefore" | "doubtMs"> => ({
  wallAheadMs: wall - at,
  thunderAt: state.thunderAt === null ? null : state.thunderAt + doubtMs,
  ...(state.thunderBefore && doubtMs > 0 ? { thunderBefore: state.thunderBefore.map((at) => at + doubtMs) } : {}),
  ...(doubtMs > 0 ? { doubtMs: (state.doubtMs ?? 0) + doubtMs } : {}),
});

/** An instant of a job, as the wall clock of its state tells it. */
export const wallTime = (at: Instant, { wallAheadMs }: Pick<JobState, "wallAheadMs">): WallTime => at + wallAheadMs;

/** What the wall clock of a job's state shows at some time, as an instant of that job. */
export const instantAt = (wall: WallTime, { wallAheadMs }: Pick<JobState, "wallAheadMs">): Instant => wall - wallAheadMs;
