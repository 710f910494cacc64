import type { Failure } from "../../machines/record/storage.ts";
import { type Condition, type Journal, NotWritten } from "../../server/journal/journal.ts";

/** A journal over another one that takes nothing while it has a `failure`, and is in whatever `condition` a test says. */
export function failingJournal(inner: Journal) {
  const state: { failure: Failure | null; condition: Condition } = { failure: null, condition: { is: "sound" } };
  const write =
    <A extends unknown[]>(go: (...given: A) => Promise<void>) =>
    async (...given: A): Promise<void> => {
      if (state.failure) throw new NotWritten(state.failure);
      return go(...given);
    };
  const { catalog, oversight, photos } = inner;
  const journal: Journal = {
    ...inner,
    open: write(inner.open),
    append: write(inner.append),
    refold: write(inner.refold),
    catalog: { ...catalog, add: write(catalog.add), change: write(catalog.change), remove: write(catalog.remove) },
    oversight: { ...oversight, appendFollowUp: write(oversight.appendFollowUp) },
    photos: { ...photos, put: write(photos.put) },
    condition: async () => state.condition,
  };
  return { journal, state };
}
