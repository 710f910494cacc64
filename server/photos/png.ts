import { type Orientation, orientationIn, shownSides, tiffOf, UPRIGHT } from "./orientation.ts";
import { ascii, type CleanPhoto, joined, letters, MAX_PARTS, NotKept, viewOf } from "./parts.ts";

const mime = "image/png";

export const PNG_SIGNATURE: readonly number[] = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
/** Head, palette, picture, end; and what says how colors are meant, in figures (PNG, third edition, table 7). All else that need not be read is left out. */
const CRITICAL: readonly string[] = ["IHDR", "PLTE", "IDAT", "IEND"];
const COLORS: readonly string[] = ["tRNS", "cHRM", "gAMA", "sBIT", "sRGB", "cICP", "pHYs"];
const HEAD_BYTES = 13;
/** Of a chunk without its data: length, name, sum. */
const FRAME_BYTES = 12;

/** A PNG with its picture and how its colors are meant, and nothing else but which way is up. It ends where its picture does. Throws NotKept. */
export function cleanPng(bytes: Uint8Array): CleanPhoto {
  const view = viewOf(bytes);
  const kept: Uint8Array[] = [];
  let head: Uint8Array | null = null;
  let orientation: Orientation = UPRIGHT;
  let hasPicture = false;
  for (let at = PNG_SIGNATURE.length, parts = 0; ; parts++) {
    if (parts > MAX_PARTS) throw new NotKept({ is: "broken", mime });
    if (at + FRAME_BYTES > bytes.length) throw new NotKept({ is: "cutShort", mime });
    const length = view.getUint32(at);
    const end = at + FRAME_BYTES + length;
    if (end > bytes.length) throw new NotKept({ is: "cutShort", mime });
    const name = letters(bytes, at + 4, at + 8);
    const data = bytes.subarray(at + 8, end - 4);
    if (view.getUint32(end - 4) !== sumOf(bytes.subarray(at + 4, end - 4)) || (head === null) !== (name === "IHDR"))
      throw new NotKept({ is: "broken", mime });
    if (name === "IHDR") head = data;
    else if (name === "eXIf") orientation = orientationIn(data);
    else if (name === "IEND") break;
    else if (CRITICAL.includes(name) || COLORS.includes(name)) kept.push(bytes.subarray(at, end));
    else if (isCritical(name)) throw new NotKept({ is: "broken", mime });
    hasPicture ||= name === "IDAT";
    at = end;
  }
  if (head?.length !== HEAD_BYTES || !hasPicture) throw new NotKept({ is: "broken", mime });
  const [widthPx, heightPx] = [viewOf(head).getUint32(0), viewOf(head).getUint32(4)];
  const turned = orientation === UPRIGHT ? [] : [chunk("eXIf", tiffOf(orientation))];
  const whole = [Uint8Array.from(PNG_SIGNATURE), chunk("IHDR", head), ...turned, ...kept, chunk("IEND", new Uint8Array())];
  return { mime, bytes: joined(whole), ...shownSides(widthPx, heightPx, orientation) };
}

/** The case of its first letter says whether a chunk has to be understood. */
const isCritical = (name: string) => !/^[a-z]/.test(name);

function chunk(name: string, data: Uint8Array): Uint8Array {
  const inner = joined([ascii(name), data]);
  const frame = new Uint8Array(8);
  viewOf(frame).setUint32(0, data.length);
  viewOf(frame).setUint32(4, sumOf(inner));
  return joined([frame.subarray(0, 4), inner, frame.subarray(4)]);
}

/** The sums of single bytes (PNG, annex D). */
const SUMS = Uint32Array.from({ length: 256 }, (_, byte) => {
  let sum = byte;
  for (let bit = 0; bit < 8; bit++) sum = sum & 1 ? 0xedb88320 ^ (sum >>> 1) : sum >>> 1;
  return sum;
});
/** CRC-32 of some bytes. */
function sumOf(bytes: Uint8Array): number {
  let sum = 0xffffffff;
  for (const byte of bytes) sum = SUMS[(sum ^ byte) & 0xff]! ^ (sum >>> 8);
  return (sum ^ 0xffffffff) >>> 0;
}
