import type Sqlite from "better-sqlite3";
import Database from "libsql";
import type { JobId } from "../../machines/record/entry.ts";
import { readable } from "./check-file.ts";
import type { Stored } from "./journal.ts";
import { as, LINE, type Row, stored, text } from "./rows.ts";

/** Calls `see` for each job of a sound data file, the oldest first, with all its lines. Changes no byte of the file. */
export function eachJobIn(file: string, see: (job: JobId, lines: readonly Stored[]) => void): void {
  readable(file, (name) => {
    const db = new Database(name) as unknown as Sqlite.Database;
    try {
      const jobs = db.prepare(`SELECT ${as("job")} FROM entries GROUP BY job ORDER BY min(seq)`).all() as Pick<Row, "job">[];
      const lines = db.prepare(`${LINE} WHERE job = ? ORDER BY no`);
      for (const { job } of jobs) see(text(job), (lines.all(text(job)) as Row[]).map(stored));
    } finally {
      db.close();
    }
  });
}
