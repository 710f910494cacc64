import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import canonicalize from "canonicalize";

/** Canonical JSON of a value (RFC 8785), as UTF-8. Throws on values that JSON cannot hold. */
function bytes(value: unknown): Uint8Array {
  const text = canonicalize(value);
  if (text === undefined) throw new Error(`${typeof value} has no JSON form`);
  return utf8ToBytes(text);
}

/** SHA-256 in lowercase hex. */
export const hashOf = (data: Uint8Array): Hash => bytesToHex(sha256(data));

export const digest = {
  bytes,
  /** SHA-256 of a value's canonical JSON. */
  of: (value: unknown): Hash => hashOf(bytes(value)),
};

/** A SHA-256 in lowercase hex. */
export type Hash = string;
