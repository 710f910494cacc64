import { beginning } from "../lookup/beginning.ts";
import { SITE_LIMITS } from "./site-limits.ts";

/**
 * A name with something behind it, cut before that so that it is no longer than a name may be.
 *
 * @example nameWithin("gas 1", " part 2") // "gas 1 part 2"
 */
export function nameWithin(name: string, behind: string): string {
  return `${beginning(name, SITE_LIMITS.maxNameLetters - behind.length).trimEnd()}${behind}`;
}

type Named = { readonly id: unknown; readonly part: number };

/**
 * Names the parts of a file: the first of a feature as the feature is called, the others by their number after it ("main part 2"), and what
 * has no name by what it is. A name that a feature of the file has is taken by no part. Two features of one name keep it, and are refused.
 */
export function partNames(parts: readonly Pick<Named, "id">[]) {
  const taken = new Set(parts.flatMap(({ id }) => (typeof id === "string" ? [id.trim()] : [])));
  const free = (from: number, nameOf: (no: number) => string): string => {
    let no = from;
    while (taken.has(nameOf(no))) no++;
    taken.add(nameOf(no));
    return nameOf(no);
  };
  return ({ id, part }: Named, what: string, no: number): unknown => {
    if (id === undefined) return free(no, (n) => `${what} ${n}`);
    return typeof id === "string" && part > 1 ? free(part, (n) => nameWithin(id.trim(), ` part ${n}`)) : id;
  };
}
