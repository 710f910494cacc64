import type { HouseSealed, Tip } from "../../machines/record/house.ts";
import type { Line } from "../../machines/record/verify-chain.ts";

/** Where the house stream is kept, beside the jobs that it speaks of. */
export interface HouseStore {
  /** All of its entries in order, unread: readHouse says whether they hold. */
  lines(): Promise<readonly Line[]>;
  /** The last of them; `null` if there is none yet. */
  last(): Promise<Line | null>;
  /** The last entry of every job there is, in no order. Reads no entry. */
  tips(): Promise<readonly Tip[]>;
  /** The next entry. Rejects with Conflict where it does not follow the last one, with NotWritten where the store takes nothing. */
  append(entry: HouseSealed): Promise<void>;
}

/** What a conflict of the house stream is called by, in place of a job. */
export const HOUSE = "the house stream";
