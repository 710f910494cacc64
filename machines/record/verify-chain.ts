import { type Hash, hashOf } from "../digest/digest.ts";
import { type Entry, keyOf, NO_ENTRY, type Sealed, unseal } from "./entry.ts";

export type Chain =
  | { readonly holds: true; readonly entries: readonly Sealed[] }
  | { readonly holds: false; readonly entries: readonly Sealed[]; readonly firstMismatch: number; readonly why: Mismatch };
/** Bytes do not match the hash; bytes are not an entry; wrong previous hash; number out of order; entry of another job; filed otherwise than it says. */
export type Mismatch = "hash" | "notJson" | "prev" | "gap" | "job" | "filed";

/** What a store keeps beside an entry to find it by. All of it stands in the entry too. */
export type Filed = { readonly prev: Hash; readonly key?: string };
/** A line of a record as it lies somewhere, not trusted yet; `filed` where a store has it beside. */
export type Line = { readonly no: number; readonly hash: Hash; readonly bytes: Uint8Array; readonly filed?: Filed };

/**
 * Reads the lines of one job in order up to the first that does not fit, and reports that one. Lines missing from the end
 * cannot be detected from the record itself: compare the last hash with a copy kept elsewhere.
 */
export function verifyChain(lines: readonly Line[]): Chain {
  const entries: Sealed[] = [];
  for (const [i, line] of lines.entries()) {
    const mismatch = (why: Mismatch): Chain => ({ holds: false, entries, firstMismatch: i + 1, why });
    let sealed: Sealed;
    try {
      sealed = unseal(line.bytes, line.hash);
    } catch {
      return mismatch(hashOf(line.bytes) === line.hash ? "notJson" : "hash");
    }
    if (typeof sealed.entry !== "object" || sealed.entry === null) return mismatch("notJson");
    const { no, prev, job } = sealed.entry;
    if (no !== i + 1 || line.no !== no) return mismatch("gap");
    if (prev !== (entries.at(-1)?.hash ?? NO_ENTRY)) return mismatch("prev");
    if (job !== (entries[0] ?? sealed).entry.job) return mismatch("job");
    if (line.filed && !isFiledSo(line.filed, sealed.entry)) return mismatch("filed");
    entries.push(sealed);
  }
  return { holds: true, entries };
}

/** Found by another key, the same request would be done twice. What has no key at all is for a replay to find. */
function isFiledSo({ prev, key }: Filed, entry: Entry): boolean {
  if (prev !== entry.prev) return false;
  try {
    return key === undefined || key === keyOf(entry);
  } catch {
    return true;
  }
}
