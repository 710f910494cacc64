import { readdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import Database from "libsql";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { hashOf } from "../../machines/digest/digest.ts";
import { openJournal } from "../../server/journal/open-file.ts";
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

it("a new data file is of the first layout", () => {
  const db = new Database(file);
  expect(db.prepare("PRAGMA user_version").get()).toMatchObject({ user_version: 1 });
  db.close();
});

describe("a data file that is not as this program makes it", () => {
  it.each([
    ["without its names", "DROP TABLE names"],
    ["without its folds", "DROP TABLE folds"],
    ["without its tents", "DROP TABLE tents"],
    ["without its writes", "DROP TABLE writes"],
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
  sql("PRAGMA user_version = 2");
  const before = hashOf(readFileSync(file));
  expect(() => openJournal(file)).toThrow(
    /was written by a newer version \(layout 2, this one knows 1\); update, or open it where it was written\.$/,
  );
  expect(hashOf(readFileSync(file))).toBe(before);
});
