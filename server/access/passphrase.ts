import { scryptAsync } from "@noble/hashes/scrypt.js";
import { bytesToHex, hexToBytes, utf8ToBytes } from "@noble/hashes/utils.js";

/** Work of scrypt for a passphrase: 2^15, 8, 3 takes 32 MiB (OWASP Password Storage Cheat Sheet, scrypt, third of its equal choices). */
const WORK = { logN: 15, r: 8, p: 3 } as const;
const HASH_BYTES = 32;
export const SALT_BYTES = 16;
/** The shortest that is taken, and the longest that is worked on, in characters. */
export const PASSPHRASE_BOUNDS = { from: 12, to: 200 } as const;

/** A passphrase as it is kept: the work, the salt and the hash, so that the work can be raised later. */
export async function hashedPassphrase(passphrase: string, salt: Uint8Array): Promise<string> {
  const { logN, r, p } = WORK;
  return ["scrypt", logN, r, p, bytesToHex(salt), bytesToHex(await derived(passphrase, salt, WORK))].join("$");
}

/** Whether it is the one that was kept. What is no hash of ours fits nothing. */
export async function fitsPassphrase(passphrase: string, kept: string): Promise<boolean> {
  const [kind, logN, r, p, salt, hash] = kept.split("$");
  if (kind !== "scrypt" || salt === undefined || hash === undefined) return false;
  const work = { logN: Number(logN), r: Number(r), p: Number(p) };
  return sameBytes(await derived(passphrase, hexToBytes(salt), work), hexToBytes(hash));
}

/** However it is typed on whichever keyboard: composed alike, without spaces around it. Gives way to a hold every few milliseconds. */
const derived = (passphrase: string, salt: Uint8Array, { logN, r, p }: { logN: number; r: number; p: number }) =>
  scryptAsync(utf8ToBytes(passphrase.normalize("NFKC").trim()), salt, { N: 2 ** logN, r, p, dkLen: HASH_BYTES });

/** Compares in the same time wherever they differ. */
export function sameBytes(a: Uint8Array, b: Uint8Array): boolean {
  if (a.length !== b.length) return false;
  let different = 0;
  for (const [i, byte] of a.entries()) different |= byte ^ b[i]!;
  return different === 0;
}
