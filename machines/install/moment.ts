import type { Instant, WallTime } from "./ids.ts";

/**
 * When something is said. Of the time since the entry before, up to `at`, `doubtMs` may not have passed at all: what ages does so
 * by all of it, and what has to be waited for is waited for without it. An unknown time is never the kinder one.
 */
export type Moment = { readonly at: Instant; readonly wall: WallTime; readonly doubtMs: number };

/** Both clocks of a machine, read together. `elapsedMs` is from any beginning, and cannot be set. */
export type Clocks = { readonly wall: WallTime; readonly elapsedMs: number };

/** A moment of a job from which its time is counted on, with the clock that counts it. */
export type CountedFrom = Moment & { readonly elapsedMs: number };

/** Wall and steady time further apart than this, over what passed between two entries: somebody set the clock. Common practice, no source. */
export const JUMP_MS = 60_000;

/** What may have passed where nobody knows: longer than anything stays good that ages, so that all of it is asked again. */
export const UNKNOWN_MS = 48 * 3_600_000;

/** Now, counted on. Where the wall clock went ahead of the count, it may be right, for a machine that stood still: that is in doubt. */
export function momentAt(from: CountedFrom, { wall, elapsedMs }: Clocks): Moment {
  const counted = Math.max(0, elapsedMs - from.elapsedMs);
  const ahead = wall - from.wall - counted;
  const doubt = ahead > JUMP_MS ? Math.min(ahead, UNKNOWN_MS) : 0;
  return { at: from.at + counted + doubt, wall, doubtMs: from.doubtMs + doubt };
}

/** Now, after nobody counted: as long as the wall clock says; and where that went back, nobody knows how long. */
export function countAgain(last: Pick<Moment, "at" | "wall">, { wall, elapsedMs }: Clocks): CountedFrom {
  const doubtMs = wall < last.wall ? UNKNOWN_MS : 0;
  return { at: last.at + Math.max(doubtMs, wall - last.wall), wall, doubtMs, elapsedMs };
}
