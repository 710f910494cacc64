import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { houseEntryAfter, NO_HOUSE, readHouse, standAfter } from "../../machines/record/house.ts";
import { Conflict, type Journal } from "../../server/journal/journal.ts";
import { chainOf } from "../support/entries.ts";

const DAY_MS = 24 * 3600 * 1000;

/** What the house stream promises, wherever it lies. */
export function houseContract(where: string, create: () => Journal) {
  describe(`a house stream ${where}`, () => {
    let journal: Journal;
    beforeEach(async () => {
      journal = create();
      for (const job of ["job-2", "job-1"]) {
        const [first, ...rest] = chainOf(job, 3);
        await journal.open(first!, {});
        for (const line of rest) await journal.append(line);
      }
    });
    afterEach(() => journal.close());

    it("is empty at first, and knows the last entry of every job without being told", async () => {
      const byJob = [...(await journal.house.tips())].sort((a, b) => (a.job < b.job ? -1 : 1));
      expect([await journal.house.lines(), await journal.house.last(), byJob]).toEqual([
        [],
        null,
        ["job-1", "job-2"].map((job) => ({ job, no: 3, hash: chainOf(job, 3).at(-1)!.hash })),
      ]);
    });
    it("gives its entries back in order and to the byte", async () => {
      const first = houseEntryAfter(NO_HOUSE, await journal.house.tips(), 0);
      const second = houseEntryAfter(standAfter(NO_HOUSE, first), await journal.house.tips(), DAY_MS);
      for (const entry of [first, second]) await journal.house.append(entry);
      const { entries, broken } = readHouse(await journal.house.lines());
      expect([entries, broken, (await journal.house.last())?.hash]).toEqual([[first, second], null, second.hash]);
    });
    it("takes none that does not follow the last one", async () => {
      const first = houseEntryAfter(NO_HOUSE, [], 0);
      await journal.house.append(first);
      const after = standAfter(NO_HOUSE, first);
      const others = [first, houseEntryAfter({ ...after, last: { no: 1, hash: "0".repeat(64) } }, [], 1)];
      for (const other of others) await expect(journal.house.append(other)).rejects.toThrow(Conflict);
      expect(await journal.house.lines()).toHaveLength(1);
    });
  });
}
