import { copyFileSync, mkdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import Database from "libsql";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { verifyChain } from "../../machines/record/verify-chain.ts";
import { openJournal } from "../../server/journal/open-file.ts";
import { appendUntilKilled } from "../support/append-loop.ts";
import { scratchFolder } from "../support/scratch.ts";

// A killed process loses what it had not handed to the system. What a power cut takes besides is not tried here: against
// that stands synchronous = FULL, one flush to disk for each entry.

let folder: string;
beforeEach(() => {
  folder = scratchFolder("kill");
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

/** What the file holds, and that it hangs together. */
async function held(file: string): Promise<Map<number, string>> {
  const journal = openJournal(file);
  try {
    const rows = await journal.read("job-1");
    expect(verifyChain(rows)).toMatchObject({ holds: true });
    expect(await journal.names("job-1")).toEqual(rows.length === 0 ? {} : { p1: "Ines" });
    return new Map(rows.map(({ no, hash }) => [no, hash]));
  } finally {
    await journal.close();
  }
}

const expectAll = (acknowledged: ReadonlyMap<number, string>, held: ReadonlyMap<number, string>) =>
  expect([...acknowledged].filter(([no, hash]) => held.get(no) !== hash)).toEqual([]);

describe("a journal killed while it appends", () => {
  // Some 900 of these entries fill the log, which is then moved into the file: the longest runs are killed beyond that.
  it.each([
    ["and looked at after every kill", true],
    ["and opened by the next run straight from what the kill left", false],
  ])("at many points on one file, %s, has every entry that it acknowledged", async (_how, look) => {
    const file = join(folder, "data.db");
    const acknowledged = new Map<number, string>();
    let kills = 0;
    for (const entries of look ? [1, 2, 7, 40, 333, 1100] : [1, 7, 40, 1, 1100]) {
      for (const [no, hash] of await appendUntilKilled(file, { entries })) {
        expect(acknowledged.has(no), `entry ${no} acknowledged twice`).toBe(false);
        acknowledged.set(no, hash);
      }
      kills++;
      if (look) expectAll(acknowledged, await held(file));
    }
    const all = await held(file);
    expectAll(acknowledged, all);
    // The one in hand at the kill may be there, unsaid; no more than that.
    expect(all.size - acknowledged.size).toBeLessThanOrEqual(kills);
    expect(acknowledged.size).toBeGreaterThan(look ? 1400 : 1100);
  });

  it("keeps in its file a fold that ends with the last entry, before anybody rebuilds it", async () => {
    const file = join(folder, "data.db");
    for (const entries of [1, 3, 50, 200]) {
      await appendUntilKilled(file, { entries });
      // In a copy: a handle of this process would hold the file.
      const copy = join(folder, `copy-${entries}`);
      mkdirSync(copy);
      for (const part of ["", "-wal"]) copyFileSync(file + part, join(copy, `data.db${part}`));
      const db = new Database(join(copy, "data.db"));
      const { no, hash } = db.prepare("SELECT no, hash FROM entries ORDER BY no DESC LIMIT 1").get() as { no: number; hash: string };
      expect(db.prepare("SELECT no, hash FROM folds").all()).toMatchObject([{ no, hash }]);
      db.close();
    }
  });

  it.each([1, 2, 3, 4])("while it makes its file, at the stir %d of the folder, leaves none or a whole one", async (stirs) => {
    const file = join(folder, "data.db");
    const acknowledged = await appendUntilKilled(file, { entries: 1, stirs });
    expect((await held(file)).size).toBeGreaterThanOrEqual(acknowledged.size);
    await appendUntilKilled(file, { entries: 1 });
    expect((await held(file)).size).toBeGreaterThan(0);
  });
});
