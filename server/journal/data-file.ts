import type Sqlite from "better-sqlite3";
import Database from "libsql";
import { APPLICATION_ID, LAYOUT, LAYOUTS } from "./tables.ts";

/** Opens a data file, or one in memory for `:memory:`, with our tables in it; makes what is not there. */
export function openDatabase(file: string): Sqlite.Database {
  const db = new Database(file) as unknown as Sqlite.Database;
  try {
    prepare(db);
    return db;
  } catch (error) {
    db.close();
    throw error;
  }
}

function prepare(db: Sqlite.Database) {
  // At every open: a WAL file reopened without them runs at NORMAL and can lose the last entries on power loss. What is deleted
  // is overwritten: an erased name is gone from the file.
  for (const pragma of [
    "locking_mode = EXCLUSIVE",
    "journal_mode = WAL",
    "synchronous = FULL",
    "foreign_keys = ON",
    "busy_timeout = 0",
    "secure_delete = ON",
  ])
    db.pragma(pragma);
  const value = (query: string) => Number(Object.values(db.prepare(query).get() as object)[0]);
  const has = value("PRAGMA user_version");
  if (has === LAYOUT) db.exec("BEGIN IMMEDIATE; COMMIT;");
  // A new file is of no layout yet; an older one gains what it has not. Whole or not at all, and once.
  else
    db.exec(
      `BEGIN IMMEDIATE; ${LAYOUTS.slice(has).join("")} PRAGMA application_id = ${APPLICATION_ID}; PRAGMA user_version = ${LAYOUT}; COMMIT;`,
    );
}

/** Closes it: one file at rest, and the lock let go at once. Open statements would hold it until they are collected. Never throws. */
export function closeDatabase(db: Sqlite.Database): void {
  try {
    for (const pragma of ["journal_mode = DELETE", "locking_mode = NORMAL"]) db.pragma(pragma);
    db.prepare("SELECT 1 FROM sqlite_schema").get();
  } catch {
    // Without room the log stays beside the file, with the last entries in it, and is read when the file is next opened.
  }
  db.close();
}
