import type Sqlite from "better-sqlite3";
import Database from "libsql";
import type { JobId } from "../../machines/record/entry.ts";
import type { People } from "../../machines/record/people.ts";
import { readable } from "./check-file.ts";
import type { Stored } from "./journal.ts";
import { as, LINE, type Row, stored, text } from "./rows.ts";

type NameRow = { person: Uint8Array; name: Uint8Array; salt: Uint8Array };
/** A job as it lies in a file: its lines, and the people beside them; `null` where the file is from before names were committed to. */
export type JobInFile = { readonly job: JobId; readonly lines: readonly Stored[]; readonly people: People | null };

/** Calls `see` for each job of a sound data file, the oldest first. Changes no byte of the file. */
export function eachJobIn(file: string, see: (found: JobInFile) => void): void {
  readable(file, (name) => {
    const db = new Database(name) as unknown as Sqlite.Database;
    try {
      const jobs = db.prepare(`SELECT ${as("job")} FROM entries GROUP BY job ORDER BY min(seq)`).all() as Pick<Row, "job">[];
      const lines = db.prepare(`${LINE} WHERE job = ? ORDER BY no`);
      const isSalted = db.prepare("SELECT 1 FROM pragma_table_info('names') WHERE name = 'salt'").get() !== undefined;
      const names = isSalted ? db.prepare(`SELECT ${as("person")}, ${as("name")}, ${as("salt")} FROM names WHERE job = ?`) : null;
      const peopleOf = (job: string) =>
        names && Object.fromEntries((names.all(job) as NameRow[]).map((n) => [text(n.person), { name: text(n.name), salt: text(n.salt) }]));
      for (const { job } of jobs) {
        const id = text(job);
        see({ job: id, lines: (lines.all(id) as Row[]).map(stored), people: peopleOf(id) });
      }
    } finally {
      db.close();
    }
  });
}
