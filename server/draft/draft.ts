import * as v from "valibot";
import type { Hash } from "../../machines/digest/digest.ts";
import type { Instant } from "../../machines/install/ids.ts";
import type { JobId } from "../../machines/record/entry.ts";
import type { Fields } from "../input/form.ts";
import { Problem } from "../input/problem.ts";
import type { Drafts, SavedDraft } from "../journal/drafts.ts";

/** The tent of the list that was picked, as it was then. */
export type PickedTent = { readonly id: string; readonly name: string; readonly digest: Hash };
/** The job that a draft became, and the phone that opened it. Who is on it is with the job, where names can be erased. */
export type OpenedAs = { readonly job: JobId; readonly device: string; readonly at: Instant };

/** A job as far as it has been told, field by field as its forms send it. */
export type Draft = {
  readonly id: string;
  readonly version: number;
  /** When something was last typed in it. */
  readonly at: Instant;
  readonly fields: Fields;
  readonly tent: PickedTent | null;
  readonly opened: OpenedAs | null;
};

const bodySchema = v.object({
  fields: v.record(v.string(), v.string()),
  tent: v.nullable(v.object({ id: v.string(), name: v.string(), digest: v.string() })),
  opened: v.nullable(v.object({ job: v.string(), device: v.string(), at: v.number() })),
});

/** A saved draft as it is worked on. Throws a Problem where it cannot be read any more. */
export function readDraft({ id, version, at, body }: SavedDraft): Draft {
  const read = v.safeParse(bodySchema, body);
  if (!read.success) throw new Problem(409, (w) => w.draft.unreadable);
  return { id, version, at, ...read.output };
}

/** What of a draft is written. */
export const bodyOf = ({ fields, tent, opened }: Draft) => ({ fields, tent, opened });

/** What is left of a draft that has become a job: only that. */
export const openedAs = (draft: Draft, opened: OpenedAs): Draft => ({ ...draft, fields: {}, tent: null, opened });

/** Those that have become no job yet, newest first, as far as they can be read. */
export const draftsLeftOff = async (drafts: Drafts, most: number): Promise<Draft[]> =>
  (await drafts.unopened(most)).flatMap((saved) => {
    try {
      return [readDraft(saved)];
    } catch {
      return [];
    }
  });
