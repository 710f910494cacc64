import type { JobId } from "../machines/record/entry.ts";

/** Who wants to know when a job changes. */
export type Hub = { readonly changed: (job: JobId) => void; readonly listen: (job: JobId, wake: () => void) => () => void };

export function createHub(): Hub {
  const listeners = new Map<JobId, Set<() => void>>();
  return {
    changed: (job) => {
      for (const wake of listeners.get(job) ?? []) wake();
    },
    listen: (job, wake) => {
      const set = listeners.get(job) ?? new Set();
      listeners.set(job, set.add(wake));
      return () => {
        set.delete(wake);
        if (set.size === 0) listeners.delete(job);
      };
    },
  };
}
