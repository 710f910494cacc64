import { NO_ENTRY } from "../../machines/record/entry.ts";
import type { HouseSealed, Tip } from "../../machines/record/house.ts";
import type { Line } from "../../machines/record/verify-chain.ts";
import { HOUSE, type HouseStore } from "./house.ts";
import { Conflict } from "./journal.ts";

/** The house stream for as long as the program lasts; `tips` gives the last entry of every job. */
export function memoryHouse(tips: () => readonly Tip[]): HouseStore {
  const entries: HouseSealed[] = [];
  return {
    lines: async () => entries.map(lineOf),
    last: async () => entries.slice(-1).map(lineOf)[0] ?? null,
    tips: async () => tips(),
    append: async (next) => {
      const { no, prev } = next.entry;
      if (no !== entries.length + 1 || prev !== (entries.at(-1)?.hash ?? NO_ENTRY)) throw new Conflict(HOUSE, no);
      entries.push(next);
    },
  };
}

const lineOf = ({ entry, hash, bytes }: HouseSealed): Line => ({ no: entry.no, hash, bytes, filed: { prev: entry.prev } });
