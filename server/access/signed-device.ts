import { hmac } from "@noble/hashes/hmac.js";
import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, hexToBytes, utf8ToBytes } from "@noble/hashes/utils.js";
import type { DeviceId } from "../../machines/install/ids.ts";
import { sameBytes } from "./passphrase.ts";

const DEVICE = /^[\w-]{6,64}$/;
export const isDevice = (name: string): name is DeviceId => DEVICE.test(name) && !(name in Object.prototype);

/** What only this server can sign a text with, by HMAC-SHA-256. `key` is 32 bytes. */
export const signature = (text: string, key: Uint8Array): Uint8Array => hmac(sha256, key, utf8ToBytes(text));

/** A device's name as its cookie carries it: with what only this server can sign it with. `key` is 32 bytes. */
export const signed = (device: DeviceId, key: Uint8Array): string => `${device}.${bytesToHex(signature(device, key))}`;

/** The device that a cookie names; `null` where this server did not sign it. */
export function deviceSigned(cookie: string, key: Uint8Array): DeviceId | null {
  const [, device = "", hex = ""] = /^([\w-]+)\.([0-9a-f]{64})$/.exec(cookie) ?? [];
  return isDevice(device) && sameBytes(hexToBytes(hex), signature(device, key)) ? device : null;
}
