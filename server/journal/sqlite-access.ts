import type Sqlite from "better-sqlite3";
import { type AccessStore, type JoinCode, MAX_EVENTS, type Pass, type SecurityEvent, type Token } from "./access.ts";
import { as, text } from "./rows.ts";

type Bytes = Uint8Array;
type CodeRow = { code: Bytes; job: Bytes; leads: number };
type PassRow = { device: Bytes; job: Bytes; person: Bytes; until: number };
type TokenRow = { id: Bytes; name: Bytes; hash: Bytes; at: number; revokedAt: number | null };
type EventRow = { at: number; event: Bytes; address: Bytes; job: Bytes | null; device: Bytes | null; what: Bytes | null };

const codeFrom = ({ code, job, leads }: CodeRow): JoinCode => ({ code: text(code), job: text(job), leads: leads === 1 });
const passFrom = ({ device, job, person, until }: PassRow): Pass => ({
  device: text(device),
  job: text(job),
  person: text(person),
  until,
});
const tokenFrom = ({ id, name, hash, ...times }: TokenRow): Token => ({ id: text(id), name: text(name), hash: text(hash), ...times });
const orNull = (bytes: Bytes | null) => (bytes === null ? null : text(bytes));
const eventFrom = ({ at, event, address, job, device, what }: EventRow): SecurityEvent => ({
  at,
  is: text(event) as SecurityEvent["is"],
  address: text(address),
  job: orNull(job),
  device: orNull(device),
  what: orNull(what),
});

/** Who may come in, in a file, beside its jobs. `run` does a write in a transaction. */
export function accessIn(db: Sqlite.Database, run: (write: () => void) => Promise<void>): AccessStore {
  const secret = db.prepare(`SELECT ${as("value")} FROM secrets WHERE name = ?`);
  const putSecret = db.prepare("INSERT OR REPLACE INTO secrets (name, value) VALUES (?, ?)");
  const CODE = `SELECT ${as("code")}, ${as("job")}, leads FROM codes`;
  const codesOf = db.prepare(`${CODE} WHERE job = ? ORDER BY leads`);
  const codeCalled = db.prepare(`${CODE} WHERE code = ?`);
  const dropCodes = db.prepare("DELETE FROM codes WHERE job = ?");
  const putCode = db.prepare("INSERT INTO codes (code, job, leads) VALUES (?, ?, ?)");
  const passes = db.prepare(`SELECT ${as("device")}, ${as("job")}, ${as("person")}, until FROM passes WHERE device = ?`);
  const allPasses = db.prepare(`SELECT ${as("device")}, ${as("job")}, ${as("person")}, until FROM passes`);
  const dropAll = db.prepare("DELETE FROM passes WHERE job = ?");
  const putPass = db.prepare("INSERT OR REPLACE INTO passes (device, job, person, until) VALUES (?, ?, ?, ?)");
  const dropPasses = db.prepare("DELETE FROM passes WHERE device = ? AND job = ?");
  const tokens = db.prepare(`SELECT ${as("id")}, ${as("name")}, ${as("hash")}, at, revokedAt FROM tokens ORDER BY at, id`);
  const putToken = db.prepare("INSERT OR REPLACE INTO tokens (id, name, hash, at, revokedAt) VALUES (?, ?, ?, ?, ?)");
  const putEvent = db.prepare("INSERT INTO security (at, event, address, job, device, what) VALUES (?, ?, ?, ?, ?, ?)");
  const dropEvents = db.prepare("DELETE FROM security WHERE seq <= ?");
  const events = db.prepare(
    `SELECT at, ${as("event")}, ${as("address")}, ${as("job")}, ${as("device")}, ${as("what")} FROM security ORDER BY seq DESC LIMIT ?`,
  );
  return {
    secret: async (name) => {
      const row = secret.get(name) as { value: Bytes } | undefined;
      return row ? text(row.value) : null;
    },
    keepSecret: (name, value) => run(() => void putSecret.run(name, value)),
    codes: async (job) => (codesOf.all(job) as CodeRow[]).map(codeFrom),
    codeCalled: async (code) => {
      const row = codeCalled.get(code) as CodeRow | undefined;
      return row ? codeFrom(row) : null;
    },
    keepCodes: (job, made) =>
      run(() => {
        dropCodes.run(job);
        for (const { code, leads } of made) putCode.run(code, job, leads ? 1 : 0);
      }),
    passes: async (device) => (passes.all(device) as PassRow[]).map(passFrom),
    keepPasses: (made) =>
      run(() => {
        for (const { device, job, person, until } of made) putPass.run(device, job, person, until);
      }),
    dropPasses: (device, job) => run(() => void dropPasses.run(device, job)),
    allPasses: async () => (allPasses.all() as PassRow[]).map(passFrom),
    dropAllPasses: (job) => run(() => void dropAll.run(job)),
    tokens: async () => (tokens.all() as TokenRow[]).map(tokenFrom),
    keepToken: ({ id, name, hash, at, revokedAt }) => run(() => void putToken.run(id, name, hash, at, revokedAt)),
    log: ({ at, is, address, job, device, what }) =>
      run(() => {
        const { lastInsertRowid } = putEvent.run(at, is, address, job, device, what);
        dropEvents.run(Number(lastInsertRowid) - MAX_EVENTS);
      }),
    events: async (count) => (events.all(count) as EventRow[]).map(eventFrom),
  };
}
