import type Sqlite from "better-sqlite3";
import type { PersonId } from "../../machines/install/ids.ts";
import { foldName } from "../../machines/install/person-name.ts";
import { type JobId, keyOf, NO_ENTRY, type Sealed } from "../../machines/record/entry.ts";
import type { People } from "../../machines/record/people.ts";
import { closeDatabase, openDatabase } from "./data-file.ts";
import { foldsIn } from "./folds.ts";
import { groupCommit } from "./group-commit.ts";
import { Conflict, type Journal, KeyUsed, type Listed } from "./journal.ts";
import { as, LINE, type Row, sealed, stored, text } from "./rows.ts";
import { accessIn } from "./sqlite-access.ts";
import { draftsIn } from "./sqlite-drafts.ts";
import { firmIn } from "./sqlite-firm.ts";
import { houseIn } from "./sqlite-house.ts";
import { learningIn } from "./sqlite-learning.ts";
import { oversightIn } from "./sqlite-oversight.ts";
import { photosIn } from "./sqlite-photos.ts";
import { ENTRIES_LAST, OF_JOB } from "./tables.ts";
import { tentsIn } from "./tents.ts";
import { transactionsIn } from "./transactions.ts";
import { NO_FILE, watchFile } from "./watch-file.ts";

/** A journal in one SQLite file, or in memory for `:memory:`. Call `openJournal` for files: it looks before it touches. */
export const sqliteJournal = (file: string): Journal => journalIn(openDatabase(file), file);

/** Names from before they were kept as they are compared, too. */
function foldNames(db: Sqlite.Database) {
  const bare = db.prepare(`SELECT rowid AS at, ${as("name")} FROM names WHERE folded = ''`).all() as { at: number; name: Uint8Array }[];
  const put = db.prepare("UPDATE names SET folded = ? WHERE rowid = ?");
  for (const { at, name } of bare) put.run(foldName(text(name)), at);
}

