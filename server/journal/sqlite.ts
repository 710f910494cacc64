import type Sqlite from "better-sqlite3";
import Database from "libsql";
import type { PersonId } from "../../machines/install/brief.ts";
import { type JobId, keyOf, NO_ENTRY, type Sealed, unseal } from "../../machines/record/entry.ts";
import { Conflict, type Journal, KeyUsed, type Listed, type Stored } from "./journal.ts";

/** Marks a data file as ours: "RdgC". */
export const APPLICATION_ID = 0x52646743;
/** The layout of the tables. A file with a higher one was written by a newer program. */
export const LAYOUT = 1;

/** The tables of that layout. A change here, be it of a space, is a new layout. */
export const TABLES = `
  CREATE TABLE entries (
    seq INTEGER PRIMARY KEY, job TEXT NOT NULL, no INTEGER NOT NULL, prev TEXT NOT NULL, hash TEXT NOT NULL UNIQUE,
    key TEXT NOT NULL, bytes BLOB NOT NULL, UNIQUE (job, no), UNIQUE (job, key)) STRICT;
  CREATE UNIQUE INDEX openings ON entries (key) WHERE no = 1;
  CREATE TRIGGER entries_stay BEFORE UPDATE ON entries BEGIN SELECT RAISE(ABORT, 'entries are never changed'); END;
  CREATE TRIGGER entries_last BEFORE DELETE ON entries BEGIN SELECT RAISE(ABORT, 'entries are never deleted'); END;
  CREATE TABLE names (job TEXT NOT NULL, person TEXT NOT NULL, name TEXT NOT NULL, PRIMARY KEY (job, person)) STRICT;
`;

// Text is read as bytes and decoded here: on text that is not UTF-8 (one flipped byte is enough) libsql 0.5.29 ends the process.
const as = (column: string) => `CAST(${column} AS BLOB) AS ${column}`;
const LINE = `SELECT ${as("job")}, no, ${as("key")}, ${as("hash")}, bytes FROM entries`;
type Row = { job: Uint8Array; no: number; key: Uint8Array; hash: Uint8Array; bytes: Uint8Array };
const utf8 = new TextDecoder();
const text = (bytes: Uint8Array) => utf8.decode(bytes);
const stored = (r: Row): Stored => ({ no: r.no, hash: text(r.hash), bytes: new Uint8Array(r.bytes) });

/** A line as an entry; null where its bytes are not those that were hashed, or its columns say something else than its bytes. */
function sealed(row: unknown): Sealed | null {
  if (!row) return null;
  const { job, no, key, hash, bytes } = row as Row;
  try {
    const line = unseal(new Uint8Array(bytes), text(hash));
    return line.entry.job === text(job) && line.entry.no === no && keyOf(line.entry) === text(key) ? line : null;
  } catch {
    return null;
  }
}

/** A journal in one SQLite file, or in memory for `:memory:`. Call `openJournal` for files: it looks before it touches. */
export function sqliteJournal(file: string): Journal {
  const db = new Database(file) as unknown as Sqlite.Database;
  try {
    prepareFile(db);
  } catch (error) {
    db.close();
    throw error;
  }
  return journalOf(db);
}

function prepareFile(db: Sqlite.Database) {
  // At every open: a WAL file reopened without them runs at NORMAL and can lose the last entries on power loss.
  for (const pragma of ["locking_mode = EXCLUSIVE", "journal_mode = WAL", "synchronous = FULL", "foreign_keys = ON", "busy_timeout = 0"])
    db.pragma(pragma);
  if ((db.prepare("SELECT count(*) AS n FROM sqlite_schema").get() as { n: number }).n === 0)
    db.exec(`BEGIN IMMEDIATE; ${TABLES} PRAGMA application_id = ${APPLICATION_ID}; PRAGMA user_version = ${LAYOUT}; COMMIT;`);
  else db.exec("BEGIN IMMEDIATE; COMMIT;");
}

function journalOf(db: Sqlite.Database): Journal {
  const insert = db.prepare("INSERT INTO entries (job, no, prev, hash, key, bytes) VALUES (?, ?, ?, ?, ?, ?)");
  const tip = db.prepare(`SELECT no, ${as("hash")} FROM entries WHERE job = ? ORDER BY no DESC LIMIT 1`);
  const byKey = db.prepare(`${LINE} WHERE job = ? AND key = ?`);
  const opened = db.prepare(`${LINE} WHERE key = ? AND no = 1`);
  const lines = db.prepare(`${LINE} WHERE job = ? ORDER BY no`);
  const first = db.prepare(`${LINE} WHERE no = 1 ORDER BY seq DESC`);
  const before = db.prepare(`${LINE} WHERE job = ? AND no < ? ORDER BY no DESC LIMIT 1`);
  const named = db.prepare(`SELECT ${as("person")}, ${as("name")} FROM names WHERE job = ?`);
  const putName = db.prepare(
    "INSERT INTO names (job, person, name) VALUES (?, ?, ?) ON CONFLICT (job, person) DO UPDATE SET name = excluded.name",
  );

  const add = ({ entry, hash, bytes }: Sealed) => insert.run(entry.job, entry.no, entry.prev, hash, keyOf(entry), Buffer.from(bytes));
  const putNames = (job: JobId, names: Readonly<Record<PersonId, string>>) => {
    for (const [person, name] of Object.entries(names)) putName.run(job, person, name);
  };

  const lastThatFits = (job: JobId): Sealed | null => {
    let row = before.get(job, Number.MAX_SAFE_INTEGER) as Row | undefined;
    while (row) {
      const line = sealed(row);
      if (line) return line;
      row = before.get(job, row.no) as Row | undefined;
    }
    return null;
  };
  const listed = (opening: Sealed | null): Listed[] => (opening ? [{ opening, tip: lastThatFits(opening.entry.job) ?? opening }] : []);

  return {
    open: db.transaction((opening: Sealed, names: Readonly<Record<PersonId, string>>) => {
      if (opened.get(keyOf(opening.entry))) throw new KeyUsed(keyOf(opening.entry));
      if (opening.entry.no !== 1 || opening.entry.prev !== NO_ENTRY || tip.get(opening.entry.job))
        throw new Conflict(opening.entry.job, opening.entry.no);
      add(opening);
      putNames(opening.entry.job, names);
    }),
    append: db.transaction((next: Sealed) => {
      const { job, no, prev } = next.entry;
      const last = tip.get(job) as Pick<Row, "no" | "hash"> | undefined;
      if (!last || last.no + 1 !== no || text(last.hash) !== prev) throw new Conflict(job, no);
      if (byKey.get(job, keyOf(next.entry))) throw new KeyUsed(keyOf(next.entry));
      add(next);
    }),
    name: db.transaction(putNames),
    read: (job) => (lines.all(job) as Row[]).map(stored),
    keyed: (job, key) => sealed(byKey.get(job, key)),
    openedWith: (key) => sealed(opened.get(key)),
    jobs: () => (first.all() as Row[]).flatMap((row) => listed(sealed(row))),
    names: (job) =>
      Object.fromEntries((named.all(job) as { person: Uint8Array; name: Uint8Array }[]).map((n) => [text(n.person), text(n.name)])),
    close: () => {
      // One file at rest, and the lock let go at once: open statements would hold it until they are collected.
      for (const pragma of ["journal_mode = DELETE", "locking_mode = NORMAL"]) db.pragma(pragma);
      tip.get("");
      db.close();
    },
  };
}
