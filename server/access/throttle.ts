/** So many wrong tries are slips of a thumb. */
export const FREE_TRIES = 5;
/** The first wait after those, in ms; each wrong try after it waits twice as long. */
const FIRST_WAIT_MS = 15_000;
/** The longest wait, in ms. */
const MAX_WAIT_MS = 15 * 60_000;
/** Without a wrong try for so long, in ms, all are forgotten. */
const FORGET_MS = 60 * 60_000;
/** More sources than this are not remembered one by one: the oldest go. */
const MAX_SOURCES = 10_000;

type Tries = { readonly wrong: number; readonly lastAt: number };

/** Slows down whoever tries codes or passphrases, by source: an address, a job, a device. Times are of a clock that cannot go back, in ms. */
export function createThrottle() {
  const tries = new Map<string, Tries>();

  const current = (source: string, now: number): Tries | null => {
    const known = tries.get(source);
    return known && now - known.lastAt < FORGET_MS ? known : null;
  };

  /** How long a source still has to wait, in ms; 0 where it may try. */
  function waitOf(source: string, now: number): number {
    const known = current(source, now);
    if (!known || known.wrong < FREE_TRIES) return 0;
    const wait = Math.min(MAX_WAIT_MS, FIRST_WAIT_MS * 2 ** (known.wrong - FREE_TRIES));
    return Math.max(0, known.lastAt + wait - now);
  }

  return {
    /** The longest wait of any of these. */
    wait: (sources: readonly string[], now: number): number => Math.max(0, ...sources.map((source) => waitOf(source, now))),
    /** Counts a wrong try, and says whether one of them has to wait from now on. */
    wrong(sources: readonly string[], now: number): boolean {
      for (const source of sources) {
        const wrong = (current(source, now)?.wrong ?? 0) + 1;
        tries.delete(source);
        tries.set(source, { wrong, lastAt: now });
        if (tries.size > MAX_SOURCES) tries.delete(tries.keys().next().value!);
      }
      return sources.some((source) => waitOf(source, now) > 0);
    },
    /** A right one: what this source got wrong before was a slip. */
    right(sources: readonly string[]): void {
      for (const source of sources) tries.delete(source);
    },
  };
}
export type Throttle = ReturnType<typeof createThrottle>;
