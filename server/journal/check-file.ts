import { accessSync, closeSync, constants, copyFileSync, existsSync, mkdtempSync, openSync, readSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import type Sqlite from "better-sqlite3";
import Database from "libsql";
import type { Words } from "../../views/text/words.ts";
import { start } from "../terminal.ts";
import { text } from "./rows.ts";
import { APPLICATION_ID, LAYOUT, LAYOUTS } from "./tables.ts";

/** What SQLite keeps beside a data file while it is open, and leaves there when it is killed: entries not yet moved into the file. */
export const LOGS = ["-wal", "-journal"] as const;

/**
 * What is wrong with a data file, in one sentence, or `null`. Changes no byte of it and makes nothing beside it. Throws
 * where the file cannot be read, or written where that is wanted.
 */
export function whatIsWrong(file: string, wanted: "reading" | "writing" = "writing"): string | null {
  const stat = statSync(file);
  if (!stat.isFile()) return start.notAFile(file);
  if (stat.size === 0) return start.emptyFile(file);
  accessSync(file, wanted === "writing" ? constants.R_OK | constants.W_OK : constants.R_OK);
  // Asked before anything is read: a file that somebody is writing may read as damaged, and closing a handle of our own
  // would let go of the locks that this process holds on it (POSIX).
  if (inUse(file)) return start.inUse(file);
  if (header(file) !== "SQLite format 3\0") return start.notOurs(file);
  return readable(file, (name) => wrongInside(name, file));
}

/** Calls `look` with a name under which the file, which nobody holds, can be opened without a byte of it being changed. */
export function readable<T>(file: string, look: (name: string) => T): T {
  const logs = LOGS.filter((log) => existsSync(file + log));
  // At rest it is read in place; `immutable` makes SQLite read it and nothing more.
  if (logs.length === 0) return look(uri(file, "immutable=1"));
  // After a kill the log is part of the data, and SQLite can only read the two together by writing: in a copy.
  const folder = mkdtempSync(join(tmpdir(), "ridgecall-"));
  try {
    for (const part of ["", ...logs]) copyFileSync(file + part, join(folder, `data${part}`));
    return look(join(folder, "data"));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The name of a log that lies where its data file is missing, or `null`. SQLite would throw it away with the entries in it. */
export const logAlone = (file: string): string | null => LOGS.map((log) => file + log).find((log) => existsSync(log)) ?? null;

const uri = (file: string, query: string) => `${pathToFileURL(resolve(file)).href}?${query}`;
const codeOf = (error: unknown) => (error as { code?: unknown }).code;

/** Asks for a reader's lock, which the writer's lock excludes. Read-only both ways, so that a log is not replayed here. */
export function inUse(file: string): boolean {
  const db = new Database(uri(file, "mode=ro&readonly_shm=1")) as unknown as Sqlite.Database;
  try {
    db.prepare("SELECT 1 FROM sqlite_schema").get();
    return false;
  } catch (error) {
    return codeOf(error) === "SQLITE_BUSY";
  } finally {
    db.close();
  }
}

/**
 * What is wrong inside of a file that may be opened as `readable` and is called `file`, in one sentence of `says`, or `null`:
 * whether its pages hang together, it is ours, its layout is known, and its tables are those of that layout. Throws what else SQLite says.
 */
export function wrongInside(
  readable: string,
  file: string,
  says: Pick<Words["start"], "damaged" | "notOurs" | "newer"> = start,
): string | null {
  const db = new Database(readable) as unknown as Sqlite.Database;
  const value = (query: string) => Object.values(db.prepare(query).get() as object)[0] as string | number;
  try {
    // Not quick_check: that passes a spoiled index, which hides entries. Compared in SQL, as what it says of a damaged file may
    // not be UTF-8, and on such text libsql 0.5.29 ends the process.
    if (value("SELECT integrity_check = 'ok' FROM pragma_integrity_check LIMIT 1") !== 1) return says.damaged(file);
    if (value("PRAGMA application_id") !== APPLICATION_ID) return says.notOurs(file);
    const layout = Number(value("PRAGMA user_version"));
    if (layout > LAYOUT) return says.newer(file, layout, LAYOUT);
    return layout >= 1 && hasTablesOf(layout, db) ? null : says.damaged(file);
  } catch (error) {
    if (codeOf(error) === "SQLITE_CORRUPT" || codeOf(error) === "SQLITE_NOTADB") return says.damaged(file);
    throw error;
  } finally {
    db.close();
  }
}

type Made = { readonly name: string; readonly sql: string };

/**
 * How tables and indexes were made, to the letter: one bent letter in there is another table. So it is with what counts findings, as
 * it runs with every write; other triggers are left to who looks at the record.
 */
function madeIn(db: Sqlite.Database): Made[] {
  const made = db.prepare(
    "SELECT CAST(name AS BLOB) AS name, CAST(sql AS BLOB) AS sql FROM sqlite_schema WHERE (type IN ('table', 'index') OR (type = 'trigger' AND tbl_name IN ('findings', 'measures'))) AND sql IS NOT NULL ORDER BY name",
  );
  return (made.all() as { name: Uint8Array; sql: Uint8Array }[]).map(({ name, sql }) => ({ name: text(name), sql: text(sql) }));
}
/** As the program makes them in a layout. */
function ours(layout: number): Made[] {
  const db = new Database(":memory:") as unknown as Sqlite.Database;
  db.exec(LAYOUTS.slice(0, layout).join(""));
  const made = madeIn(db);
  db.close();
  return made;
}
/** Whether a file has the tables of a layout, none of a later one, and whatever else somebody put in it. */
function hasTablesOf(layout: number, db: Sqlite.Database): boolean {
  const names = new Set(ours(LAYOUT).map(({ name }) => name));
  const told = (made: readonly Made[]) => JSON.stringify(made.filter(({ name }) => names.has(name)));
  return told(madeIn(db)) === told(ours(layout));
}

/** The sixteen bytes that say what a file is. */
export function header(file: string): string {
  const fd = openSync(file, "r");
  try {
    const bytes = Buffer.alloc(16);
    readSync(fd, bytes, 0, 16, 0);
    return bytes.toString("latin1");
  } finally {
    closeSync(fd);
  }
}
