/** So many wrong tries are slips of a thumb. */
export const FREE_TRIES = 5;
/** The first wait after those, in ms; each wrong try after it waits twice as long. */
const FIRST_WAIT_MS = 15_000;
/** The longest wait, in ms. */
const MAX_WAIT_MS = 15 * 60_000;
/** Without a wrong try for so long, in ms, all are forgotten. */
const HOUR_MS = 60 * 60_000;
/** So many wrong tries an hour are taken at one target, from wherever they come: a crew's slips, and far from what guessing needs. */
export const MAX_WRONG_AN_HOUR = 200;
/** More sources than this are not remembered one by one: the oldest go. */
const MAX_SOURCES = 10_000;

type Tries = { readonly wrong: number; readonly lastAt: number };
type Counted = { readonly wrong: number; readonly since: number };

/** Who tries, and at what. */
export type Trial = { readonly source: string; readonly target: string };

/**
 * Slows down whoever tries codes or passphrases: a source, an address or a device, waits twice as long after each wrong try; a
 * target takes so many an hour. Times are of a clock that cannot go back, in ms.
 */
export function createThrottle() {
  const sources = new Map<string, Tries>();
  const targets = new Map<string, Counted>();

  const triesOf = (source: string, now: number): Tries | null => {
    const known = sources.get(source);
    return known && now - known.lastAt < HOUR_MS ? known : null;
  };
  const countOf = (target: string, now: number): Counted => {
    const known = targets.get(target);
    return known && now - known.since < HOUR_MS ? known : { wrong: 0, since: now };
  };
  function put<T>(into: Map<string, T>, name: string, value: T) {
    into.delete(name);
    into.set(name, value);
    if (into.size > MAX_SOURCES) into.delete(into.keys().next().value!);
  }

  /** How long one still has to wait, in ms; 0 where it may try. */
  function wait({ source, target }: Trial, now: number): number {
    const tries = triesOf(source, now);
    const slowed = tries && tries.wrong >= FREE_TRIES ? Math.min(MAX_WAIT_MS, FIRST_WAIT_MS * 2 ** (tries.wrong - FREE_TRIES)) : 0;
    const { wrong, since } = countOf(target, now);
    return Math.max(0, tries ? tries.lastAt + slowed - now : 0, wrong >= MAX_WRONG_AN_HOUR ? since + HOUR_MS - now : 0);
  }
  function add({ source, target }: Trial, now: number, wrong: 1 | -1) {
    const tries = triesOf(source, now);
    put(sources, source, { wrong: Math.max(0, (tries?.wrong ?? 0) + wrong), lastAt: wrong > 0 ? now : (tries?.lastAt ?? now) });
    const count = countOf(target, now);
    put(targets, target, { ...count, wrong: Math.max(0, count.wrong + wrong) });
  }

  return {
    wait,
    /** Counts a try as wrong before it is looked at: of many at once each counts. */
    begin: (trial: Trial, now: number): void => add(trial, now, 1),
    /** It was right: it counts no more, and what was wrong before still does. */
    right: (trial: Trial, now: number): void => add(trial, now, -1),
  };
}
export type Throttle = ReturnType<typeof createThrottle>;
