import { NO_ENTRY } from "../../machines/record/entry.ts";
import type { HouseSealed, Tip } from "../../machines/record/house.ts";
import { HOUSE, type HouseStore } from "./house.ts";
import { Conflict } from "./journal.ts";

/** The house stream for as long as the program lasts; `tips` gives the last entry of every job. */
export function memoryHouse(tips: () => readonly Tip[]): HouseStore {
  const entries: HouseSealed[] = [];
  return {
    lines: async () => entries.map(({ entry, hash, bytes }) => ({ no: entry.no, hash, bytes, filed: { prev: entry.prev } })),
    tips: async () => tips(),
    append: async (next) => {
      const { no, prev } = next.entry;
      if (no !== entries.length + 1 || prev !== (entries.at(-1)?.hash ?? NO_ENTRY)) throw new Conflict(HOUSE, no);
      entries.push(next);
    },
  };
}
