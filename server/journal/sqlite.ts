import type Sqlite from "better-sqlite3";
import Database from "libsql";
import type { PersonId } from "../../machines/install/ids.ts";
import { type JobId, keyOf, NO_ENTRY, type Sealed } from "../../machines/record/entry.ts";
import { foldsIn } from "./folds.ts";
import { Conflict, type Journal, KeyUsed, type Listed } from "./journal.ts";
import { as, LINE, type Row, sealed, stored, text } from "./rows.ts";
import { APPLICATION_ID, LAYOUT, TABLES } from "./tables.ts";
import { tentsIn } from "./tents.ts";

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
  const value = (query: string) => Number(Object.values(db.prepare(query).get() as object)[0]);
  if (value("SELECT count(*) FROM sqlite_schema") === 0)
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

  const folds = foldsIn(db);
  db.transaction(folds.settle)();

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
      folds.open(opening);
      putNames(opening.entry.job, names);
    }),
    append: db.transaction((next: Sealed) => {
      const { job, no, prev } = next.entry;
      const last = tip.get(job) as Pick<Row, "no" | "hash"> | undefined;
      if (!last || last.no + 1 !== no || text(last.hash) !== prev) throw new Conflict(job, no);
      if (byKey.get(job, keyOf(next.entry))) throw new KeyUsed(keyOf(next.entry));
      add(next);
      folds.follow(next);
    }),
    name: db.transaction(putNames),
    read: (job) => (lines.all(job) as Row[]).map(stored),
    keyed: (job, key) => sealed(byKey.get(job, key)),
    openedWith: (key) => sealed(opened.get(key)),
    jobs: () => (first.all() as Row[]).flatMap((row) => listed(sealed(row))),
    folds: folds.list,
    refold: db.transaction(folds.refold),
    names: (job) =>
      Object.fromEntries((named.all(job) as { person: Uint8Array; name: Uint8Array }[]).map((n) => [text(n.person), text(n.name)])),
    catalog: tentsIn(db),
    close: () => {
      // One file at rest, and the lock let go at once: open statements would hold it until they are collected.
      for (const pragma of ["journal_mode = DELETE", "locking_mode = NORMAL"]) db.pragma(pragma);
      tip.get("");
      db.close();
    },
  };
}
