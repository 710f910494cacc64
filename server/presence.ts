import type { PersonId } from "../machines/install/ids.ts";
import type { JobId } from "../machines/record/entry.ts";

/** Screens that come and go within so long are told of together, in ms: after a lost network all of a crew's come back at once. */
const TOGETHER_MS = 300;

/** Who has a screen that follows a job now. */
export type Presence = {
  /** A screen begins to follow a job in somebody's hands, or in nobody's; returns how it leaves. */
  readonly arrive: (job: JobId, person: PersonId | null) => () => void;
  /** The people with a screen on a job, each once, who came first first. */
  readonly here: (job: JobId) => readonly PersonId[];
  /** Wakes whoever wants to know when that changes; returns how they are let go. */
  readonly listen: (job: JobId, wake: () => void) => () => void;
};

/** `later` calls back after a while; it may be called at once where nobody waits. */
export function createPresence(later: (call: () => void, ms: number) => void = (call, ms) => void setTimeout(call, ms).unref()): Presence {
  const screens = new Map<JobId, Set<{ readonly person: PersonId | null }>>();
  const listeners = new Map<JobId, Set<() => void>>();
  const waiting = new Set<JobId>();

  function announce(job: JobId) {
    if (waiting.has(job)) return;
    waiting.add(job);
    later(() => {
      waiting.delete(job);
      for (const wake of listeners.get(job) ?? []) wake();
    }, TOGETHER_MS);
  }
  const added = <T>(to: Map<JobId, Set<T>>, job: JobId, one: T) => {
    const all = to.get(job) ?? new Set();
    to.set(job, all.add(one));
    return () => {
      all.delete(one);
      if (all.size === 0) to.delete(job);
    };
  };
  return {
    arrive: (job, person) => {
      const leave = added(screens, job, { person });
      announce(job);
      return () => {
        leave();
        announce(job);
      };
    },
    here: (job) => [...new Set([...(screens.get(job) ?? [])].flatMap(({ person }) => (person === null ? [] : [person])))],
    listen: (job, wake) => added(listeners, job, wake),
  };
}
