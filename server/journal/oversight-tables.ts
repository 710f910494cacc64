/** What the tallies of a row count, before it is there and after it is gone. */
const counted = (table: string, tallies: string, columns: readonly string[]): string => {
  const these = (row: "new" | "old") => columns.map((column) => `${row}.${column}`).join(", ");
  const where = columns.map((column) => `${column} = old.${column}`).join(" AND ");
  const more = `INSERT INTO ${tallies} (${columns.join(", ")}, count) VALUES (${these("new")}, 1) ON CONFLICT DO UPDATE SET count = count + 1;`;
  const less = `UPDATE ${tallies} SET count = count - 1 WHERE ${where};`;
  return `
  CREATE TRIGGER ${table}_come AFTER INSERT ON ${table} BEGIN ${more} END;
  CREATE TRIGGER ${table}_go AFTER DELETE ON ${table} BEGIN ${less} END;
  CREATE TRIGGER ${table}_change AFTER UPDATE OF ${columns.join(", ")} ON ${table} BEGIN ${less} ${more} END;`;
};

/** What findings are counted by, and numbers: what pages show of all jobs is read off these, however many jobs there are. */
export const FINDING_TALLIES = ["kind", "phase", "state"] as const;
export const MEASURE_TALLIES = ["what", "name", "n"] as const;

/**
 * The tables of oversight, a part of the fourth layout. All but the follow-ups is derived from the entries. "folded" is a name as
 * it is compared; "people" are ids, each between two spaces; "day" is that of the site.
 */
export const OVERSIGHT = `
  ALTER TABLE names ADD COLUMN folded TEXT NOT NULL DEFAULT '';
  CREATE INDEX names_folded ON names (folded, job, person);
  CREATE TABLE overseen (
    job TEXT NOT NULL PRIMARY KEY, no INTEGER NOT NULL, hash TEXT NOT NULL, version INTEGER NOT NULL, body BLOB) STRICT;
  CREATE TABLE findings (
    job TEXT NOT NULL, kind TEXT NOT NULL, entry INTEGER NOT NULL, phase TEXT NOT NULL, at INTEGER NOT NULL, day TEXT NOT NULL,
    lead TEXT, size TEXT NOT NULL, people TEXT NOT NULL, state TEXT NOT NULL, body BLOB NOT NULL, UNIQUE (job, kind, entry)) STRICT;
  CREATE INDEX findings_at ON findings (at, job, kind, entry);
  CREATE INDEX findings_job ON findings (job, lead, people, at, kind, entry, phase, state, size, day);
  CREATE INDEX findings_kind ON findings (kind, at, job, entry);
  CREATE INDEX findings_phase ON findings (phase, at, job, kind, entry);
  CREATE INDEX findings_state ON findings (state, at, job, kind, entry);
  CREATE INDEX findings_size ON findings (size, at, job, kind, entry, phase, state, day);
  CREATE INDEX findings_day ON findings (day, kind, phase, state);
  CREATE TABLE measures (
    job TEXT NOT NULL, what TEXT NOT NULL, key TEXT NOT NULL, name TEXT NOT NULL, n INTEGER NOT NULL, day TEXT NOT NULL,
    lead TEXT, size TEXT NOT NULL, PRIMARY KEY (job, what, key)) STRICT;
  CREATE INDEX measures_day ON measures (day, what, name, n);
  CREATE INDEX measures_size ON measures (size, day, what, name, n);
  CREATE TABLE findingTallies (
    kind TEXT NOT NULL, phase TEXT NOT NULL, state TEXT NOT NULL, count INTEGER NOT NULL, PRIMARY KEY (kind, phase, state)) STRICT;
  CREATE TABLE measureTallies (
    what TEXT NOT NULL, name TEXT NOT NULL, n INTEGER NOT NULL, count INTEGER NOT NULL, PRIMARY KEY (what, name, n)) STRICT;
${counted("findings", "findingTallies", FINDING_TALLIES)}
${counted("measures", "measureTallies", MEASURE_TALLIES)}

  -- What a manager said about findings: one chain for all jobs, never changed.
  CREATE TABLE followUps (
    no INTEGER PRIMARY KEY, prev TEXT NOT NULL, hash TEXT NOT NULL UNIQUE, key TEXT NOT NULL UNIQUE, job TEXT NOT NULL,
    kind TEXT NOT NULL, entry INTEGER NOT NULL, what TEXT NOT NULL, bytes BLOB NOT NULL) STRICT;
  CREATE INDEX followUps_about ON followUps (job, kind, entry, no);
  CREATE TRIGGER followUps_stay BEFORE UPDATE ON followUps BEGIN SELECT RAISE(ABORT, 'follow-ups are never changed'); END;
  CREATE TRIGGER followUps_last BEFORE DELETE ON followUps BEGIN SELECT RAISE(ABORT, 'follow-ups are never deleted'); END;
`;
