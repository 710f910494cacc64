import type Sqlite from "better-sqlite3";
import type { Loss } from "../../machines/record/storage.ts";
import { NotWritten } from "./journal.ts";
import type { FileWatch } from "./watch-file.ts";

/**
 * Runs writes in a transaction of their own, on disk when it returns. Throws what `write` throws, or NotWritten; then nothing
 * of it is there. What is written counts once `watch` has looked at the file: what went into one that nobody will find again
 * is lost. Into a lost file nothing is written.
 */
export function transactionsIn(db: Sqlite.Database, file: string, watch: Pick<FileWatch, "lost" | "look">) {
  const refuseIf = (how: Loss | null) => {
    if (how) throw new NotWritten({ why: "lost", place: file, how });
  };
  return (write: () => void): void => {
    try {
      refuseIf(watch.lost());
      db.exec("BEGIN IMMEDIATE");
      write();
      db.exec("COMMIT");
      refuseIf(watch.look());
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
    const how = watch.look();
    return new NotWritten(how ? { why: "lost", place: file, how } : { why: "failed", place: file, said: message });
  }
}
