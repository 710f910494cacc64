import { Changed } from "./catalog.ts";
import type { Drafts, SavedDraft } from "./drafts.ts";

/** Drafts that last as long as the program does. */
export function memoryDrafts(): Drafts {
  // In the order of their last writes.
  const drafts = new Map<string, SavedDraft>();
  return {
    draft: async (id) => structuredClone(drafts.get(id) ?? null),
    unopened: async (most) =>
      structuredClone(
        [...drafts.values()]
          .reverse()
          .filter(({ opened }) => !opened)
          .sort((a, b) => b.at - a.at)
          .slice(0, most),
      ),
    save: async (id, version, { body, at, opened }) => {
      if ((drafts.get(id)?.version ?? 0) !== version) throw new Changed(id);
      drafts.delete(id);
      drafts.set(id, structuredClone({ id, body, version: version + 1, at, opened }));
    },
    remove: async (id, version) => {
      if (drafts.get(id)?.version !== version) throw new Changed(id);
      drafts.delete(id);
    },
    removeBefore: async (at) => {
      for (const [id, draft] of drafts) if (draft.at < at) drafts.delete(id);
    },
  };
}
