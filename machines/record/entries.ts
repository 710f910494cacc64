import type { EntryNo } from "../install/ids.ts";
import type { Entry, Sealed } from "./entry.ts";

/** The entries of a job from the first on, to be read. A plain array is one; so is a view of a record that goes on growing. */
export type Entries = Pick<readonly Sealed[], "length" | "at" | "slice" | typeof Symbol.iterator>;

/** Finds an entry of the same job by its number; `null` or `undefined` if the job has no such entry. */
export type EntryLookup = (no: EntryNo) => Entry | null | undefined;

/** Finds entries by their numbers, which begin at 1. */
export const lookupIn =
  (entries: Entries) =>
  (no: EntryNo): Entry | undefined =>
    no >= 1 ? entries.at(no - 1)?.entry : undefined;
