import Database from "libsql";
import { keyOf, type Sealed } from "../../machines/record/entry.ts";

/** The tables of layout 1, to the letter, as the program made them before it kept folds. */
export const LAYOUT_1 = `
  CREATE TABLE entries (
    seq INTEGER PRIMARY KEY, job TEXT NOT NULL, no INTEGER NOT NULL, prev TEXT NOT NULL, hash TEXT NOT NULL UNIQUE,
    key TEXT NOT NULL, bytes BLOB NOT NULL, UNIQUE (job, no), UNIQUE (job, key)) STRICT;
  CREATE UNIQUE INDEX openings ON entries (key) WHERE no = 1;
  CREATE TRIGGER entries_stay BEFORE UPDATE ON entries BEGIN SELECT RAISE(ABORT, 'entries are never changed'); END;
  CREATE TRIGGER entries_last BEFORE DELETE ON entries BEGIN SELECT RAISE(ABORT, 'entries are never deleted'); END;
  CREATE TABLE names (job TEXT NOT NULL, person TEXT NOT NULL, name TEXT NOT NULL, PRIMARY KEY (job, person)) STRICT;
`;

/** A data file of layout 1 with a record in it, at rest. */
export function layout1File(file: string, record: readonly Sealed[]): string {
  const db = new Database(file);
  db.exec(`BEGIN; ${LAYOUT_1} PRAGMA application_id = ${0x52646743}; PRAGMA user_version = 1; COMMIT;`);
  const insert = db.prepare("INSERT INTO entries (job, no, prev, hash, key, bytes) VALUES (?, ?, ?, ?, ?, ?)");
  db.transaction(() => {
    for (const { entry, hash, bytes } of record) insert.run(entry.job, entry.no, entry.prev, hash, keyOf(entry), Buffer.from(bytes));
    db.exec("INSERT INTO names VALUES ('job-1', 'p1', 'Ines')");
  })();
  db.close();
  return file;
}
