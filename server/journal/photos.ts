import type { Hash } from "../../machines/digest/digest.ts";
import type { JobId } from "../../machines/record/entry.ts";

/** A photo as it lies in the store, not trusted: what its entry says of it is under its hash. */
export type StoredPhoto = { readonly mime: string; readonly bytes: Uint8Array };

/** The photos of jobs, each by the hash that its entry names. A write is done, on disk, when its promise is; it may be rejected with NotWritten. */
export interface Photos {
  /** Once a job: one that is there already stays as it is. */
  put(job: JobId, hash: Hash, photo: StoredPhoto): Promise<void>;
  /** `null` where that job has none of this hash, whatever another has. */
  get(job: JobId, hash: Hash): Promise<StoredPhoto | null>;
}
