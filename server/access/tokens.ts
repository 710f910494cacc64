import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import { hashOf } from "../../machines/digest/digest.ts";
import type { AccessStore, Token } from "../journal/access.ts";
import type { RandomBytes } from "./codes.ts";
import { sameBytes } from "./passphrase.ts";

const ID_BYTES = 6;
const SECRET_BYTES = 24;
/** What a script sends: `Authorization: Bearer rcall-ID-SECRET`. */
const SHOWN = /^Bearer (rcall-([0-9a-f]{12})-[0-9a-f]{48})$/;

/** A new token, as it is kept, and the one time that it can be read. Long and random, it needs no slow hash. */
export function makeToken(name: string, at: number, random: RandomBytes): { readonly token: Token; readonly secret: string } {
  const id = bytesToHex(random(ID_BYTES));
  const secret = `rcall-${id}-${bytesToHex(random(SECRET_BYTES))}`;
  return { secret, token: { id, name, hash: hashOf(utf8ToBytes(secret)), at, revokedAt: null } };
}

/** The token that a request shows; `null` where it is none of ours, or was revoked. */
export async function tokenShown(store: AccessStore, header: string): Promise<Token | null> {
  const [, secret = "", id] = SHOWN.exec(header) ?? [];
  const token = (await store.tokens()).find((one) => one.id === id && one.revokedAt === null);
  return token && sameBytes(utf8ToBytes(hashOf(utf8ToBytes(secret))), utf8ToBytes(token.hash)) ? token : null;
}
