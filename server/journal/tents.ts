import type Sqlite from "better-sqlite3";
import { type Catalog, Changed, foldedName, NameTaken, type SavedTent, type TentBody, type Write, WriteRepeated } from "./catalog.ts";
import { as, parsed, text } from "./rows.ts";

type TentRow = { id: Uint8Array; name: Uint8Array; spec: Uint8Array; kit: Uint8Array | null; version: number; at: number };
const TENT = `SELECT ${["id", "name", "spec", "kit"].map(as).join(", ")}, version, at FROM tents`;

/** The tents of a file, beside its jobs. `run` does a write in a transaction. */
export function tentsIn(db: Sqlite.Database, run: (write: () => void) => Promise<void>): Catalog {
  const all = db.prepare(`${TENT} ORDER BY folded, id`);
  const one = db.prepare(`${TENT} WHERE id = ?`);
  const named = db.prepare(`SELECT ${as("id")} FROM tents WHERE folded = ?`);
  const insert = db.prepare("INSERT INTO tents (id, name, folded, spec, kit, version, at) VALUES (?, ?, ?, ?, ?, ?, ?)");
  const update = db.prepare("UPDATE tents SET name = ?, folded = ?, spec = ?, kit = ?, version = ?, at = ? WHERE id = ?");
  const drop = db.prepare("DELETE FROM tents WHERE id = ?");
  const writes = db.prepare(`SELECT ${as("request")}, ${as("tent")} FROM writes WHERE key = ?`);
  const note = db.prepare("INSERT INTO writes (key, request, tent) VALUES (?, ?, ?)");

  const once = (id: string, { key, request }: Write) => {
    if (writes.get(key)) throw new WriteRepeated(key);
    note.run(key, request, id);
  };
  const free = (name: string, id: string) => {
    const by = named.get(foldedName(name)) as Pick<TentRow, "id"> | undefined;
    if (by && text(by.id) !== id) throw new NameTaken(text(by.id));
  };
  const standing = (id: string, version: number) => {
    if ((one.get(id) as TentRow | undefined)?.version !== version) throw new Changed(id);
  };
  const kitText = ({ kit }: TentBody) => (kit === null || kit === undefined ? null : JSON.stringify(kit));

  return {
    tents: async () => (all.all() as TentRow[]).map(saved),
    tent: async (id) => {
      const row = one.get(id) as TentRow | undefined;
      return row ? saved(row) : null;
    },
    written: async (key) => {
      const row = writes.get(key) as { request: Uint8Array; tent: Uint8Array } | undefined;
      return row ? { request: text(row.request), tent: text(row.tent) } : null;
    },
    add: (id, body, write) =>
      run(() => {
        once(id, write);
        free(body.name, id);
        insert.run(id, body.name, foldedName(body.name), JSON.stringify(body.spec), kitText(body), 1, body.at);
      }),
    change: (id, version, body, write) =>
      run(() => {
        once(id, write);
        standing(id, version);
        free(body.name, id);
        update.run(body.name, foldedName(body.name), JSON.stringify(body.spec), kitText(body), version + 1, body.at, id);
      }),
    remove: (id, version, write) =>
      run(() => {
        once(id, write);
        standing(id, version);
        drop.run(id);
      }),
  };
}

const saved = ({ id, name, spec, kit, version, at }: TentRow): SavedTent => ({
  id: text(id),
  name: text(name),
  spec: parsed(spec),
  kit: kit && parsed(kit),
  version,
  at,
});
