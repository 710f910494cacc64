import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import type { RandomBytes } from "./codes.ts";
import { sameBytes } from "./passphrase.ts";

const KEY_BYTES = 24;

/** A key that is printed where the server was started, and lets into the office once, until the server is started again. */
export function createFirstLink(random: RandomBytes) {
  const key = bytesToHex(random(KEY_BYTES));
  let isTaken = false;
  return {
    key,
    take(shown: string): boolean {
      if (isTaken || !sameBytes(utf8ToBytes(shown), utf8ToBytes(key))) return false;
      isTaken = true;
      return true;
    },
  };
}
export type FirstLink = ReturnType<typeof createFirstLink>;
