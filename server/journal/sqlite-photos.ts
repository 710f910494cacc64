import type Sqlite from "better-sqlite3";
import type { Photos } from "./photos.ts";
import { as, text } from "./rows.ts";

type Row = { mime: Uint8Array; bytes: Uint8Array };

/** The photos of a file, beside its jobs. `run` does a write in a transaction. */
export function photosIn(db: Sqlite.Database, run: (write: () => void) => Promise<void>): Photos {
  const one = db.prepare(`SELECT ${as("mime")}, bytes FROM photos WHERE job = ? AND hash = ?`);
  const add = db.prepare("INSERT OR IGNORE INTO photos (job, hash, mime, bytes) VALUES (?, ?, ?, ?)");
  return {
    put: (job, hash, { mime, bytes }) => run(() => void add.run(job, hash, mime, Buffer.from(bytes))),
    get: async (job, hash) => {
      const row = one.get(job, hash) as Row | undefined;
      return row ? { mime: text(row.mime), bytes: new Uint8Array(row.bytes) } : null;
    },
  };
}
