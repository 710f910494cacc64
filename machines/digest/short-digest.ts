import type { Hash } from "./digest.ts";
import { LETTERS, readLetters, shownLetters } from "./letters.ts";

/**
 * So many letters has a short digest: 74 bits. Somebody who rewrites a record can try another one until its digest is the one on
 * paper; with 15 letters that takes 2^74 tries of a kilobyte each, with 12 it would be 2^59, which can be bought. Our own
 * margin, no source.
 */
export const DIGEST_LETTERS = 15;

const BASE = BigInt(LETTERS.length);
const SPACE = BASE ** BigInt(DIGEST_LETTERS);

/**
 * What of a hash can be written by hand and read aloud: the rest of the hash as a number, divided by all there are, in the letters
 * of codes.
 *
 * @param hash SHA-256 in hex, of the last entry of a job or of the house stream
 */
export function shortDigest(hash: Hash): string {
  let rest = BigInt(`0x${hash}`) % SPACE;
  let letters = "";
  for (let n = 0; n < DIGEST_LETTERS; n++) {
    letters = LETTERS[Number(rest % BASE)] + letters;
    rest /= BASE;
  }
  return letters;
}

/** The short digest of a hash as it is written down, in groups of three. */
export const shownDigest = (hash: Hash): string => shownLetters(shortDigest(hash));

/** Where two digests of the same length differ, counted from 1. */
const differences = (a: string, b: string): number[] => [...a].flatMap((letter, i) => (letter === b[i] ? [] : [i + 1]));

/** So many letters may be misread in a digest that is still known again. By chance one in 10^17 is as near. */
const MAX_MISREAD = 2;

/** A digest as somebody typed it: its letters; those that are in no digest; whether there are as many as in one. */
export type TypedDigest = { readonly letters: string; readonly strange: readonly string[]; readonly isWhole: boolean };

/** Reads a digest from paper, in either case and however it is parted. */
export function readDigest(typed: string): TypedDigest {
  const letters = readLetters(typed);
  const strange = [...new Set([...letters].filter((letter) => !LETTERS.includes(letter)))];
  return { letters, strange, isWhole: [...letters].length === DIGEST_LETTERS };
}

/** Which of some hashes a digest stands for: the first that comes to it, else the first that is off by a letter or two, and where. */
export type Match = { readonly at: number; readonly digest: string; readonly off: readonly number[] };

/** Looks a digest up among hashes in order; `null` where none comes near it. */
export function findDigest(letters: string, hashes: readonly Hash[]): Match | null {
  let near: Match | null = null;
  if ([...letters].length !== DIGEST_LETTERS) return null;
  for (const [at, hash] of hashes.entries()) {
    const digest = shortDigest(hash);
    if (digest === letters) return { at, digest, off: [] };
    if (near) continue;
    const off = differences(letters, digest);
    if (off.length <= MAX_MISREAD) near = { at, digest, off };
  }
  return near;
}
