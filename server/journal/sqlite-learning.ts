import type Sqlite from "better-sqlite3";
import { foldName } from "../../machines/install/person-name.ts";
import { TROUBLES, WAYS } from "../../machines/install/practice.ts";
import { Changed } from "./catalog.ts";
import type { KeptRound, Learner, Learning, Rehearsed } from "./learning.ts";
import { as, parsed, text } from "./rows.ts";

type Texts<K extends string> = { readonly [F in K]: Uint8Array };
type RoundRow = Texts<"id" | "learner" | "job" | "body"> & { readonly at: number; readonly version: number };
type RehearsalRow = Texts<"job" | "origin" | "learner" | "way" | "trouble"> & {
  readonly seed: number;
  readonly at: number;
  readonly over: Uint8Array | null;
};

const learnerIn = (row: unknown): Learner | null => {
  if (!row) return null;
  const { id, name, folded } = row as Texts<"id" | "name" | "folded">;
  return { id: text(id), name: text(name), folded: text(folded) };
};
const roundIn = (row: unknown): KeptRound | null => {
  if (!row) return null;
  const { id, learner, job, at, version, body } = row as RoundRow;
  return { id: text(id), learner: text(learner), job: text(job), at, version, body: parsed(body) };
};
/** What is no word of ours, in a file that somebody wrote in, is the one that counts for least. */
const rehearsalIn = (row: unknown): Rehearsed | null => {
  if (!row) return null;
  const { job, origin, learner, way, trouble, seed, at, over } = row as RehearsalRow;
  return {
    job: text(job),
    from: text(origin),
    learner: text(learner),
    way: WAYS.find((is) => is === text(way)) ?? WAYS[0],
    trouble: TROUBLES.find((is) => is === text(trouble)) ?? TROUBLES[0],
    seed,
    at,
    over: over === null ? null : (parsed(over) as Rehearsed["over"]),
  };
};

/** What people learn, in a file beside its jobs. `run` does a write in a transaction. */
export function learningIn(db: Sqlite.Database, run: (write: () => void) => Promise<void>): Learning {
  const LEARNER = `SELECT ${as("id")}, ${as("name")}, ${as("folded")} FROM learners`;
  const called = db.prepare(`${LEARNER} WHERE folded = ?`);
  const everybody = db.prepare(`${LEARNER} ORDER BY folded`);
  const begin = db.prepare("INSERT OR IGNORE INTO learners (id, name, folded) VALUES (?, ?, ?)");
  const forget = ["cards", "rounds", "rehearsals"].map((table) =>
    db.prepare(`DELETE FROM ${table} WHERE learner = (SELECT id FROM learners WHERE folded = ?)`),
  );
  const drop = db.prepare("DELETE FROM learners WHERE folded = ?");
  const cards = db.prepare(`SELECT ${as("item")}, ${as("card")} FROM cards WHERE learner = ? ORDER BY item`);
  const putCard = db.prepare("INSERT OR REPLACE INTO cards (learner, item, card) SELECT id, ?, ? FROM learners WHERE id = ?");
  const ROUND = `SELECT ${["id", "learner", "job", "body"].map(as).join(", ")}, at, version FROM rounds`;
  const round = db.prepare(`${ROUND} WHERE id = ?`);
  const last = db.prepare(`${ROUND} WHERE learner = ? AND job = ? ORDER BY at DESC LIMIT 1`);
  const putRound = db.prepare("INSERT OR REPLACE INTO rounds (id, learner, job, at, version, body) VALUES (?, ?, ?, ?, ?, ?)");
  const REHEARSAL = `SELECT ${["job", "origin", "learner", "way", "trouble", "over"].map(as).join(", ")}, seed, at FROM rehearsals`;
  const rehearsals = db.prepare(`${REHEARSAL} WHERE learner = ? ORDER BY at DESC`);
  const rehearsal = db.prepare(`${REHEARSAL} WHERE job = ?`);
  const putRehearsal = db.prepare(
    "INSERT OR REPLACE INTO rehearsals (job, origin, learner, way, trouble, seed, at, over) VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
  );
  const endRehearsal = db.prepare("UPDATE rehearsals SET over = ? WHERE job = ?");
  return {
    learner: async (name, id) => {
      const known = () => learnerIn(called.get(foldName(name)));
      if (!known()) await run(() => void begin.run(id, name, foldName(name)));
      return known()!;
    },
    learnerCalled: async (name) => learnerIn(called.get(foldName(name))),
    learners: async () => everybody.all().map((row) => learnerIn(row)!),
    forget: (name) =>
      run(() => {
        for (const each of forget) each.run(foldName(name));
        drop.run(foldName(name));
      }),
    cards: async (learner) =>
      (cards.all(learner) as Texts<"item" | "card">[]).map(({ item, card }) => ({ item: text(item), card: parsed(card) })),
    round: async (id) => roundIn(round.get(id)),
    lastRound: async (learner, job) => roundIn(last.get(learner, job)),
    saveRound: ({ id, learner, job, at, version, body }, card) =>
      run(() => {
        if ((roundIn(round.get(id))?.version ?? 0) !== version - 1) throw new Changed(id);
        putRound.run(id, learner, job, at, version, JSON.stringify(body));
        if (card) putCard.run(card.item, JSON.stringify(card.card), learner);
      }),
    startRehearsal: ({ job, from, learner, way, trouble, seed, at, over }) =>
      run(() => void putRehearsal.run(job, from, learner, way, trouble, seed, at, over && JSON.stringify(over))),
    endRehearsal: (job, result) => run(() => void endRehearsal.run(JSON.stringify(result), job)),
    rehearsalsOf: async (learner) => rehearsals.all(learner).map((row) => rehearsalIn(row)!),
    rehearsalOf: async (job) => rehearsalIn(rehearsal.get(job)),
  };
}
