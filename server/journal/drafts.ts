import type { Instant } from "../../machines/install/ids.ts";

/** A draft of a job as it lies in the file, not trusted yet: `body` is `null` if it is no longer JSON. */
export type SavedDraft = {
  readonly id: string;
  readonly body: unknown;
  /** 1 when it is begun, and one more with each change. */
  readonly version: number;
  readonly at: Instant;
  /** Whether it has become a job. */
  readonly opened: boolean;
};
export type DraftBody = Pick<SavedDraft, "body" | "at" | "opened">;

/** Jobs that are still being told, kept until they are opened. A write is done, on disk, when its promise is. */
export interface Drafts {
  draft(id: string): Promise<SavedDraft | null>;
  /** Those that have become no job yet, newest first. */
  unopened(most: number): Promise<SavedDraft[]>;
  /** Replaces a draft that is still of this version; 0 begins one. Rejects with Changed where it is not of it. */
  save(id: string, version: number, draft: DraftBody): Promise<void>;
  /** Takes out a draft that is still of this version. Rejects with Changed where it is not, or is gone. */
  remove(id: string, version: number): Promise<void>;
  /** Takes out those that were last written before a moment, opened or not. */
  removeBefore(at: Instant): Promise<void>;
}
