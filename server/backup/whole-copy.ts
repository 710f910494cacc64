import { chmodSync, existsSync, mkdtempSync, realpathSync, rmSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import type Sqlite from "better-sqlite3";
import Database from "libsql";
import type { HouseVerdict } from "../../machines/record/verify-house.ts";
import type { Words } from "../../views/text/words.ts";
import { header, LOGS, logAlone, wrongInside } from "../journal/check-file.ts";
import { closeDatabase } from "../journal/data-file.ts";
import { type JobVerdict, verifyHouseIn, verifyJobsIn } from "../verify-records.ts";
import { copyRunning } from "./copy-running.ts";
import { syncToDisk } from "./place.ts";
import { isCode, Refused, reasonOf } from "./refused.ts";
import { refuseWithoutRoom } from "./room.ts";

/** A copy of a data file: one file at rest, sound, on disk. Whether its jobs hold is in `jobs`, the oldest first, and in its house stream. */
export type WholeCopy = {
  readonly file: string;
  readonly bytes: number;
  readonly jobs: readonly JobVerdict[];
  readonly house: HouseVerdict;
};

/** What is copied, and what is said where it cannot be. `spareBytes` must stay free on its disk, for a server that writes there. */
export type Source = { readonly file: string; readonly says: Words["backup" | "restore"]["source"]; readonly spareBytes: number };

/**
 * Makes a whole copy of a data file in a folder of its own beside `place`, gives it to `use`, which may move it away, and
 * removes the folder. The file may be in use, or lie as a killed server left it; no byte of it changes. Throws Refused, and
 * what the system and SQLite say.
 */
export function withCopy<T>(source: Source, place: string, use: (copy: WholeCopy) => T): T {
  const from = lookAt(source);
  const folder = dirname(place);
  refuseWithoutRoom(folder, from, source.spareBytes);
  const made = mkdtempSync(`${place}.new-`);
  try {
    const file = join(made, "data");
    copyRunning(from, file);
    settle(file, source);
    const problem = wrongInside(file, source.file, source.says);
    if (problem) throw new Refused(problem);
    const [jobs, house] = [verifyJobsIn(file), verifyHouseIn(file)];
    syncToDisk(file);
    return use({ file, bytes: statSync(file).size, jobs, house });
  } finally {
    rmSync(made, { recursive: true, force: true });
  }
}

/** The real path of what is copied, beside which its log lies. Refuses what is none of ours before any of it is copied. */
function lookAt({ file, says }: Source): string {
  try {
    const log = logAlone(file);
    if (!existsSync(file)) throw new Refused(log ? says.logAlone(file, log) : says.missing(file));
    const stat = statSync(file);
    if (!stat.isFile()) throw new Refused(says.notAFile(file));
    if (stat.size === 0) throw new Refused(says.empty(file));
    if (header(file) !== "SQLite format 3\0") throw new Refused(says.notOurs(file));
    return realpathSync(file);
  } catch (error) {
    if (error instanceof Refused) throw error;
    throw new Refused(says.unreadable(file, reasonOf(error)));
  }
}

/** Moves what its log holds into the copy, so that it is one file. Nothing waits for the disk here: that is done once, at the end. */
function settle(file: string, source: Source) {
  // What was copied from a disk that is read-only is ours now.
  for (const part of ["", ...LOGS]) if (existsSync(file + part)) chmodSync(file + part, statSync(file + part).mode | 0o600);
  const db = new Database(file) as unknown as Sqlite.Database;
  try {
    for (const pragma of ["locking_mode = EXCLUSIVE", "synchronous = OFF", "journal_mode = DELETE"]) db.pragma(pragma);
  } catch (error) {
    if (isCode(error, "SQLITE_CORRUPT") || isCode(error, "SQLITE_NOTADB")) throw new Refused(source.says.damaged(source.file));
    throw error;
  } finally {
    closeDatabase(db);
  }
  const left = logAlone(file);
  if (left) throw new Error(`${left} is left`);
}
