import type Sqlite from "better-sqlite3";
import { Changed } from "./catalog.ts";
import type { Drafts, SavedDraft } from "./drafts.ts";
import { as, parsed, text } from "./rows.ts";

type Row = { id: Uint8Array; body: Uint8Array; version: number; at: number; opened: number };
const DRAFT = `SELECT ${as("id")}, ${as("body")}, version, at, opened FROM drafts`;

/** The drafts of a file, beside its jobs. `run` does a write in a transaction. */
export function draftsIn(db: Sqlite.Database, run: (write: () => void) => Promise<void>): Drafts {
  const one = db.prepare(`${DRAFT} WHERE id = ?`);
  const newest = db.prepare(`${DRAFT} WHERE opened = 0 ORDER BY at DESC, rowid DESC LIMIT ?`);
  const put = db.prepare("INSERT OR REPLACE INTO drafts (id, body, version, at, opened) VALUES (?, ?, ?, ?, ?)");
  const drop = db.prepare("DELETE FROM drafts WHERE id = ?");
  const dropOld = db.prepare("DELETE FROM drafts WHERE at < ?");
  return {
    draft: async (id) => {
      const row = one.get(id) as Row | undefined;
      return row ? saved(row) : null;
    },
    unopened: async (most) => (newest.all(most) as Row[]).map(saved),
    save: (id, version, { body, at, opened }) =>
      run(() => {
        if (((one.get(id) as Row | undefined)?.version ?? 0) !== version) throw new Changed(id);
        put.run(id, JSON.stringify(body), version + 1, at, opened ? 1 : 0);
      }),
    remove: (id, version) =>
      run(() => {
        if ((one.get(id) as Row | undefined)?.version !== version) throw new Changed(id);
        drop.run(id);
      }),
    removeBefore: (at) => run(() => void dropOld.run(at)),
  };
}

const saved = ({ id, body, version, at, opened }: Row): SavedDraft => ({
  id: text(id),
  body: parsed(body),
  version,
  at,
  opened: opened === 1,
});
