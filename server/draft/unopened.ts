import { Problem } from "../input/problem.ts";
import type { Draft } from "./draft.ts";
import type { LiveDrafts } from "./drafts.ts";

/** A draft that can still be changed. Throws a Problem where its job is open already. */
export async function unopened(drafts: LiveDrafts, id: string): Promise<Draft> {
  const draft = await drafts.get(id);
  if (draft.opened) throw new Problem(409, (w) => w.draft.noDraft(draft.id));
  return draft;
}
