import Database from "libsql";
import { keyOf, type Sealed } from "../../machines/record/entry.ts";
import { LAYOUT_1 } from "./layout-1.ts";

/** The tables of layout 2, to the letter, as the program made them before it kept tents. */
export const LAYOUT_2 = `${LAYOUT_1}
  CREATE TABLE folds (
    job TEXT NOT NULL PRIMARY KEY, no INTEGER NOT NULL, hash TEXT NOT NULL, version INTEGER NOT NULL, body BLOB) STRICT;
`;

/** A data file of layout 2 with a record in it, at rest. Its folds are left out: they are made anew from the entries. */
export function layout2File(file: string, record: readonly Sealed[]): string {
  const db = new Database(file);
  db.exec(`BEGIN; ${LAYOUT_2} PRAGMA application_id = ${0x52646743}; PRAGMA user_version = 2; COMMIT;`);
  const insert = db.prepare("INSERT INTO entries (job, no, prev, hash, key, bytes) VALUES (?, ?, ?, ?, ?, ?)");
  db.transaction(() => {
    for (const { entry, hash, bytes } of record) insert.run(entry.job, entry.no, entry.prev, hash, keyOf(entry), Buffer.from(bytes));
    db.exec("INSERT INTO names VALUES ('job-1', 'p1', 'Ines')");
  })();
  db.close();
  return file;
}
