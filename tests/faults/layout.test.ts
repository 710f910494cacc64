import { readdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import Database from "libsql";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { hashOf } from "../../machines/digest/digest.ts";
import { openJournal } from "../../server/journal/open-file.ts";
import { openingLine } from "../support/entries.ts";
import { named } from "../support/people.ts";
import { scratchFolder } from "../support/scratch.ts";

let folder: string;
let file: string;
beforeEach(async () => {
  folder = scratchFolder("layout");
  file = join(folder, "data.db");
  await openJournal(file).close();
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

it("a new data file is of the fourth layout", () => {
  const db = new Database(file);
  expect(db.prepare("PRAGMA user_version").get()).toMatchObject({ user_version: 4 });
  db.close();
});

describe("a data file that is not as this program makes it", () => {
  it.each([
    ["without its names", "DROP TABLE names"],
    ["without its folds", "DROP TABLE folds"],
    ["without its tents", "DROP TABLE tents"],
    ["without its writes", "DROP TABLE writes"],
    ["without its drafts", "DROP TABLE drafts"],
    ["without its people", "DROP TABLE people"],
    ["without its sheets", "DROP TABLE sheets"],
    ["of the first layout with a table of the second", "PRAGMA user_version = 1"],
    ["of the second layout with a table of the third", "PRAGMA user_version = 2"],
    ["of the third layout with a table of the fourth", "PRAGMA user_version = 3"],
    ["without its passes", "DROP TABLE passes"],
    ["without its findings", "DROP TABLE findings"],
    ["without its follow-ups", "DROP TABLE followUps"],
    ["without its house stream", "DROP TABLE house"],
    ["without its photos", "DROP TABLE photos"],
    ["without its learners", "DROP TABLE learners"],
    ["without its rehearsals", "DROP TABLE rehearsals"],
    ["with a table made otherwise", "DROP TABLE names; CREATE TABLE names (job, person, name)"],
    ["that says it is of no layout", "PRAGMA user_version = 0"],
  ])("%s is turned away as damaged, and no byte of it is changed", (_what, damage) => {
    sql(damage);
    const before = hashOf(readFileSync(file));
    expect(() => openJournal(file)).toThrow(/is damaged and was left as it is/);
    expect([hashOf(readFileSync(file)), readdirSync(folder)]).toEqual([before, ["data.db"]]);
  });
});

it("a file of the next layout is refused in one sentence, and no byte of it is changed", () => {
  sql("PRAGMA user_version = 5");
  const before = hashOf(readFileSync(file));
  expect(() => openJournal(file)).toThrow(
    /was written by a newer version \(layout 5, this one knows 4\); update, or open it where it was written\.$/,
  );
  expect(hashOf(readFileSync(file))).toBe(before);
});

/** What the fourth layout brought, taken away again. */
const WITHOUT_FOURTH = `${["secrets", "codes", "passes", "tokens", "security", "photos", "learners", "cards", "rounds", "rehearsals", "house", "overseen", "findings", "measures", "findingTallies", "measureTallies", "followUps"].map((table) => `DROP TABLE ${table}`).join("; ")}; DROP INDEX names_folded; ALTER TABLE names DROP COLUMN folded; ALTER TABLE names DROP COLUMN salt`;

describe("a file of the first layout, made before there were drafts", () => {
  const FIRST = `${WITHOUT_FOURTH}; DROP TABLE drafts; DROP TABLE people; DROP TABLE sheets; PRAGMA user_version = 1`;

  it("gains their tables when it is opened, and keeps what is in it", async () => {
    const before = openJournal(file);
    await before.catalog.add("t-1", { name: "Blue", spec: { widthFt: 60 }, kit: null, at: 1 }, { key: "key-1", request: "r" });
    await before.close();
    sql(FIRST);
    const journal = openJournal(file);
    await journal.drafts.save("d-1", 0, { body: {}, at: 1, opened: false });
    expect(await journal.catalog.tents()).toHaveLength(1);
    await journal.close();
    const again = openJournal(file);
    expect(await again.drafts.unopened(9)).toHaveLength(1);
    await again.close();
  });
  it("is turned away as damaged where a table of it is missing", () => {
    sql(`${FIRST}; DROP TABLE tents`);
    expect(() => openJournal(file)).toThrow(/is damaged and was left as it is/);
  });
});

describe("a file of the second layout, in which a sheet was that of a tent however it changed", () => {
  const SECOND = `${WITHOUT_FOURTH}; DROP TABLE sheets; CREATE TABLE sheets (tent TEXT NOT NULL PRIMARY KEY, sheet TEXT NOT NULL, at INTEGER NOT NULL) STRICT; PRAGMA user_version = 2`;

  it("begins its sheets and drafts again, and keeps its tents and people", async () => {
    const before = openJournal(file);
    await before.drafts.save("d-1", 0, { body: { fields: { "use.permit": "notRequired" } }, at: 1, opened: false });
    await before.firm.keep({ people: [{ name: "Ines", role: "lead" }], sheet: null, at: 1 });
    await before.catalog.add("t-1", { name: "Blue", spec: { widthFt: 60 }, kit: null, at: 1 }, { key: "key-1", request: "r" });
    await before.close();
    sql(SECOND);
    sql("INSERT INTO sheets (tent, sheet, at) VALUES ('t-1', '{}', 1)");
    const journal = openJournal(file);
    expect(await journal.drafts.unopened(9)).toEqual([]);
    expect([(await journal.firm.people()).length, (await journal.catalog.tents()).length]).toEqual([1, 1]);
    await journal.firm.keep({ people: [], sheet: { tent: "t-1", digest: "as-1", sheet: { document: "RC-1" } }, at: 2 });
    expect(await journal.firm.sheet("t-1", "as-1")).toEqual({ document: "RC-1" });
    await journal.close();
  });
});

it("a file of the third layout, made before anybody was asked who they are, keeps its people, and lets them in by codes", async () => {
  const before = openJournal(file);
  await before.open(openingLine("job-1"), named({ p1: "Ines" }));
  await before.close();
  sql(`${WITHOUT_FOURTH}; PRAGMA user_version = 3`);
  const journal = openJournal(file);
  expect(await journal.people("job-1")).toEqual({ p1: { name: "Ines", salt: "" } });
  await journal.access.keepCodes("job-1", [{ code: "K7M4QX", job: "job-1", leads: false }]);
  expect(await journal.access.codeCalled("K7M4QX")).toMatchObject({ job: "job-1" });
  await journal.close();
});
