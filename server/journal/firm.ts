import type { Hash } from "../../machines/digest/digest.ts";
import type { Instant } from "../../machines/install/ids.ts";

/** Somebody of the firm, with the role of their last job, and whether they were on the last one of all. */
export type KeptPerson = { readonly name: string; readonly role: string; readonly onLast: boolean };
/** What a job leaves for the next one: who was on it, and the sheet of a tent of the list, as that was: by its id and its digest. */
export type ForNextJob = {
  readonly people: readonly Pick<KeptPerson, "name" | "role">[];
  readonly sheet: { readonly tent: string; readonly digest: Hash; readonly sheet: unknown } | null;
  readonly at: Instant;
};

/** What the firm keeps from job to job beside its tents. A write is done, on disk, when its promise is. */
export interface Firm {
  /** By name. Nobody twice, upper and lower case being the same. */
  people(): Promise<KeptPerson[]>;
  /** The sheet that a tent last had, not trusted yet; `null` where it had none as it is now, or it is no longer JSON. */
  sheet(tent: string, digest: Hash): Promise<unknown>;
  /** Keeps it, all or nothing. Who was not on this job is no longer on the last one. */
  keep(job: ForNextJob): Promise<void>;
  /** Takes somebody off the list, upper and lower case being the same; nothing where nobody is called so. */
  forget(name: string): Promise<void>;
  /** Takes those off whose last job was opened before a moment. */
  forgetBefore(at: Instant): Promise<void>;
}
