import type Sqlite from "better-sqlite3";
import Database from "libsql";
import type { PersonId } from "../../machines/install/brief.ts";
import { type Hash, type JobId, keyOf, NO_ENTRY, type Sealed, unseal } from "../../machines/record/entry.ts";
import { Conflict, type Journal, KeyUsed, type Listed, type Stored } from "./journal.ts";

/** Marks a data file as ours: "RdgC". */
export const APPLICATION_ID = 0x52646743;
/** The layout of the tables. A file with a higher one was written by a newer program. */
export const LAYOUT = 1;

const TABLES = `
  CREATE TABLE entries (
    seq INTEGER PRIMARY KEY, job TEXT NOT NULL, no INTEGER NOT NULL, prev TEXT NOT NULL, hash TEXT NOT NULL UNIQUE,
    key TEXT NOT NULL, bytes BLOB NOT NULL, UNIQUE (job, no), UNIQUE (job, key)) STRICT;
  CREATE UNIQUE INDEX openings ON entries (key) WHERE no = 1;
  CREATE TRIGGER entries_stay BEFORE UPDATE ON entries BEGIN SELECT RAISE(ABORT, 'entries are never changed'); END;
  CREATE TRIGGER entries_last BEFORE DELETE ON entries BEGIN SELECT RAISE(ABORT, 'entries are never deleted'); END;
  CREATE TABLE names (job TEXT NOT NULL, person TEXT NOT NULL, name TEXT NOT NULL, PRIMARY KEY (job, person)) STRICT;
`;

type Row = { no: number; hash: Hash; bytes: Uint8Array };
const stored = (r: Row): Stored => ({ no: r.no, hash: r.hash, bytes: new Uint8Array(r.bytes) });
const sealed = (r: Row): Sealed => unseal(new Uint8Array(r.bytes), r.hash);

/** A journal in one SQLite file, or in memory for `:memory:`. Call `openJournal` for files: it looks before it touches. */
export function sqliteJournal(file: string): Journal {
  const db = new Database(file) as unknown as Sqlite.Database;
  // At every open: a WAL file reopened without them runs at NORMAL and can lose the last entries on power loss.
  for (const pragma of ["locking_mode = EXCLUSIVE", "journal_mode = WAL", "synchronous = FULL", "foreign_keys = ON", "busy_timeout = 0"])
    db.pragma(pragma);
  if ((db.prepare("SELECT count(*) AS n FROM sqlite_schema").get() as { n: number }).n === 0)
    db.exec(`BEGIN IMMEDIATE; ${TABLES} PRAGMA application_id = ${APPLICATION_ID}; PRAGMA user_version = ${LAYOUT}; COMMIT;`);
  else db.exec("BEGIN IMMEDIATE; COMMIT;");
  const insert = db.prepare("INSERT INTO entries (job, no, prev, hash, key, bytes) VALUES (?, ?, ?, ?, ?, ?)");
  const tip = db.prepare("SELECT no, hash FROM entries WHERE job = ? ORDER BY no DESC LIMIT 1");
  const byKey = db.prepare("SELECT no, hash, bytes FROM entries WHERE job = ? AND key = ?");
  const opened = db.prepare("SELECT no, hash, bytes FROM entries WHERE key = ? AND no = 1");
  const lines = db.prepare("SELECT no, hash, bytes FROM entries WHERE job = ? ORDER BY no");
  const first = db.prepare("SELECT no, hash, bytes FROM entries WHERE no = 1 ORDER BY seq DESC");
  const last = db.prepare("SELECT no, hash, bytes FROM entries WHERE job = ? ORDER BY no DESC LIMIT 1");
  const named = db.prepare("SELECT person, name FROM names WHERE job = ?");
  const putName = db.prepare(
    "INSERT INTO names (job, person, name) VALUES (?, ?, ?) ON CONFLICT (job, person) DO UPDATE SET name = excluded.name",
  );

  const add = ({ entry, hash, bytes }: Sealed) => insert.run(entry.job, entry.no, entry.prev, hash, keyOf(entry), Buffer.from(bytes));
  const putNames = (job: JobId, names: Readonly<Record<PersonId, string>>) => {
    for (const [person, name] of Object.entries(names)) putName.run(job, person, name);
  };

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
      const before = tip.get(job) as { no: number; hash: Hash } | undefined;
      if (!before || before.no + 1 !== no || before.hash !== prev) throw new Conflict(job, no);
      if (byKey.get(job, keyOf(next.entry))) throw new KeyUsed(keyOf(next.entry));
      add(next);
    }),
    name: db.transaction(putNames),
    read: (job) => (lines.all(job) as Row[]).map(stored),
    keyed: (job, key) => one(byKey.get(job, key)),
    openedWith: (key) => one(opened.get(key)),
    jobs: () => (first.all() as Row[]).map(sealed).map((opening): Listed => ({ opening, tip: sealed(last.get(opening.entry.job) as Row) })),
    names: (job) => Object.fromEntries((named.all(job) as { person: string; name: string }[]).map((n) => [n.person, n.name])),
    close: () => {
      // One file at rest, and the lock let go at once: open statements would hold it until they are collected.
      for (const pragma of ["journal_mode = DELETE", "locking_mode = NORMAL"]) db.pragma(pragma);
      tip.get("");
      db.close();
    },
  };
}

const one = (row: unknown): Sealed | null => (row ? sealed(row as Row) : null);
