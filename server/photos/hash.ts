import type { Hash } from "../../machines/digest/digest.ts";

/** SHA-256 in lowercase hex, as `hashOf` gives it, made beside the thread that answers: a hold does not wait for a photo. */
export async function hashBeside(bytes: Uint8Array<ArrayBuffer>): Promise<Hash> {
  const hash = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return [...hash].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}
