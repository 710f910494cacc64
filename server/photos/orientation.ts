import { viewOf } from "./parts.ts";

/**
 * Which way up a picture is to be shown (EXIF 2.32, tag 0x0112): 1 as it lies, 2 to 8 turned or mirrored, from 5 on with its sides
 * changed over. It is all that stays of a camera's notes, rewritten, as a picture without it would lie on its side.
 */
export type Orientation = number;
export const UPRIGHT: Orientation = 1;
const MAX_ORIENTATION = 8;

const TAG = 0x0112;
const SHORT = 3;
const LITTLE_ENDIAN = 0x4949;
const BIG_ENDIAN = 0x4d4d;
/** Head of a TIFF, and of one entry of a directory (TIFF 6.0, section 2), in bytes. */
const HEAD_BYTES = 8;
const ENTRY_BYTES = 12;

/** The orientation that a block of EXIF names; upright where it names none that there is, or cannot be read. */
export function orientationIn(tiff: Uint8Array): Orientation {
  if (tiff.length < HEAD_BYTES) return UPRIGHT;
  const view = viewOf(tiff);
  const order = view.getUint16(0);
  if (order !== LITTLE_ENDIAN && order !== BIG_ENDIAN) return UPRIGHT;
  const little = order === LITTLE_ENDIAN;
  const directory = view.getUint32(4, little);
  if (directory + 2 > tiff.length) return UPRIGHT;
  const entries = view.getUint16(directory, little);
  for (let i = 0; i < entries; i++) {
    const at = directory + 2 + i * ENTRY_BYTES;
    if (at + ENTRY_BYTES > tiff.length) return UPRIGHT;
    if (view.getUint16(at, little) !== TAG || view.getUint16(at + 2, little) !== SHORT) continue;
    const is = view.getUint16(at + 8, little);
    return is >= UPRIGHT && is <= MAX_ORIENTATION ? is : UPRIGHT;
  }
  return UPRIGHT;
}

/** A block of EXIF that says this and nothing else: one directory with one entry. */
export function tiffOf(orientation: Orientation): Uint8Array {
  const tiff = new Uint8Array(HEAD_BYTES + 2 + ENTRY_BYTES + 4);
  const view = viewOf(tiff);
  view.setUint16(0, BIG_ENDIAN);
  view.setUint16(2, 42);
  view.setUint32(4, HEAD_BYTES);
  view.setUint16(HEAD_BYTES, 1);
  view.setUint16(HEAD_BYTES + 2, TAG);
  view.setUint16(HEAD_BYTES + 4, SHORT);
  view.setUint32(HEAD_BYTES + 6, 1);
  view.setUint16(HEAD_BYTES + 10, orientation);
  return tiff;
}

/** The sides of a picture as it is shown. */
export const shownSides = (widthPx: number, heightPx: number, orientation: Orientation) =>
  orientation > 4 ? { widthPx: heightPx, heightPx: widthPx } : { widthPx, heightPx };
