import type Sqlite from "better-sqlite3";
import type { JobId, Sealed } from "../../machines/record/entry.ts";
import type { Finding } from "../../machines/record/oversight/finding.ts";
import type { Measure } from "../../machines/record/oversight/measure.ts";
import { OVERSIGHT_VERSION, type Overseen, type OverseenJob, type OversightState } from "../../machines/record/oversight/oversight.ts";
import { FINDING_TALLIES, MEASURE_TALLIES } from "./oversight-tables.ts";
import { as, parsed, text } from "./rows.ts";

type Bytes = Uint8Array;
type FindingRow = { kind: Bytes; entry: number; body: Bytes };
type MeasureRow = { what: Bytes; key: Bytes; name: Bytes; n: number; day: Bytes; lead: Bytes | null; size: Bytes };
type StateRow = { no: number; hash: Uint8Array; version: number; body: Uint8Array | null };
/** States kept in memory, so that one is not read from the file for each entry of a job that is worked on. */
const MAX_RECENT = 32;
/** The entry that what is kept of a job ends with. */
export type Tip = Pick<Sealed["entry"], "job" | "no"> & { readonly hash: string };

const FINDING = ["job", "kind", "entry", "phase", "at", "day", "lead", "size", "people", "body"] as const;
const MEASURE = ["job", "what", "key", "name", "n", "day", "lead", "size"] as const;
const marks = (columns: readonly string[]) => columns.map(() => "?").join(", ");
const changed = (columns: readonly string[]) => columns.map((column) => `${column} = excluded.${column}`).join(", ");

