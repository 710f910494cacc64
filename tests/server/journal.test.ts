import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "libsql";
import { afterAll, describe, expect, it } from "vitest";
import { type Entry, NO_ENTRY, type Sealed, seal } from "../../machines/record/entry.ts";
import { Conflict, KeyUsed } from "../../server/journal/journal.ts";
import { openJournal } from "../../server/journal/open-file.ts";

const folder = mkdtempSync(join(tmpdir(), "ridgecall-journal-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** A line that is only as full as the journal needs. */
const line = (no: number, prev: string, key: string, job = "job-1"): Sealed =>
  seal((no === 1 ? { kind: "opening", job, no, prev, key } : { kind: "command", job, no, prev, command: { key } }) as unknown as Entry);

describe("a journal in a file", () => {
  const file = join(folder, "data.db");
  const journal = openJournal(file);
  const first = line(1, NO_ENTRY, "key-1");
  const second = line(2, first.hash, "key-2");

  it("keeps entries in order, with names beside them", () => {
    journal.open(first, { p1: "Ines" });
    journal.append(second);
    expect(journal.read("job-1").map((l) => [l.no, l.hash])).toEqual([
      [1, first.hash],
      [2, second.hash],
    ]);
    expect(journal.names("job-1")).toEqual({ p1: "Ines" });
    expect(journal.keyed("job-1", "key-2")?.hash).toBe(second.hash);
    expect(journal.openedWith("key-1")?.hash).toBe(first.hash);
    expect(journal.jobs().map((j) => j.tip.hash)).toEqual([second.hash]);
  });
  it("takes no entry that does not follow the last one", () => {
    expect(() => journal.append(line(4, second.hash, "key-4"))).toThrow(Conflict);
    expect(() => journal.append(line(3, first.hash, "key-3"))).toThrow(Conflict);
    expect(() => journal.append(line(2, first.hash, "key-9", "job-2"))).toThrow(Conflict);
  });
  it("takes no key twice", () => {
    expect(() => journal.append(line(3, second.hash, "key-2"))).toThrow(KeyUsed);
    expect(() => journal.open(line(1, NO_ENTRY, "key-1", "job-2"), {})).toThrow(KeyUsed);
  });
  it("is read again as it was after closing, and lets nobody change or delete a line", () => {
    journal.close();
    const db = new Database(file);
    expect(() => db.exec("UPDATE entries SET no = 9")).toThrow(/never changed/);
    expect(() => db.exec("DELETE FROM entries")).toThrow(/never deleted/);
    db.close();
    const again = openJournal(file);
    expect(again.read("job-1")).toHaveLength(2);
    again.close();
  });
  it("of a newer layout is refused in one sentence", () => {
    const db = new Database(file);
    db.exec("PRAGMA user_version = 9");
    db.close();
    expect(() => openJournal(file)).toThrow(/newer version \(layout 9/);
  });
});
