import type { LoadItem } from "../tent/load.ts";
import type { Frozen } from "./step.ts";
import { kitKey, pieceKey, type Thing } from "./thing.ts";
import { truckLoadOf } from "./truck-load.ts";

/** Everything of a job that can be out of use: its pieces in laying order, and the lines of its truck list. */
export type Things = { readonly pieces: readonly string[]; readonly items: readonly LoadItem[] };

const known = new WeakMap<Frozen, Things>();
/** Made once for each frozen job. */
export function thingsOf(frozen: Frozen): Things {
  const before = known.get(frozen);
  if (before) return before;
  const { brief, plan, limits } = frozen;
  const made = { pieces: plan.pieces.map((p) => p.id), items: truckLoadOf(brief, plan, limits).map((line) => line.item) };
  known.set(frozen, made);
  return made;
}

/** Whether a job has a thing. */
export const hasThing = ({ pieces, items }: Things, thing: Thing): boolean =>
  thing.is === "piece" ? pieces.includes(thing.id) : items.includes(thing.item);

/** The keys of all of a job's things. */
export const keysOf = ({ pieces, items }: Things): ReadonlySet<string> => new Set([...pieces.map(pieceKey), ...items.map(kitKey)]);
