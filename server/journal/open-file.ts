import { closeSync, cpSync, existsSync, mkdtempSync, openSync, readSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type Sqlite from "better-sqlite3";
import Database from "libsql";
import { start } from "../../views/text/en/start.ts";
import type { Journal } from "./journal.ts";
import { APPLICATION_ID, LAYOUT, sqliteJournal } from "./sqlite.ts";

/** The data file cannot be used. The message is one sentence for a person; the file was not touched. */
export class JournalUnusable extends Error {
  constructor(sentence: string) {
    super(sentence);
    this.name = "JournalUnusable";
  }
}

/** Opens a data file, or makes it. An existing one is looked at first, in a copy, so that a damaged file stays as it is. */
export function openJournal(file: string): Journal {
  const problem = existsSync(file) ? whatIsWrong(file) : null;
  if (problem) throw new JournalUnusable(problem);
  try {
    return sqliteJournal(file);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    throw new JournalUnusable(/locked|busy/i.test(why) ? start.inUse(file) : start.cannotOpen(file, why));
  }
}

function whatIsWrong(file: string): string | null {
  const stat = statSync(file);
  if (!stat.isFile()) return start.notAFile(file);
  if (stat.size === 0) return start.emptyFile(file);
  if (header(file) !== "SQLite format 3\0") return start.notOurs(file);
  const copy = mkdtempSync(join(tmpdir(), "ridgecall-"));
  try {
    for (const part of ["", "-wal"]) if (existsSync(file + part)) cpSync(file + part, join(copy, `data${part}`));
    return checkCopy(join(copy, "data"), file);
  } finally {
    rmSync(copy, { recursive: true, force: true });
  }
}

/** Checks the copy, with the entries of a log that a killed server left. */
function checkCopy(copy: string, file: string): string | null {
  let db: Sqlite.Database | null = null;
  try {
    db = new Database(copy) as unknown as Sqlite.Database;
    const one = <T>(pragma: string) => db!.prepare(`PRAGMA ${pragma}`).get() as T;
    const { quick_check } = one<{ quick_check: string }>("quick_check");
    if (quick_check !== "ok") return start.damaged(file);
    if (one<{ application_id: number }>("application_id").application_id !== APPLICATION_ID) return start.notOurs(file);
    const { user_version } = one<{ user_version: number }>("user_version");
    if (user_version > LAYOUT) return start.newer(file, user_version, LAYOUT);
    const tables = db.prepare("SELECT count(*) AS n FROM sqlite_schema WHERE type = 'table' AND name IN ('entries', 'names')").get() as {
      n: number;
    };
    return tables.n === 2 ? null : start.damaged(file);
  } catch {
    return start.damaged(file);
  } finally {
    db?.close();
  }
}

function header(file: string): string {
  const fd = openSync(file, "r");
  try {
    const bytes = Buffer.alloc(16);
    readSync(fd, bytes, 0, 16, 0);
    return bytes.toString("latin1");
  } finally {
    closeSync(fd);
  }
}
