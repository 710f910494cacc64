import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "libsql";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { hashOf } from "../../machines/record/digest.ts";
import { foldAll } from "../../machines/record/findings.ts";
import { openJournal } from "../../server/journal/open-file.ts";
import { appendUntilKilled } from "../support/append-loop.ts";
import { asStored, chainOf } from "../support/entries.ts";
import { layout1File } from "../support/layout-1.ts";

let folder: string;
let file: string;
const record = chainOf("job-1", 400);
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "ridgecall-layout-"));
  file = layout1File(join(folder, "data.db"), record);
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

function sql(text: string) {
  const db = new Database(file);
  try {
    db.exec(text);
  } finally {
    db.close();
  }
}
function layout(): unknown {
  const db = new Database(file);
  try {
    return (db.prepare("PRAGMA user_version").get() as { user_version: number }).user_version;
  } finally {
    db.close();
  }
}
/** What a journal gives of the record, all of it. */
function held() {
  const journal = openJournal(file);
  try {
    return { rows: journal.read("job-1"), names: journal.names("job-1"), folds: journal.folds() };
  } finally {
    journal.close();
  }
}

describe("a data file of the first layout", () => {
  it("is brought up when it is opened: the entries to the byte, the names, and each job's fold", () => {
    expect(held()).toEqual({
      rows: asStored(record),
      names: { p1: "Ines" },
      folds: [{ job: "job-1", entries: 400, tip: record.at(-1)!.hash, fold: foldAll(record).fold }],
    });
    expect([layout(), readdirSync(folder)]).toEqual([2, ["data.db"]]);
  });
  it("is brought up once, and is the same when it is opened again", () => {
    const before = held();
    expect([held(), layout()]).toEqual([before, 2]);
  });
  it.each([
    ["with a table missing", "DROP TABLE names"],
    ["with a table made otherwise", "DROP TABLE names; CREATE TABLE names (job, person, name)"],
    ["with a table that it never had", "CREATE TABLE folds (job)"],
    ["that says it is of the second", "PRAGMA user_version = 2"],
    ["that says it is of none", "PRAGMA user_version = 0"],
  ])("%s is turned away as damaged, and no byte of it is changed", (_what, damage) => {
    sql(damage);
    const before = hashOf(readFileSync(file));
    expect(() => openJournal(file)).toThrow(/is damaged and was left as it is/);
    expect([hashOf(readFileSync(file)), readdirSync(folder)]).toEqual([before, ["data.db"]]);
  });

  // The folder stirs when the log is made and written to: each of these kills falls somewhere else in the bringing up.
  it.each([1, 2, 3, 4, 5, 6, 8, 12])("killed at the stir %d of its folder while it is opened, holds the whole record", async (stirs) => {
    const acknowledged = await appendUntilKilled(file, { entries: 1, stirs });
    const { rows, names, folds } = held();
    expect(rows.slice(0, 400)).toEqual(asStored(record));
    expect(rows.length).toBeGreaterThanOrEqual(400 + acknowledged.size);
    expect(names).toEqual({ p1: "Ines" });
    expect(folds).toMatchObject([{ job: "job-1", entries: rows.length, fold: { no: rows.length } }]);
  });
});

it("a file of the second layout without its folds is turned away: a table is never made up behind anybody's back", () => {
  openJournal(file).close();
  sql("DROP TABLE folds");
  expect(() => openJournal(file)).toThrow(/is damaged/);
});
