import { OVERSIGHT } from "./oversight-tables.ts";

/** Marks a data file as ours: "RdgC". */
export const APPLICATION_ID = 0x52646743;
/** The layout of the tables. A file with a higher one was written by a newer program. */
export const LAYOUT = 4;

/** Let go only where a whole job is taken away, and put back in the same transaction. */
export const ENTRIES_LAST =
  "CREATE TRIGGER entries_last BEFORE DELETE ON entries BEGIN SELECT RAISE(ABORT, 'entries are never deleted'); END;";
/**
 * Tables in which something is kept of a job, besides what outlives it: the security log, the streams of the house and of
 * follow-ups, and what somebody learned, rehearsals with it.
 */
export const OF_JOB = ["names", "folds", "codes", "passes", "photos", "rounds", "overseen", "findings", "measures", "entries"] as const;

/** The tables of the first layout, the text they are made from. */
const FIRST = `
  CREATE TABLE entries (
    seq INTEGER PRIMARY KEY, job TEXT NOT NULL, no INTEGER NOT NULL, prev TEXT NOT NULL, hash TEXT NOT NULL UNIQUE,
    key TEXT NOT NULL, bytes BLOB NOT NULL, UNIQUE (job, no), UNIQUE (job, key)) STRICT;
  CREATE UNIQUE INDEX openings ON entries (key) WHERE no = 1;
  CREATE TRIGGER entries_stay BEFORE UPDATE ON entries BEGIN SELECT RAISE(ABORT, 'entries are never changed'); END;
  ${ENTRIES_LAST}
  CREATE TABLE names (job TEXT NOT NULL, person TEXT NOT NULL, name TEXT NOT NULL, PRIMARY KEY (job, person)) STRICT;

  -- Derived from the entries; no body where a job's entries cannot be folded.
  CREATE TABLE folds (
    job TEXT NOT NULL PRIMARY KEY, no INTEGER NOT NULL, hash TEXT NOT NULL, version INTEGER NOT NULL, body BLOB) STRICT;

  -- Tents kept for the next job, with the keys that wrote them. "folded" is the name as it is compared.
  CREATE TABLE tents (
    id TEXT NOT NULL PRIMARY KEY, name TEXT NOT NULL, folded TEXT NOT NULL UNIQUE, spec TEXT NOT NULL, kit TEXT,
    version INTEGER NOT NULL, at INTEGER NOT NULL) STRICT;
  CREATE TABLE writes (key TEXT NOT NULL PRIMARY KEY, request TEXT NOT NULL, tent TEXT NOT NULL) STRICT;
`;

/** What the second layout has besides. "body" and "sheet" are JSON, "folded" is a name as it is compared. */
const SECOND = `
  CREATE TABLE drafts (
    id TEXT NOT NULL PRIMARY KEY, body TEXT NOT NULL, version INTEGER NOT NULL, at INTEGER NOT NULL,
    opened INTEGER NOT NULL) STRICT;
  CREATE TABLE people (
    folded TEXT NOT NULL PRIMARY KEY, name TEXT NOT NULL, role TEXT NOT NULL, onLast INTEGER NOT NULL, at INTEGER NOT NULL) STRICT;
  CREATE TABLE sheets (tent TEXT NOT NULL PRIMARY KEY, sheet TEXT NOT NULL, at INTEGER NOT NULL) STRICT;
`;

/**
 * What the third layout has otherwise: a sheet is that of a tent as it was. Sheets of nobody knows which tent, and drafts that may
 * say more than their steps show, are begun again.
 */
const THIRD = `
  DROP TABLE sheets;
  CREATE TABLE sheets (tent TEXT NOT NULL PRIMARY KEY, digest TEXT NOT NULL, sheet TEXT NOT NULL, at INTEGER NOT NULL) STRICT;
  DELETE FROM drafts;
`;

/** What the fourth layout has besides: salts of names, which are empty where a name is from before, and who may come in; there "job" is empty where it is the office. */
const FOURTH = `
  ALTER TABLE names ADD COLUMN salt TEXT NOT NULL DEFAULT '';
  CREATE TABLE secrets (name TEXT NOT NULL PRIMARY KEY, value TEXT NOT NULL) STRICT;
  CREATE TABLE codes (code TEXT NOT NULL PRIMARY KEY, job TEXT NOT NULL, leads INTEGER NOT NULL, UNIQUE (job, leads)) STRICT;
  CREATE TABLE passes (
    device TEXT NOT NULL, job TEXT NOT NULL, person TEXT NOT NULL, until INTEGER NOT NULL, PRIMARY KEY (device, job, person)) STRICT;
  CREATE TABLE tokens (
    id TEXT NOT NULL PRIMARY KEY, name TEXT NOT NULL, hash TEXT NOT NULL, at INTEGER NOT NULL, revokedAt INTEGER) STRICT;
  CREATE TABLE security (
    seq INTEGER PRIMARY KEY, at INTEGER NOT NULL, event TEXT NOT NULL, address TEXT NOT NULL, job TEXT, device TEXT, what TEXT) STRICT;

  -- Photos that entries name by their hash.
  CREATE TABLE photos (job TEXT NOT NULL, hash TEXT NOT NULL, mime TEXT NOT NULL, bytes BLOB NOT NULL, PRIMARY KEY (job, hash)) STRICT;

  -- What people learn. "origin" is the job that a rehearsal is a copy of; "card", "body" and "over" are JSON.
  CREATE TABLE learners (id TEXT NOT NULL PRIMARY KEY, name TEXT NOT NULL, folded TEXT NOT NULL UNIQUE) STRICT;
  CREATE TABLE cards (learner TEXT NOT NULL, item TEXT NOT NULL, card TEXT NOT NULL, PRIMARY KEY (learner, item)) STRICT;
  CREATE TABLE rounds (
    id TEXT NOT NULL PRIMARY KEY, learner TEXT NOT NULL, job TEXT NOT NULL, at INTEGER NOT NULL, version INTEGER NOT NULL,
    body TEXT NOT NULL) STRICT;
  CREATE INDEX rounds_of ON rounds (learner, job);
  CREATE TABLE rehearsals (
    job TEXT NOT NULL PRIMARY KEY, origin TEXT NOT NULL, learner TEXT NOT NULL, way TEXT NOT NULL, trouble TEXT NOT NULL,
    seed INTEGER NOT NULL, at INTEGER NOT NULL, over TEXT) STRICT;

  -- Where every job stood, day by day: a chain of its own.
  CREATE TABLE house (no INTEGER PRIMARY KEY, prev TEXT NOT NULL, hash TEXT NOT NULL, bytes BLOB NOT NULL) STRICT;
  CREATE TRIGGER house_stays BEFORE UPDATE ON house BEGIN SELECT RAISE(ABORT, 'house entries are never changed'); END;
  CREATE TRIGGER house_lasts BEFORE DELETE ON house BEGIN SELECT RAISE(ABORT, 'house entries are never deleted'); END;
`;

/** What each layout has besides the one before. A change here, be it of a space, is a new layout once there was a release. */
export const LAYOUTS: readonly string[] = [FIRST, SECOND, THIRD, FOURTH + OVERSIGHT];
