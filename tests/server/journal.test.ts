import { existsSync, readdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import Database from "libsql";
import { afterAll, describe, expect, it } from "vitest";
import { verifyChain } from "../../machines/record/verify-chain.ts";
import { memoryJournal } from "../../server/journal/memory.ts";
import { openJournal } from "../../server/journal/open-file.ts";
import { sqliteJournal } from "../../server/journal/sqlite.ts";
import { asStored, chainOf, lineAfter } from "../support/entries.ts";
import { named } from "../support/people.ts";
import { scratchFolder } from "../support/scratch.ts";
import { journalContract } from "./journal.contract.ts";

const folder = scratchFolder("journal");
afterAll(() => rmSync(folder, { recursive: true, force: true }));
let files = 0;
const newFile = () => join(folder, `data ${++files} #1%20.db`);

journalContract("in a file", () => openJournal(newFile()));
journalContract("in SQLite's memory", () => sqliteJournal(":memory:"));
journalContract("in memory", memoryJournal);

/** A closed file with two jobs of so many entries, and a way to do to it what the program never does. */
async function closedFile(length = 3) {
  const file = newFile();
  const journal = openJournal(file);
  for (const job of ["job-1", "job-2"]) {
    const [first, ...rest] = chainOf(job, length);
    await journal.open(first!, named({ p1: "Ines" }));
    for (const line of rest) await journal.append(line);
  }
  await journal.close();
  const meddle = (sql: string) => {
    const db = new Database(file);
    try {
      db.exec(sql);
    } finally {
      db.close();
    }
  };
  return { file, meddle };
}

describe("a journal's file", () => {
  it("is one file at rest, and holds what it held when it is opened again", async () => {
    const { file } = await closedFile();
    expect(readdirSync(folder).filter((name) => join(folder, name).startsWith(file))).toHaveLength(1);
    const journal = openJournal(file);
    expect(await journal.read("job-1")).toEqual(asStored(chainOf("job-1", 3)));
    expect(await journal.names("job-2")).toEqual({ p1: "Ines" });
    await journal.close();
  });
  it("lets nobody change or delete an entry, while names may be erased", async () => {
    const { file, meddle } = await closedFile();
    expect(() => meddle("UPDATE entries SET no = 9")).toThrow(/never changed/);
    expect(() => meddle("DELETE FROM entries")).toThrow(/never deleted/);
    meddle("DELETE FROM names WHERE job = 'job-1'");
    const journal = openJournal(file);
    expect([await journal.names("job-1"), await journal.names("job-2")]).toEqual([{}, { p1: "Ines" }]);
    expect(verifyChain(await journal.read("job-1")).holds).toBe(true);
    await journal.close();
  });
  it("is opened once: a second time is refused, and the first goes on", async () => {
    const file = newFile();
    const journal = openJournal(file);
    expect(() => openJournal(file)).toThrow(/in use by another Ridgecall/);
    await journal.open(chainOf("job-1", 1)[0]!, {});
    expect(() => openJournal(file)).toThrow(/in use by another Ridgecall/);
    await journal.close();
    await openJournal(file).close();
  });
  it("that was closed takes nothing more, and the program goes on", async () => {
    const journal = openJournal(newFile());
    await journal.close();
    await expect(journal.open(chainOf("job-1", 1)[0]!, {})).rejects.toThrow(/is closed/);
    await journal.close();
  });
  it("is not made where its log was left alone: the entries in the log are kept", async () => {
    const { file, meddle } = await closedFile();
    meddle(`ATTACH '${join(folder, "alone.db-wal")}' AS log; CREATE TABLE log.kept (a)`);
    expect(() => openJournal(join(folder, "alone.db"))).toThrow(/is missing, but .*alone\.db-wal with its last entries is there/);
    expect([existsSync(join(folder, "alone.db")), existsSync(join(folder, "alone.db-wal")), existsSync(file)]).toEqual([false, true, true]);
  });
});

describe("a line changed behind the journal's back", () => {
  const change = async (sql: string) => {
    const { file, meddle } = await closedFile();
    meddle(`DROP TRIGGER entries_stay; DROP TRIGGER entries_last; ${sql}`);
    return openJournal(file);
  };

  it("is read as it lies there, so that the chain can name it", async () => {
    const journal = await change("UPDATE entries SET bytes = x'7b7d' WHERE job = 'job-1' AND no = 2");
    expect(verifyChain(await journal.read("job-1"))).toMatchObject({ holds: false, firstMismatch: 2, why: "hash" });
    expect(verifyChain(await journal.read("job-2")).holds).toBe(true);
    expect(await journal.keyed("job-1", "job-1-key-2")).toBeNull();
    await journal.close();
  });
  it("at a job's end leaves the last line that fits in the list", async () => {
    const journal = await change("UPDATE entries SET bytes = x'00' WHERE job = 'job-1' AND no = 3");
    expect((await journal.jobs()).map(({ tip }) => [tip.entry.job, tip.entry.no])).toEqual([
      ["job-2", 3],
      ["job-1", 2],
    ]);
    await journal.close();
  });
  it("at a job's beginning leaves the other jobs in the list", async () => {
    const journal = await change("UPDATE entries SET bytes = CAST('null' AS BLOB) WHERE job = 'job-2' AND no = 1");
    expect((await journal.jobs()).map(({ opening }) => opening.entry.job)).toEqual(["job-1"]);
    expect(await journal.read("job-2")).toHaveLength(3);
    await journal.close();
  });
  it("at a job's beginning leaves it among the folds, as one that cannot be read", async () => {
    const journal = await change("UPDATE entries SET bytes = CAST('null' AS BLOB) WHERE job = 'job-2' AND no = 1");
    expect((await journal.folds()).map(({ job, entries, fold }) => [job, entries, fold?.title])).toEqual([
      ["job-2", 3, undefined],
      ["job-1", 3, "Tent of job-1"],
    ]);
    await journal.close();
  });
  it("taken out at a job's beginning leaves it among the folds too", async () => {
    const journal = await change("DELETE FROM entries WHERE job = 'job-2' AND no = 1");
    expect((await journal.folds()).map(({ job, fold }) => [job, fold === null])).toEqual([
      ["job-1", false],
      ["job-2", true],
    ]);
    await journal.close();
  });
  it("in its key or its job answers to neither", async () => {
    const journal = await change(
      "UPDATE entries SET key = 'mine' WHERE no = 2; UPDATE entries SET job = 'job-3' WHERE job = 'job-2' AND no = 3",
    );
    expect(await journal.keyed("job-1", "mine")).toBeNull();
    expect(await journal.keyed("job-3", "job-2-key-3")).toBeNull();
    await journal.close();
  });
});

describe("a fold that does not fit its entries", () => {
  const sound = async () => {
    const { file, meddle } = await closedFile();
    const journal = openJournal(file);
    const folds = await journal.folds();
    await journal.close();
    return { file, meddle, folds };
  };
  it.each([
    ["is missing", "DELETE FROM folds WHERE job = 'job-1'"],
    ["was made another way", "UPDATE folds SET version = version - 1, body = x'7b7d'"],
    ["is of an earlier entry", "UPDATE folds SET no = 2"],
    ["is of another entry with that number", "UPDATE folds SET hash = 'other' WHERE job = 'job-2'"],
    ["is no JSON any more", "UPDATE folds SET body = x'7b'"],
    ["is not there though it could be", "UPDATE folds SET body = NULL"],
    ["is of no job", "UPDATE folds SET job = 'job-9' WHERE job = 'job-2'"],
  ])("because it %s, is rebuilt when the file is opened", async (_why, spoil) => {
    const { file, meddle, folds } = await sound();
    meddle(spoil);
    const journal = openJournal(file);
    expect(await journal.folds()).toEqual(folds);
    await journal.append(lineAfter(chainOf("job-1", 3).at(-1)!));
    expect((await journal.folds()).find(({ job }) => job === "job-1")).toMatchObject({ entries: 4, fold: { no: 4 } });
    await journal.close();
  });
  it("because its figures were changed, is rebuilt when its job is next loaded", async () => {
    const { file, meddle, folds } = await sound();
    meddle("UPDATE folds SET body = CAST(replace(CAST(body AS TEXT), '\"refused\":0', '\"refused\":7') AS BLOB)");
    const journal = openJournal(file);
    expect((await journal.folds())[0]!.fold!.counts.refused).toBe(7);
    for (const { job } of folds) await journal.refold(job);
    expect(await journal.folds()).toEqual(folds);
    await journal.close();
  });
  it("because the chain breaks in its job, ends before the entry that does not fit, and says which that is", async () => {
    const { file, meddle } = await closedFile();
    meddle("DROP TRIGGER entries_stay; UPDATE entries SET bytes = x'00' WHERE job = 'job-1' AND no = 3; DELETE FROM folds");
    const journal = openJournal(file);
    expect((await journal.folds())[1]).toMatchObject({ job: "job-1", entries: 3, fold: { no: 2, mismatch: 3 } });
    await journal.close();
  });
});
