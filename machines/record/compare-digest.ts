import type { Hash } from "../digest/digest.ts";
import { findDigest, type Match, readDigest, type TypedDigest } from "../digest/short-digest.ts";
import type { HouseSealed } from "./house.ts";

/** What comes to a digest: an entry of a job, by its title, or of the house stream, by its day. */
export type Stands =
  | { readonly of: "job"; readonly title: string | null; readonly no: number; readonly isLast: boolean }
  | { readonly of: "house"; readonly day: string; readonly no: number; readonly isLast: boolean };
/** What a digest from paper comes to: something; something nearly, off at some letters; nothing; or it can be none. */
export type Compared =
  | { readonly is: "same"; readonly stands: Stands }
  | { readonly is: "near"; readonly stands: Stands; readonly digest: string; readonly off: readonly number[] }
  | { readonly is: "none" }
  | { readonly is: "unreadable"; readonly typed: TypedDigest };

/** A job for its digests: the hashes of its entries that hold, and how many entries it has in all. */
export type Compares = { readonly title: string | null; readonly hashes: readonly Hash[]; readonly entries: number };

/** Looks a digest up in what is verified, job by job, and in the house stream. */
export type Comparison = {
  readonly job: (job: Compares) => void;
  readonly house: (entries: readonly HouseSealed[]) => void;
  /** `null` where no digest was given. */
  readonly found: () => Compared | null;
};

/** A comparison with a digest as somebody typed it; with `null` there is nothing to compare. */
export function comparison(digest: string | null): Comparison {
  if (digest === null) return { job: () => {}, house: () => {}, found: () => null };
  const typed = readDigest(digest);
  let best: Compared = typed.isWhole && typed.strange.length === 0 ? { is: "none" } : { is: "unreadable", typed };
  const note = (match: Match | null, stands: (at: number) => Stands) => {
    if (match === null || best.is === "same" || (best.is === "near" && match.off.length > 0)) return;
    const found = { stands: stands(match.at), digest: match.digest, off: match.off };
    best = match.off.length === 0 ? { is: "same", stands: found.stands } : { is: "near", ...found };
  };
  return {
    job: ({ title, hashes, entries }) =>
      note(findDigest(typed.letters, hashes), (at) => ({ of: "job", title, no: at + 1, isLast: at === entries - 1 })),
    house: (entries) => {
      const hashes = entries.map(({ hash }) => hash);
      note(findDigest(typed.letters, hashes), (at) => ({
        of: "house",
        day: entries[at]!.entry.day,
        no: at + 1,
        isLast: at === entries.length - 1,
      }));
    },
    found: () => best,
  };
}
