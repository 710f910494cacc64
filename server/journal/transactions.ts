import type Sqlite from "better-sqlite3";
import type { Loss } from "../../machines/record/storage.ts";
import { NotWritten } from "./journal.ts";

/**
 * Runs writes in a transaction of their own, on disk when it returns. Throws what `write` throws, or NotWritten; then nothing
 * of it is there. `look` says what became of the file: it is asked before anything is written, and once more before it counts
 * as written, because what goes into a file that nobody will find again is lost.
 */
export function transactionsIn(db: Sqlite.Database, file: string, look: () => Loss | null) {
  const refuseIfLost = () => {
    const how = look();
    if (how) throw new NotWritten({ why: "lost", place: file, how });
  };
  return (write: () => void): void => {
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
