import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "libsql";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { hashOf } from "../../machines/digest/digest.ts";
import { foldAll } from "../../machines/record/findings.ts";
import { openJournal } from "../../server/journal/open-file.ts";
import { appendUntilKilled } from "../support/append-loop.ts";
import { asStored, chainOf } from "../support/entries.ts";
import { layout1File } from "../support/layout-1.ts";
import { layout2File } from "../support/layout-2.ts";

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
async function held() {
  const journal = openJournal(file);
  try {
    return {
      rows: await journal.read("job-1"),
      names: await journal.names("job-1"),
      folds: await journal.folds(),
      tents: await journal.catalog.tents(),
    };
  } finally {
    await journal.close();
  }
}

describe.each([
  ["first", 1, layout1File],
  ["second", 2, layout2File],
] as const)("a data file of the %s layout", (_which, no, made) => {
  beforeEach(() => {
    rmSync(file);
    made(file, record);
  });

  it("is brought up when it is opened: the entries to the byte, the names, each job's fold, and room for tents", async () => {
    expect(await held()).toEqual({
      rows: asStored(record),
      names: { p1: "Ines" },
      folds: [{ job: "job-1", entries: 400, tip: record.at(-1)!.hash, fold: foldAll(record).fold }],
      tents: [],
    });
    expect([layout(), readdirSync(folder)]).toEqual([3, ["data.db"]]);
  });
  it("is brought up once, and is the same when it is opened again", async () => {
    const before = await held();
    expect([await held(), layout()]).toEqual([before, 3]);
  });
  it("takes a tent once it is brought up, and holds it when it is opened again", async () => {
    const journal = openJournal(file);
    await journal.catalog.add("t-1", { name: "Blue", spec: { widthFt: 20 }, kit: null, at: 5 }, { key: "key-00001", request: "r" });
    await journal.close();
    expect((await held()).tents).toEqual([{ id: "t-1", name: "Blue", spec: { widthFt: 20 }, kit: null, version: 1, at: 5 }]);
  });
  it.each([
    ["with a table missing", "DROP TABLE names"],
    ["with a table made otherwise", "DROP TABLE names; CREATE TABLE names (job, person, name)"],
    ["with a table of tents that it never had", "CREATE TABLE tents (id)"],
    ["with a table of writes that it never had", "CREATE TABLE writes (key)"],
    ["that says it is of the next", `PRAGMA user_version = ${no + 1}`],
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
    const { rows, names, folds } = await held();
    expect(rows.slice(0, 400)).toEqual(asStored(record));
    expect(rows.length).toBeGreaterThanOrEqual(400 + acknowledged.size);
    expect(names).toEqual({ p1: "Ines" });
    expect(folds).toMatchObject([{ job: "job-1", entries: rows.length, fold: { no: rows.length } }]);
  });
});

it("a file of the first layout with folds that it never had is turned away", () => {
  sql("CREATE TABLE folds (job)");
  expect(() => openJournal(file)).toThrow(/is damaged/);
});

it.each(["folds", "tents", "writes"])(
  "a file of ours without its %s is turned away: a table is never made up behind anybody's back",
  async (table) => {
    await openJournal(file).close();
    sql(`DROP TABLE ${table}`);
    expect(() => openJournal(file)).toThrow(/is damaged/);
  },
);

it("a file of the next layout is refused in one sentence, and no byte of it is changed", async () => {
  await openJournal(file).close();
  sql("PRAGMA user_version = 4");
  const before = hashOf(readFileSync(file));
  expect(() => openJournal(file)).toThrow(
    /was written by a newer version \(layout 4, this one knows 3\); update, or open it where it was written\.$/,
  );
  expect(hashOf(readFileSync(file))).toBe(before);
});
