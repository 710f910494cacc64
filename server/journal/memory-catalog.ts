import {
  type Catalog,
  Changed,
  compareText,
  foldedName,
  NameTaken,
  type SavedTent,
  type TentBody,
  type Write,
  WriteRepeated,
} from "./catalog.ts";

/** A list of tents that lasts as long as the program does. */
export function memoryCatalog(): Catalog {
  const tents = new Map<string, SavedTent>();
  const writes = new Map<string, { readonly request: string; readonly tent: string }>();

  const refuseRepeat = ({ key }: Write) => {
    if (writes.has(key)) throw new WriteRepeated(key);
  };
  const refuseTaken = (name: string, id: string) => {
    const by = [...tents.values()].find((t) => t.id !== id && foldedName(t.name) === foldedName(name));
    if (by) throw new NameTaken(by.id);
  };
  const refuseChanged = (id: string, version: number) => {
    if (tents.get(id)?.version !== version) throw new Changed(id);
  };
  const note = (id: string, { key, request }: Write) => writes.set(key, { request, tent: id });
  // Copied as a file would: what the caller does to it afterward is its own affair.
  const put = (id: string, version: number, { name, spec, kit, at }: TentBody) =>
    tents.set(id, structuredClone({ id, name, spec, kit: kit ?? null, version, at }));

  return {
    tents: async () => structuredClone([...tents.values()].sort(byName)),
    tent: async (id) => structuredClone(tents.get(id) ?? null),
    written: async (key) => writes.get(key) ?? null,
    add: async (id, body, write) => {
      refuseRepeat(write);
      refuseTaken(body.name, id);
      put(id, 1, body);
      note(id, write);
    },
    change: async (id, version, body, write) => {
      refuseRepeat(write);
      refuseChanged(id, version);
      refuseTaken(body.name, id);
      put(id, version + 1, body);
      note(id, write);
    },
    remove: async (id, version, write) => {
      refuseRepeat(write);
      refuseChanged(id, version);
      tents.delete(id);
      note(id, write);
    },
  };
}

const byName = (a: SavedTent, b: SavedTent) => compareText(foldedName(a.name), foldedName(b.name)) || compareText(a.id, b.id);
