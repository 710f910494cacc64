import { createHash } from "node:crypto";
import type Sqlite from "better-sqlite3";
import type { EntryNo } from "../../machines/install/ids.ts";
import type { Entry, JobId, Sealed } from "../../machines/record/entry.ts";
import { FOLD_VERSION, type Fold, foldAll, foldIn, openFold } from "../../machines/record/findings.ts";
import { frozeIn } from "../../machines/record/in-force.ts";
import { addOversight, openOversight, overseeAll } from "../../machines/record/oversight/oversight.ts";
import { verifyChain } from "../../machines/record/verify-chain.ts";
import type { JobSummary } from "./journal.ts";
import { keptOversightIn } from "./kept-oversight.ts";
import { as, LINE, type Row, sealed, stored, text } from "./rows.ts";

type FoldRow = { job: Uint8Array; no: number; hash: Uint8Array; version: number; body: Uint8Array | null };
const COLUMNS = `${as("job")}, no, ${as("hash")}, version, body`;
/** Scripts kept in memory, so that an answer's limit is not read from the file each time. */
const MAX_FROZEN = 32;

/** The folds of all jobs, and what is looked at over all of them, beside their entries in the same file. Its writes belong into the transaction that adds the entry. */
export function foldsIn(db: Sqlite.Database) {
  const get = db.prepare(`SELECT ${COLUMNS} FROM folds WHERE job = ?`);
  const put = db.prepare(
    "INSERT INTO folds (job, no, hash, version, body) VALUES (?, ?, ?, ?, ?) ON CONFLICT (job) DO UPDATE SET no = excluded.no, hash = excluded.hash, version = excluded.version, body = excluded.body",
  );
  const all = db.prepare(
    `SELECT ${COLUMNS} FROM folds ORDER BY (SELECT seq FROM entries WHERE entries.job = folds.job AND entries.no = 1) DESC`,
  );
  const one = db.prepare(`${LINE} WHERE job = ? AND no = ?`);
  const lines = db.prepare(`${LINE} WHERE job = ? ORDER BY no`);
  const tips = db.prepare(`SELECT ${as("job")}, max(no) AS no FROM entries GROUP BY job`);
  const strays = db.prepare("DELETE FROM folds WHERE NOT EXISTS (SELECT 1 FROM entries WHERE entries.job = folds.job)");

  const oversight = keptOversightIn(db);

  const frozen = new Map<string, Entry>();
  /** An earlier entry of a job. Those that froze a script are kept: entries never change. */
  const entryOf = (job: JobId, no: EntryNo): Entry | null => {
    const name = `${no} ${job}`;
    const entry = frozen.get(name) ?? sealed(one.get(job, no))?.entry ?? null;
    if (entry && frozeIn(entry)) {
      frozen.delete(name);
      frozen.set(name, entry);
      if (frozen.size > MAX_FROZEN) frozen.delete(frozen.keys().next().value!);
    }
    return entry;
  };

  const write = (job: JobId, no: EntryNo, hash: string, fold: Fold | null) =>
    put.run(job, no, hash, FOLD_VERSION, fold && Buffer.from(JSON.stringify(fold)));

  /** The first entry's. */
  function open({ entry, hash }: Sealed) {
    const opening = entry.kind === "opening" ? entry : null;
    write(entry.job, entry.no, hash, opening && orNull(() => openFold(opening)));
    const overseen = opening && orNull(() => openOversight(opening));
    const tip = { job: entry.job, no: entry.no, hash };
    if (overseen) oversight.follow(tip, overseen);
    else oversight.replace(tip, null);
  }

  /** The next entry's. Where what is stored does not fit the entry before, it is rebuilt: nothing ever stops an entry. */
  function follow({ entry, hash }: Sealed) {
    const { job, no } = entry;
    const kept = get.get(job) as FoldRow | undefined;
    const before = oversight.stateAt({ job, no: no - 1, hash: entry.prev });
    if (entry.kind !== "command" || !kept || !before || !fits(kept, no - 1, entry.prev)) return refold(job);
    const fold = bodyOf(kept);
    if (kept.body && !fold) return refold(job);
    const tip = { job, no, hash };
    if (fold && fold.mismatch !== null) {
      // Behind an entry that does not fit nothing more is found, and what was found before it stays.
      write(job, no, hash, fold);
      return oversight.stay(tip, before.state);
    }
    const earlier = (n: EntryNo) => entryOf(job, n);
    const next = fold && orNull(() => foldIn(fold, entry, earlier));
    write(job, no, hash, next?.fold ?? null);
    const { state } = before;
    const overseen =
      fold && next && state && orNull(() => addOversight(state, { entry, flags: next.flags, folds: [fold, next.fold] }, earlier));
    if (overseen) oversight.follow(tip, overseen);
    else oversight.replace(tip, null);
  }

  /** Rebuilt from the entries, and written where it differs. */
  function refold(job: JobId) {
    const rows = (lines.all(job) as Row[]).map(stored);
    const tip = rows.at(-1);
    if (!tip) return;
    const chain = verifyChain(rows);
    const mismatch = chain.holds ? null : chain.firstMismatch;
    const overseen = orNull(() => overseeAll(chain.entries));
    const fold = overseen ? { ...overseen.fold, mismatch } : orNull(() => foldAll(chain.entries, mismatch).fold);
    const kept = get.get(job) as FoldRow | undefined;
    const same = kept && fits(kept, tip.no, tip.hash) && (kept.body ? text(kept.body) : null) === (fold && JSON.stringify(fold));
    if (!same) write(job, tip.no, tip.hash, fold);
    oversight.replace({ job, no: tip.no, hash: tip.hash }, overseen);
  }

  /** Whether a stored fold is that of the last entry, and the opening is still the one that it was made from. */
  function stands(job: JobId, no: EntryNo): boolean {
    const kept = get.get(job) as FoldRow | undefined;
    const tip = one.get(job, no) as Row | undefined;
    const opening = one.get(job, 1) as Row | undefined;
    if (!kept || !tip) return false;
    const hash = text(tip.hash);
    return fits(kept, no, hash) && bodyOf(kept) !== null && oversight.stateAt({ job, no, hash }) !== null && isWhole(opening);
  }

  /** Every job once, when the file is opened: those whose fold is missing, old or spoiled get theirs again. */
  function settle() {
    strays.run();
    for (const tip of tips.all() as Pick<Row, "job" | "no">[]) if (!stands(text(tip.job), tip.no)) refold(text(tip.job));
    oversight.settle();
  }

  const summaryOf = (row: FoldRow): JobSummary => ({ job: text(row.job), entries: row.no, tip: text(row.hash), fold: bodyOf(row) });
  const list = (): JobSummary[] => (all.all() as FoldRow[]).map(summaryOf);
  const of = (job: JobId): JobSummary | null => {
    const row = get.get(job) as FoldRow | undefined;
    return row ? summaryOf(row) : null;
  };

  return { open, follow, refold, settle, list, of };
}

const fits = (row: FoldRow, no: EntryNo, hash: string) => row.version === FOLD_VERSION && row.no === no && text(row.hash) === hash;
/** By the system's own SHA-256: this is asked of every job when the file is opened. */
const isWhole = (row: Row | undefined) =>
  row !== undefined && createHash("sha256").update(new Uint8Array(row.bytes)).digest("hex") === text(row.hash);

function bodyOf({ body, version }: FoldRow): Fold | null {
  return body && version === FOLD_VERSION ? orNull(() => JSON.parse(text(body)) as Fold) : null;
}

function orNull<T>(make: () => T): T | null {
  try {
    return make();
  } catch {
    return null;
  }
}
