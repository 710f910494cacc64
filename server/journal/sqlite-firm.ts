import type Sqlite from "better-sqlite3";
import { foldedName } from "./catalog.ts";
import type { Firm } from "./firm.ts";
import { as, parsed, text } from "./rows.ts";

type PersonRow = { name: Uint8Array; role: Uint8Array; onLast: number };

/** What the firm keeps in a file, beside its jobs. `run` does a write in a transaction. */
export function firmIn(db: Sqlite.Database, run: (write: () => void) => Promise<void>): Firm {
  const all = db.prepare(`SELECT ${as("name")}, ${as("role")}, onLast FROM people ORDER BY folded`);
  const nobody = db.prepare("UPDATE people SET onLast = 0");
  const person = db.prepare("INSERT OR REPLACE INTO people (folded, name, role, onLast, at) VALUES (?, ?, ?, 1, ?)");
  const drop = db.prepare("DELETE FROM people WHERE folded = ?");
  const dropOld = db.prepare("DELETE FROM people WHERE at < ?");
  const sheet = db.prepare(`SELECT ${as("sheet")} FROM sheets WHERE tent = ? AND digest = ?`);
  const putSheet = db.prepare("INSERT OR REPLACE INTO sheets (tent, digest, sheet, at) VALUES (?, ?, ?, ?)");
  return {
    people: async () =>
      (all.all() as PersonRow[]).map(({ name, role, onLast }) => ({ name: text(name), role: text(role), onLast: onLast === 1 })),
    sheet: async (tent, digest) => {
      const row = sheet.get(tent, digest) as { sheet: Uint8Array } | undefined;
      return row ? parsed(row.sheet) : null;
    },
    keep: (job) =>
      run(() => {
        nobody.run();
        for (const { name, role } of job.people) person.run(foldedName(name), name, role, job.at);
        if (job.sheet) putSheet.run(job.sheet.tent, job.sheet.digest, JSON.stringify(job.sheet.sheet), job.at);
      }),
    forget: (name) => run(() => void drop.run(foldedName(name))),
    forgetBefore: (at) => run(() => void dropOld.run(at)),
  };
}
