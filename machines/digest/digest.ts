import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import canonicalize from "canonicalize";

/** Canonical JSON of a value (RFC 8785). Throws on values that JSON cannot hold. */
function textOf(value: unknown): string {
  const text = canonicalize(value);
  if (text === undefined) throw new Error(`${typeof value} has no JSON form`);
  return text;
}

const texts = new WeakMap<object, string>();
function textOnce(value: unknown): string {
  if (typeof value !== "object" || value === null) return textOf(value);
  const known = texts.get(value) ?? textOf(value);
  texts.set(value, known);
  return known;
}

/** The same text, put together down to `depth` levels of members from texts that are kept. */
function joined(value: unknown, depth: number): string {
  if (depth === 0 || typeof value !== "object" || value === null || Array.isArray(value)) return textOnce(value);
  const members = Object.entries(value).filter(([, member]) => member !== undefined);
  members.sort(([a], [b]) => (a < b ? -1 : 1));
  return `{${members.map(([name, member]) => `${textOf(name)}:${joined(member, depth - 1)}`).join(",")}}`;
}

const bytes = (value: unknown): Uint8Array => utf8ToBytes(textOf(value));

/** SHA-256 in lowercase hex. */
export const hashOf = (data: Uint8Array): Hash => bytesToHex(sha256(data));

export const digest = {
  /** Canonical JSON of a value (RFC 8785), as UTF-8. Throws on values that JSON cannot hold. */
  bytes,
  /** SHA-256 of a value's canonical JSON. */
  of: (value: unknown): Hash => hashOf(bytes(value)),
  /**
   * The same digest of a value that grows by replacing members and never changes one: what lies `depth` levels down is put
   * into text once, and kept for as long as somebody holds it.
   */
  ofGrowing: (value: unknown, depth: number): Hash => hashOf(utf8ToBytes(joined(value, depth))),
};

/** A SHA-256 in lowercase hex. */
export type Hash = string;
