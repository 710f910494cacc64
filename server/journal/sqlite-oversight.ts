import type Sqlite from "better-sqlite3";
import { unsealFollowUp } from "../../machines/record/follow-up.ts";
import { findingsLeft, isCounted, measuresLeft } from "./finding-filter.ts";
import { type FindingTally, FollowUpConflict, type KeptFinding, type MeasureTally, type Oversight } from "./oversight.ts";
import { as, parsed, text } from "./rows.ts";

type Bytes = Uint8Array;
type FindingRow = { job: Bytes; state: Bytes; body: Bytes };
type TallyRow = { kind: Bytes; phase: Bytes; state: Bytes; count: number };
type MeasureRow = { what: Bytes; name: Bytes; n: number; count: number };
type FollowUpRow = { hash: Bytes; bytes: Bytes };

const FINDING = `SELECT ${as("job")}, ${as("state")}, body FROM findings`;
const FOLLOW_UP = `SELECT ${as("hash")}, bytes FROM followUps`;
const TALLY = `${as("kind")}, ${as("phase")}, ${as("state")}`;
const MEASURE = `${as("what")}, ${as("name")}, n`;

const cast = (column: string) => `CAST(t.${column} AS BLOB) AS ${column}`;

/** What a row keeps of a finding; nothing where it is spoiled. */
function kept({ job, state, body }: FindingRow): KeptFinding[] {
  const finding = parsed(body) as KeptFinding["finding"] | null;
  return finding ? [{ job: text(job), finding, state: text(state) as KeptFinding["state"] }] : [];
}
const tally = ({ kind, phase, state, count }: TallyRow): FindingTally => ({
  kind: text(kind) as FindingTally["kind"],
  phase: text(phase),
  state: text(state) as FindingTally["state"],
  count,
});
const measured = ({ what, name, n, count }: MeasureRow): MeasureTally => ({
  what: text(what) as MeasureTally["what"],
  name: text(name),
  n,
  count,
});
const sealed = (row: unknown) => {
  const { hash, bytes } = (row ?? {}) as Partial<FollowUpRow>;
  return hash && bytes ? unsealFollowUp(new Uint8Array(bytes), text(hash)) : null;
};

/** What is looked at over the jobs of a file. `run` does a write in a transaction. */
export function oversightIn(db: Sqlite.Database, run: (write: () => void) => Promise<void>): Oversight {
  const one = db.prepare(`${FINDING} WHERE job = ? AND kind = ? AND entry = ?`);
  const tallies = db.prepare(
    `SELECT ${TALLY}, count FROM findingTallies WHERE count > 0 ORDER BY findingTallies.kind, findingTallies.phase`,
  );
  const measures = db.prepare(`SELECT ${MEASURE}, count FROM measureTallies WHERE count > 0`);
  const last = db.prepare(`${FOLLOW_UP} ORDER BY no DESC LIMIT 1`);
  const keyed = db.prepare(`${FOLLOW_UP} WHERE key = ?`);
  const about = db.prepare(`${FOLLOW_UP} WHERE job = ? AND kind = ? AND entry = ? ORDER BY no`);
  const add = db.prepare("INSERT INTO followUps (no, prev, hash, key, job, kind, entry, what, bytes) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)");
  const put = db.prepare("UPDATE findings SET state = ? WHERE job = ? AND kind = ? AND entry = ?");

  return {
    findings: async (filter, before, most) => {
      const older = before && {
        sql: "(t.at, t.job, t.kind, t.entry) < (?, ?, ?, ?)",
        given: [before.at, before.job, before.kind, before.entry],
      };
      const { sql, given } = findingsLeft(filter, older ? [older] : []);
      // What is on the page is picked from indexes, and only that is read.
      const picked = `SELECT t.rowid FROM ${sql} ORDER BY t.at DESC, t.job DESC, t.kind DESC, t.entry DESC LIMIT ?`;
      const inOrder = "ORDER BY at DESC, findings.job DESC, kind DESC, entry DESC";
      return (db.prepare(`${FINDING} WHERE rowid IN (${picked}) ${inOrder}`).all(...given, most) as FindingRow[]).flatMap(kept);
    },
    finding: async ({ job, kind, entry }) => {
      const row = one.get(job, kind, entry) as FindingRow | undefined;
      return row ? (kept(row)[0] ?? null) : null;
    },
    tallies: async (filter) => {
      if (isCounted(filter)) return (tallies.all() as TallyRow[]).map(tally).filter(isWanted);
      const { sql, given } = findingsLeft(filter);
      const counts = `SELECT ${cast("kind")}, ${cast("phase")}, ${cast("state")}, count(*) AS count FROM ${sql}`;
      return (db.prepare(`${counts} GROUP BY t.kind, t.phase, t.state`).all(...given) as TallyRow[]).map(tally);
      function isWanted({ kind, phase, state }: FindingTally): boolean {
        return [
          [filter.kind, kind],
          [filter.phase, phase],
          [filter.state, state],
        ].every(([wanted, is]) => wanted === null || wanted === is);
      }
    },
    measures: async (filter) => {
      if (isCounted(filter))
        return (measures.all() as MeasureRow[])
          .map(measured)
          .filter(({ what, name }) => what === "job" || filter.phase === null || filter.phase === name);
      const { sql, given } = measuresLeft(filter);
      const counts = `SELECT ${cast("what")}, ${cast("name")}, t.n AS n, count(*) AS count FROM ${sql}`;
      return (db.prepare(`${counts} GROUP BY t.what, t.name, t.n`).all(...given) as MeasureRow[]).map(measured);
    },
    lastFollowUp: async () => sealed(last.get()),
    keyedFollowUp: async (key) => sealed(keyed.get(key)),
    followUps: async ({ job, kind, entry }) => about.all(job, kind, entry).flatMap((row) => sealed(row)?.entry ?? []),
    appendFollowUp: ({ entry, hash, bytes }) =>
      run(() => {
        const { no, prev, key, finding, is } = entry;
        const before = last.get() as FollowUpRow | undefined;
        const count = db.prepare("SELECT coalesce(max(no), 0) AS no FROM followUps").get() as { no: number };
        const follows = no === count.no + 1 && (before ? text(before.hash) === prev : no === 1);
        if (!follows || keyed.get(key)) throw new FollowUpConflict(no);
        add.run(no, prev, hash, key, finding.job, finding.kind, finding.entry, is, Buffer.from(bytes));
        if (is !== "noted") put.run(is, finding.job, finding.kind, finding.entry);
      }),
  };
}
