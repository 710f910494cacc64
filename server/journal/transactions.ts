import type Sqlite from "better-sqlite3";
import { NotWritten } from "./journal.ts";
import type { FileWatch } from "./watch-file.ts";

/**
 * Runs writes in a transaction of their own, on disk when it returns. Throws what `write` throws, or NotWritten; then nothing
 * of it is there. The file is looked at before anything is written, as a log that was cut short grows again; and once more
 * before that counts as written, as what went into a file that nobody will find again is lost.
 */
export function transactionsIn(db: Sqlite.Database, file: string, { look }: Pick<FileWatch, "look">) {
  const refuseIfLost = () => {
    const how = look();
    if (how) throw new NotWritten({ why: "lost", place: file, how });
  };
  return (write: () => void): void => {
    // Asked of a database that was let go, libsql 0.5.29 ends the process.
    if (!db.open) throw new Error(`${file} is closed; nothing may be written after that`);
    try {
      refuseIfLost();
      db.exec("BEGIN IMMEDIATE");
      write();
      db.exec("COMMIT");
      refuseIfLost();
    } catch (error) {
      // A full disk has SQLite roll back by itself.
      if (db.inTransaction) db.exec("ROLLBACK");
      throw notWritten(error);
    }
  };

  /** What SQLite or the system says, as a failure of this file; what the write itself threw, as it is. */
  function notWritten(error: unknown): unknown {
    const { code, message } = error as { code?: unknown; message: string };
    if (typeof code !== "string") return error;
    if (code === "SQLITE_FULL" || code === "ENOSPC") return new NotWritten({ why: "full", place: file });
    const how = look();
    return new NotWritten(how ? { why: "lost", place: file, how } : { why: "failed", place: file, said: message });
  }
}
