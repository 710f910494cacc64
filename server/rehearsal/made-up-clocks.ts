import type { Clocks, CountedFrom } from "../../machines/install/moment.ts";
import type { Practice } from "../../machines/install/practice.ts";

/** How long what is said takes on a made-up site, in seconds: a press stands for the work before it. Common practice, no source. */
export const STEP_S = 45;

/**
 * The clocks of a rehearsal so many seconds on. Walked, its time stands still but for what is said; led, it runs as well, and a
 * press that stands for more than has passed is no less.
 */
export function madeUpClocks({ way }: Practice, from: CountedFrom, real: Clocks, onS: number): Clocks {
  const ran = way === "lead" ? Math.max(0, real.elapsedMs - from.elapsedMs) : 0;
  const passed = Math.max(ran, onS * 1000);
  return { wall: from.wall + passed, elapsedMs: from.elapsedMs + passed };
}

/** From where a rehearsal's time is counted on that was read from its record: no time has passed since. */
export const countOn = ({ at, wall }: Pick<CountedFrom, "at" | "wall">, { elapsedMs }: Clocks): CountedFrom => ({
  at,
  wall,
  doubtMs: 0,
  elapsedMs,
});
