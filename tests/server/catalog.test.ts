import { rmSync } from "node:fs";
import { join } from "node:path";
import Database from "libsql";
import { afterAll, describe, expect, it } from "vitest";
import { memoryJournal } from "../../server/journal/memory.ts";
import { openJournal } from "../../server/journal/open-file.ts";
import { sqliteJournal } from "../../server/journal/sqlite.ts";
import { scratchFolder } from "../support/scratch.ts";
import { accessContract } from "./access.contract.ts";
import { catalogContract } from "./catalog.contract.ts";
import { draftsContract } from "./drafts.contract.ts";
import { learningContract } from "./learning.contract.ts";
import { photosContract } from "./photos.contract.ts";

const folder = scratchFolder("tents");
afterAll(() => rmSync(folder, { recursive: true, force: true }));
let files = 0;
const newFile = () => join(folder, `data-${++files}.db`);

for (const contract of [accessContract, catalogContract, draftsContract, learningContract, photosContract]) {
  contract("in a file", () => openJournal(newFile()));
  contract("in SQLite's memory", () => sqliteJournal(":memory:"));
  contract("in memory", memoryJournal);
}

/** A closed file with two tents, changed behind the program's back. */
async function meddled(sql: string) {
  const file = newFile();
  const journal = openJournal(file);
  await journal.catalog.add("t-1", { name: "Blue", spec: { widthFt: 60 }, kit: { sidePole: {} }, at: 1 }, { key: "key-1", request: "r" });
  await journal.catalog.add("t-2", { name: "White", spec: { widthFt: 80 }, kit: null, at: 2 }, { key: "key-2", request: "r" });
  await journal.close();
  const db = new Database(file);
  db.exec(sql);
  db.close();
  return openJournal(file);
}

describe("a tent spoiled in the file", () => {
  it("is listed as one that cannot be read, and hides no other", async () => {
    const journal = await meddled("UPDATE tents SET spec = '{\"widthFt\":6', kit = '{' WHERE id = 't-1'");
    expect((await journal.catalog.tents()).map(({ name, spec, kit }) => [name, spec, kit])).toEqual([
      ["Blue", null, null],
      ["White", { widthFt: 80 }, null],
    ]);
    await journal.close();
  });
  it("with a name that is no text any more is read as well as it can be: it never ends the program", async () => {
    const journal = await meddled("UPDATE tents SET name = CAST(x'42ff75' AS TEXT), spec = CAST(x'ff' AS TEXT) WHERE id = 't-1'");
    expect(await journal.catalog.tent("t-1")).toMatchObject({ name: "B\ufffdu", spec: null });
    await journal.catalog.remove("t-1", 1, { key: "key-3", request: "r" });
    expect(await journal.catalog.tents()).toHaveLength(1);
    await journal.close();
  });
});

it("a draft spoiled in the file cannot be read, and hides no other", async () => {
  const file = newFile();
  const journal = openJournal(file);
  for (const id of ["d-1", "d-2"]) await journal.drafts.save(id, 0, { body: { fields: {} }, at: 1, opened: false });
  await journal.close();
  const db = new Database(file);
  db.exec("UPDATE drafts SET body = '{' WHERE id = 'd-1'");
  db.close();
  const again = openJournal(file);
  expect((await again.drafts.unopened(9)).map(({ id, body }) => [id, body])).toEqual([
    ["d-2", { fields: {} }],
    ["d-1", null],
  ]);
  await again.close();
});
