import { keyOf, type Sealed, unseal } from "../../machines/record/entry.ts";
import type { Stored } from "./journal.ts";

const utf8 = new TextDecoder();
/** A column of text, read as bytes and decoded here: on text that is not UTF-8 (one flipped byte is enough) libsql 0.5.29 ends the process. */
export const as = (column: string) => `CAST(${column} AS BLOB) AS ${column}`;
export const text = (bytes: Uint8Array): string => utf8.decode(bytes);

/** JSON of a column; `null` where it no longer is any. */
export function parsed(bytes: Uint8Array): unknown {
  try {
    return JSON.parse(text(bytes));
  } catch {
    return null;
  }
}

/** A line of the table of entries. */
export const LINE = `SELECT ${as("job")}, no, ${as("prev")}, ${as("key")}, ${as("hash")}, bytes FROM entries`;
export type Row = { job: Uint8Array; no: number; prev: Uint8Array; key: Uint8Array; hash: Uint8Array; bytes: Uint8Array };

export const stored = (r: Row): Stored => ({
  no: r.no,
  hash: text(r.hash),
  bytes: new Uint8Array(r.bytes),
  filed: { prev: text(r.prev), key: text(r.key) },
});

/** A line as an entry; null where its bytes are not those that were hashed, or its columns say something else than its bytes. */
export function sealed(row: unknown): Sealed | null {
  if (!row) return null;
  const { job, no, prev, key, hash, bytes } = row as Row;
  try {
    const line = unseal(new Uint8Array(bytes), text(hash));
    const { entry } = line;
    return entry.job === text(job) && entry.no === no && entry.prev === text(prev) && keyOf(entry) === text(key) ? line : null;
  } catch {
    return null;
  }
}
