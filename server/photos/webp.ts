import { ascii, type CleanPhoto, joined, letters, MAX_PARTS, NotKept, viewOf } from "./parts.ts";

const mime = "image/webp";

/** RIFF, its length, WEBP; and of a chunk its name and length (RFC 9649, 2.3 and 2.4). */
const HEAD_BYTES = 12;
const CHUNK_BYTES = 8;
/** Of an extended file: what is in it (2.7). */
const EXTENDED_BYTES = 10;
const ALPHA = 0x10;

type Sides = { readonly widthPx: number; readonly heightPx: number };

/**
 * A WebP with its picture and its alpha, and nothing else. It ends where its picture does. Which way is up is left out too: no
 * browser turns a WebP by it, so that it is seen as it was. Throws NotKept.
 */
export function cleanWebp(bytes: Uint8Array): CleanPhoto {
  const whole = HEAD_BYTES - 4 + viewOf(bytes).getUint32(4, true);
  if (whole > bytes.length) throw new NotKept({ is: "cutShort", mime });
  const found = new Map<string, Uint8Array>();
  for (let at = HEAD_BYTES, parts = 0; at + CHUNK_BYTES <= whole; parts++) {
    if (parts > MAX_PARTS) throw new NotKept({ is: "broken", mime });
    const length = viewOf(bytes).getUint32(at + 4, true);
    const end = at + CHUNK_BYTES + length;
    if (end > whole) throw new NotKept({ is: "cutShort", mime });
    const name = letters(bytes, at, at + 4);
    if (name === "ANIM" || name === "ANMF") throw new NotKept({ is: "moving", mime });
    if (!found.has(name)) found.set(name, bytes.subarray(at + CHUNK_BYTES, end));
    at = end + (length % 2);
  }
  const picture = ["VP8 ", "VP8L"].filter((name) => found.has(name));
  const [name] = picture;
  if (!name || picture.length > 1) throw new NotKept({ is: "broken", mime });
  const data = found.get(name)!;
  const sides = name === "VP8 " ? sidesOfLossy(data) : sidesOfLossless(data);
  const extended = found.get("VP8X");
  const alpha = extended && name === "VP8 " ? found.get("ALPH") : undefined;
  const chunks = [
    ...(extended ? [chunk("VP8X", extendedHead(extended, sides))] : []),
    ...(alpha ? [chunk("ALPH", alpha)] : []),
    chunk(name, data),
  ];
  const inner = joined([ascii("WEBP"), ...chunks]);
  return { mime, bytes: joined([ascii("RIFF"), lengthOf(inner), inner]), ...sides };
}

/** What an extended file says is in it: of its flags only alpha stays. */
function extendedHead(head: Uint8Array, { widthPx, heightPx }: Sides): Uint8Array {
  if (head.length !== EXTENDED_BYTES) throw new NotKept({ is: "broken", mime });
  const view = viewOf(head);
  if (threeBytes(view, 4) + 1 !== widthPx || threeBytes(view, 7) + 1 !== heightPx) throw new NotKept({ is: "broken", mime });
  return joined([Uint8Array.of(head[0]! & ALPHA, 0, 0, 0), head.subarray(4)]);
}
const threeBytes = (view: DataView, at: number) => view.getUint16(at, true) + view.getUint8(at + 2) * 0x10000;

/** From the head of a key frame (RFC 6386, 9.1). */
function sidesOfLossy(data: Uint8Array): Sides {
  if (data.length < 10 || (data[0]! & 1) !== 0 || data[3] !== 0x9d || data[4] !== 0x01 || data[5] !== 0x2a)
    throw new NotKept({ is: "broken", mime });
  const view = viewOf(data);
  return { widthPx: view.getUint16(6, true) & 0x3fff, heightPx: view.getUint16(8, true) & 0x3fff };
}

/** From the head of a lossless picture (RFC 9649, 3.4). */
function sidesOfLossless(data: Uint8Array): Sides {
  if (data.length < 5 || data[0] !== 0x2f) throw new NotKept({ is: "broken", mime });
  const bits = viewOf(data).getUint32(1, true);
  return { widthPx: (bits & 0x3fff) + 1, heightPx: ((bits >>> 14) & 0x3fff) + 1 };
}

function chunk(name: string, data: Uint8Array): Uint8Array {
  return joined([ascii(name), lengthOf(data), data, new Uint8Array(data.length % 2)]);
}
function lengthOf(data: Uint8Array): Uint8Array {
  const length = new Uint8Array(4);
  viewOf(length).setUint32(0, data.length, true);
  return length;
}
