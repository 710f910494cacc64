import type Sqlite from "better-sqlite3";
import { NO_ENTRY } from "../../machines/record/entry.ts";
import type { Line } from "../../machines/record/verify-chain.ts";
import { HOUSE, type HouseStore } from "./house.ts";
import { Conflict } from "./journal.ts";
import { as, text } from "./rows.ts";

type Bytes = Uint8Array;
type HouseRow = { no: number; prev: Bytes; hash: Bytes; bytes: Bytes };
type TipRow = { job: Bytes; no: number; hash: Bytes };

const LINE = `SELECT no, ${as("prev")}, ${as("hash")}, bytes FROM house`;
const lineOf = ({ no, prev, hash, bytes }: HouseRow): Line => ({
  no,
  hash: text(hash),
  bytes: new Uint8Array(bytes),
  filed: { prev: text(prev) },
});

/** The house stream as it lies in a file. */
export const houseLinesIn = (db: Sqlite.Database): Line[] => (db.prepare(`${LINE} ORDER BY no`).all() as HouseRow[]).map(lineOf);

/** The house stream of a file. `run` does a write in a transaction. */
export function houseIn(db: Sqlite.Database, run: (write: () => void) => Promise<void>): HouseStore {
  const last = db.prepare(`${LINE} ORDER BY no DESC LIMIT 1`);
  const insert = db.prepare("INSERT INTO house (no, prev, hash, bytes) VALUES (?, ?, ?, ?)");
  // Written with each entry, and put right when the file is opened.
  const tips = db.prepare(`SELECT ${as("job")}, no, ${as("hash")} FROM folds`);
  return {
    lines: async () => houseLinesIn(db),
    last: async () => {
      const row = last.get() as HouseRow | undefined;
      return row ? lineOf(row) : null;
    },
    tips: async () => (tips.all() as TipRow[]).map(({ job, no, hash }) => ({ job: text(job), no, hash: text(hash) })),
    append: ({ entry: { no, prev }, hash, bytes }) =>
      run(() => {
        const before = last.get() as HouseRow | undefined;
        if (no !== (before?.no ?? 0) + 1 || prev !== (before ? text(before.hash) : NO_ENTRY)) throw new Conflict(HOUSE, no);
        insert.run(no, prev, hash, Buffer.from(bytes));
      }),
  };
}