/** What is kept for oversight, beside the entries in the same file. Its writes belong into the transaction that adds the entry. */
export function keptOversightIn(db: Sqlite.Database) {
  const get = db.prepare(`SELECT no, ${as("hash")}, version, body FROM overseen WHERE job = ?`);
  const put = db.prepare(
    `INSERT INTO overseen (job, no, hash, version, body) VALUES (?, ?, ?, ?, ?)
    ON CONFLICT (job) DO UPDATE SET no = excluded.no, hash = excluded.hash, version = excluded.version, body = excluded.body`,
  );
  // What was said about it holds, however often it is found again.
  const putFinding = db.prepare(
    `INSERT INTO findings (${FINDING.join(", ")}, state) VALUES (${marks(FINDING)}, coalesce(
      (SELECT what FROM followUps WHERE job = ? AND kind = ? AND entry = ? AND what <> 'noted' ORDER BY no DESC LIMIT 1), 'open'))
    ON CONFLICT (job, kind, entry) DO UPDATE SET ${changed(FINDING.slice(3))}`,
  );
  const dropFinding = db.prepare("DELETE FROM findings WHERE job = ? AND kind = ? AND entry = ?");
  const findingsOf = db.prepare(`SELECT ${as("kind")}, entry, body FROM findings WHERE job = ?`);
  const putMeasure = db.prepare(
    `INSERT INTO measures (${MEASURE.join(", ")}) VALUES (${marks(MEASURE)})
    ON CONFLICT (job, what, key) DO UPDATE SET ${changed(MEASURE.slice(3))}`,
  );
  const dropMeasure = db.prepare("DELETE FROM measures WHERE job = ? AND what = ? AND key = ?");
  const measuresOf = db.prepare(
    `SELECT ${["what", "key", "name", "day", "lead", "size"].map(as).join(", ")}, n FROM measures WHERE job = ?`,
  );
  const strays = ["overseen", "findings", "measures"].map((table) =>
    db.prepare(`DELETE FROM ${table} WHERE NOT EXISTS (SELECT 1 FROM entries WHERE entries.job = ${table}.job)`),
  );

  /** By the hash of the entry that they end with: one that was not taken after all is never asked for. */
  const recent = new Map<string, OversightState>();
  const remember = (hash: string, state: OversightState) => {
    recent.set(hash, state);
    if (recent.size > MAX_RECENT) recent.delete(recent.keys().next().value!);
  };
  const writeState = ({ job, no, hash }: Tip, state: OversightState | null) => {
    put.run(job, no, hash, OVERSIGHT_VERSION, state && Buffer.from(JSON.stringify(state)));
    if (state) remember(hash, state);
  };
  const writeFinding = (job: JobId, f: Finding) => {
    const people = ` ${f.by.join(" ")} `;
    const row = [job, f.kind, f.entry, f.phase, f.at, f.day, f.lead, f.size, people, Buffer.from(JSON.stringify(f))];
    putFinding.run(...row, job, f.kind, f.entry);
  };
  const writeMeasure = (job: JobId, { what, key, name, n, day, lead, size }: Measure) =>
    putMeasure.run(job, what, key, name, n, day, lead, size);

  /** What is kept up to an entry: `null` where it is of another entry or another version; a state of `null` where it cannot be made. */
  function stateAt({ job, no, hash }: Tip): { readonly state: OversightState | null } | null {
    const known = recent.get(hash);
    if (known) return { state: known };
    const row = get.get(job) as StateRow | undefined;
    if (!row || row.version !== OVERSIGHT_VERSION || row.no !== no || text(row.hash) !== hash) return null;
    const state = row.body && (parsed(row.body) as OversightState | null);
    // What is no JSON any more is made again.
    return row.body && !state ? null : { state };
  }

  /** What an entry changed. */
  function follow(tip: Tip, { state, put, gone, measures }: Overseen) {
    writeState(tip, state);
    for (const finding of put) writeFinding(tip.job, finding);
    for (const { kind, entry } of gone) dropFinding.run(tip.job, kind, entry);
    for (const measure of measures) writeMeasure(tip.job, measure);
  }

  /** The whole of a job again, written where it differs; nothing where it cannot be overseen. */
  function replace(tip: Tip, job: Pick<OverseenJob, "state" | "findings" | "measures"> | null) {
    const kept = new Map((findingsOf.all(tip.job) as FindingRow[]).map((row) => [`${text(row.kind)} ${row.entry}`, row]));
    for (const finding of job?.findings ?? []) {
      const row = kept.get(`${finding.kind} ${finding.entry}`);
      kept.delete(`${finding.kind} ${finding.entry}`);
      if (!row || text(row.body) !== JSON.stringify(finding)) writeFinding(tip.job, finding);
    }
    for (const { kind, entry } of kept.values()) dropFinding.run(tip.job, text(kind), entry);
    const measures = new Map((measuresOf.all(tip.job) as MeasureRow[]).map((row) => [`${text(row.what)} ${text(row.key)}`, row]));
    for (const measure of job?.measures ?? []) {
      const row = measures.get(`${measure.what} ${measure.key}`);
      measures.delete(`${measure.what} ${measure.key}`);
      if (!row || JSON.stringify(measureFrom(row)) !== JSON.stringify(measure)) writeMeasure(tip.job, measure);
    }
    for (const { what, key } of measures.values()) dropMeasure.run(tip.job, text(what), text(key));
    const state = job?.state ?? null;
    const before = stateAt(tip);
    if (!before || JSON.stringify(before.state) !== JSON.stringify(state)) writeState(tip, state);
  }

  /** Takes out what is of no job, and counts again where the counts are not those of the rows. */
  function settle() {
    for (const stray of strays) stray.run();
    recount("findings", "findingTallies", FINDING_TALLIES);
    recount("measures", "measureTallies", MEASURE_TALLIES);
  }
  function recount(table: string, tallies: string, columns: readonly string[]) {
    const by = columns.join(", ");
    const counts = `SELECT ${by}, count(*) AS count FROM ${table} GROUP BY ${by}`;
    const kept = `SELECT ${by}, count FROM ${tallies} WHERE count <> 0`;
    const differ = (a: string, b: string) => db.prepare(`SELECT 1 FROM (${a} EXCEPT ${b}) LIMIT 1`).get() !== undefined;
    if (!differ(counts, kept) && !differ(kept, counts)) return;
    db.exec(`DELETE FROM ${tallies}; INSERT INTO ${tallies} (${by}, count) ${counts}`);
  }

  return { stateAt, stay: writeState, follow, replace, settle };
}

const measureFrom = ({ what, key, name, n, day, lead, size }: MeasureRow): Measure => ({
  what: text(what) as Measure["what"],
  key: text(key),
  name: text(name),
  n,
  day: text(day),
  lead: lead && text(lead),
  size: text(size),
});