/** The journal in an open data file. `file` is where it lies, for what has to be watched and said of it. */
export function journalIn(db: Sqlite.Database, file: string): Journal {
  const insert = db.prepare("INSERT INTO entries (job, no, prev, hash, key, bytes) VALUES (?, ?, ?, ?, ?, ?)");
  const tip = db.prepare(`SELECT no, ${as("hash")} FROM entries WHERE job = ? ORDER BY no DESC LIMIT 1`);
  const byKey = db.prepare(`${LINE} WHERE job = ? AND key = ?`);
  const opened = db.prepare(`${LINE} WHERE key = ? AND no = 1`);
  const lines = db.prepare(`${LINE} WHERE job = ? ORDER BY no`);
  const first = db.prepare(`${LINE} WHERE no = 1 ORDER BY seq DESC`);
  const before = db.prepare(`${LINE} WHERE job = ? AND no < ? ORDER BY no DESC LIMIT 1`);
  const named = db.prepare(`SELECT ${as("person")}, ${as("name")}, ${as("salt")} FROM names WHERE job = ?`);
  const eraseName = db.prepare("DELETE FROM names WHERE job = ? AND person = ?");
  const removals = OF_JOB.map((table) => db.prepare(`DELETE FROM ${table} WHERE job = ?`));
  const everyName = db.prepare(`SELECT ${as("job")}, ${as("person")}, ${as("name")} FROM names`);
  const putName = db.prepare(
    "INSERT INTO names (job, person, name, salt, folded) VALUES (?, ?, ?, ?, ?) ON CONFLICT (job, person) DO UPDATE SET name = excluded.name, salt = excluded.salt, folded = excluded.folded",
  );

  const folds = foldsIn(db);
  const watch = file === ":memory:" ? NO_FILE : watchFile(file);
  const commit = transactionsIn(db, file, watch);
  commit(() => {
    foldNames(db);
    folds.settle();
  });
  const group = groupCommit(commit);

  const add = ({ entry, hash, bytes }: Sealed) => insert.run(entry.job, entry.no, entry.prev, hash, keyOf(entry), Buffer.from(bytes));
  const putPeople = (job: JobId, people: People) => {
    for (const [person, { name, salt }] of Object.entries(people)) putName.run(job, person, name, salt, foldName(name));
  };
  type NamedRow = { person: Uint8Array; name: Uint8Array; salt: Uint8Array };
  const peopleOf = (job: JobId) => (named.all(job) as NamedRow[]).map((row) => [text(row.person), row] as const);

  const lastThatFits = (job: JobId): Sealed | null => {
    let row = before.get(job, Number.MAX_SAFE_INTEGER) as Row | undefined;
    while (row) {
      const line = sealed(row);
      if (line) return line;
      row = before.get(job, row.no) as Row | undefined;
    }
    return null;
  };
  const listed = (opening: Sealed | null): Listed[] => (opening ? [{ opening, tip: lastThatFits(opening.entry.job) ?? opening }] : []);

  return {
    open: (opening, people) =>
      group.run(() => {
        if (opened.get(keyOf(opening.entry))) throw new KeyUsed(keyOf(opening.entry));
        if (opening.entry.no !== 1 || opening.entry.prev !== NO_ENTRY || tip.get(opening.entry.job))
          throw new Conflict(opening.entry.job, opening.entry.no);
        add(opening);
        folds.open(opening);
        putPeople(opening.entry.job, people);
      }),
    append: (next, people = {}) =>
      group.run(() => {
        const { job, no, prev } = next.entry;
        const last = tip.get(job) as Pick<Row, "no" | "hash"> | undefined;
        if (!last || last.no + 1 !== no || text(last.hash) !== prev) throw new Conflict(job, no);
        if (byKey.get(job, keyOf(next.entry))) throw new KeyUsed(keyOf(next.entry));
        add(next);
        folds.follow(next);
        putPeople(job, people);
      }),
    read: async (job) => (lines.all(job) as Row[]).map(stored),
    keyed: async (job, key) => sealed(byKey.get(job, key)),
    openedWith: async (key) => sealed(opened.get(key)),
    jobs: async () => (first.all() as Row[]).flatMap((row) => listed(sealed(row))),
    folds: async () => folds.list(),
    fold: async (job) => folds.of(job),
    refold: (job) => group.run(() => folds.refold(job)),
    names: async (job) => Object.fromEntries(peopleOf(job).map(([person, { name }]) => [person, text(name)])),
    people: async (job) =>
      Object.fromEntries(peopleOf(job).map(([person, { name, salt }]) => [person, { name: text(name), salt: text(salt) }])),
    eraseName: (job, person) => group.run(() => void eraseName.run(job, person)),
    removeJob: (job) =>
      group.run(() => {
        db.exec("DROP TRIGGER entries_last");
        for (const remove of removals) remove.run(job);
        db.exec(ENTRIES_LAST);
      }),
    allNames: async () => {
      const byJob = new Map<JobId, [PersonId, string][]>();
      for (const row of everyName.all() as { job: Uint8Array; person: Uint8Array; name: Uint8Array }[])
        byJob.set(text(row.job), [...(byJob.get(text(row.job)) ?? []), [text(row.person), text(row.name)]]);
      return new Map([...byJob].map(([job, named]) => [job, Object.fromEntries(named)]));
    },
    catalog: tentsIn(db, group.run),
    drafts: draftsIn(db, group.run),
    firm: firmIn(db, group.run),
    access: accessIn(db, group.run),
    house: houseIn(db, group.run),
    learning: learningIn(db, group.run),
    photos: photosIn(db, group.run),
    oversight: oversightIn(db, group.run),
    condition: async () => watch.condition(),
    close: async () => {
      group.flush();
      // What lies at the path now is not ours to write in. The process lets go of the locks when it ends.
      if (!watch.look()) closeDatabase(db);
    },
  };
}
