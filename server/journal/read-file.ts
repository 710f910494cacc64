import type Sqlite from "better-sqlite3";
import Database from "libsql";
import { type Hash, hashOf } from "../../machines/digest/digest.ts";
import type { JobId } from "../../machines/record/entry.ts";
import type { FiledFollowUp } from "../../machines/record/follow-up.ts";
import type { People } from "../../machines/record/people.ts";
import type { LyingPhoto } from "../../machines/record/photos.ts";
import type { Line } from "../../machines/record/verify-chain.ts";
import type { Kept } from "../../machines/record/verify-house.ts";
import { readable } from "./check-file.ts";
import type { Stored } from "./journal.ts";
import { as, LINE, type Row, stored, text } from "./rows.ts";
import { houseLinesIn } from "./sqlite-house.ts";

type NameRow = { person: Uint8Array; name: Uint8Array; salt: Uint8Array };
type PhotoRow = { hash: Uint8Array; mime: Uint8Array; bytes: Uint8Array };
/**
 * A job as it lies in a file: its lines, and beside them its people, and what lies under the hash of each photo; both `null` where
 * the file is from before names were committed to.
 */
export type JobInFile = {
  readonly job: JobId;
  readonly lines: readonly Stored[];
  readonly people: People | null;
  readonly photos: ReadonlyMap<Hash, LyingPhoto> | null;
};

/** Calls `see` for each job of a sound data file, the oldest first. Changes no byte of the file. */
export function eachJobIn(file: string, see: (found: JobInFile) => void): void {
  readable(file, (name) => {
    const db = new Database(name) as unknown as Sqlite.Database;
    try {
      const jobs = db.prepare(`SELECT ${as("job")} FROM entries GROUP BY job ORDER BY min(seq)`).all() as Pick<Row, "job">[];
      const lines = db.prepare(`${LINE} WHERE job = ? ORDER BY no`);
      const isSalted = db.prepare("SELECT 1 FROM pragma_table_info('names') WHERE name = 'salt'").get() !== undefined;
      const names = isSalted ? db.prepare(`SELECT ${as("person")}, ${as("name")}, ${as("salt")} FROM names WHERE job = ?`) : null;
      const photos = isSalted ? photosOf(db) : () => null;
      const peopleOf = (job: string) =>
        names && Object.fromEntries((names.all(job) as NameRow[]).map((n) => [text(n.person), { name: text(n.name), salt: text(n.salt) }]));
      for (const { job } of jobs) {
        const id = text(job);
        see({ job: id, lines: (lines.all(id) as Row[]).map(stored), people: peopleOf(id), photos: photos(id) });
      }
    } finally {
      db.close();
    }
  });
}

/** What lies under the hash of each photo of a job. One at a time: together they are more than memory should hold. */
function photosOf(db: Sqlite.Database): (job: JobId) => ReadonlyMap<Hash, LyingPhoto> {
  const rows = db.prepare("SELECT rowid AS row FROM photos WHERE job = ?");
  const one = db.prepare(`SELECT ${as("hash")}, ${as("mime")}, bytes FROM photos WHERE rowid = ?`);
  return (job) =>
    new Map(
      (rows.all(job) as { row: number }[]).map(({ row }) => {
        const { hash, mime, bytes } = one.get(row) as PhotoRow;
        return [text(hash), { hash: hashOf(new Uint8Array(bytes)), mime: text(mime) }];
      }),
    );
}

/** Gives the house stream of a sound data file to `see`, with what lies there of each job. An older file has none. Changes no byte. */
export function houseInFile<T>(file: string, see: (lines: readonly Line[], kept: Kept) => T): T {
  return readable(file, (name) => {
    const db = new Database(name) as unknown as Sqlite.Database;
    try {
      const isKept = db.prepare("SELECT 1 FROM sqlite_schema WHERE type = 'table' AND name = 'house'").get() !== undefined;
      const last = db.prepare("SELECT max(no) AS no FROM entries WHERE job = ?");
      const one = db.prepare(`SELECT ${as("hash")} FROM entries WHERE job = ? AND no = ?`);
      return see(isKept ? houseLinesIn(db) : [], (job) => {
        const { no } = last.get(job) as { no: number | null };
        const hashAt = (at: number) => (one.get(job, at) as Pick<Row, "hash"> | undefined)?.hash ?? null;
        return no === null ? null : { entries: no, hashAt: (at) => textOrNull(hashAt(at)) };
      });
    } finally {
      db.close();
    }
  });
}

const textOrNull = (bytes: Uint8Array | null): string | null => (bytes === null ? null : text(bytes));

type FollowUpRow = { no: number; prev: Uint8Array; hash: Uint8Array; key: Uint8Array } & {
  job: Uint8Array;
  kind: Uint8Array;
  entry: number;
  what: Uint8Array;
  bytes: Uint8Array;
};

/** The follow-ups of a sound data file as they lie there, in order. An older file has none. Changes no byte. */
export function followUpsInFile(file: string): FiledFollowUp[] {
  return readable(file, (name) => {
    const db = new Database(name) as unknown as Sqlite.Database;
    try {
      const isKept = db.prepare("SELECT 1 FROM sqlite_schema WHERE type = 'table' AND name = 'followUps'").get() !== undefined;
      const columns = ["prev", "hash", "key", "job", "kind", "what"].map(as).join(", ");
      const rows = isKept ? db.prepare(`SELECT no, entry, bytes, ${columns} FROM followUps ORDER BY no`).all() : [];
      return (rows as FollowUpRow[]).map(({ no, entry, bytes, prev, hash, key, job, kind, what }) => ({
        no,
        entry,
        bytes: new Uint8Array(bytes),
        prev: text(prev),
        hash: text(hash),
        key: text(key),
        job: text(job),
        kind: text(kind),
        is: text(what),
      }));
    } finally {
      db.close();
    }
  });
}
