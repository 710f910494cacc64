import { type Orientation, orientationIn, shownSides, tiffOf, UPRIGHT } from "./orientation.ts";
import { ascii, type CleanPhoto, joined, letters, MAX_PARTS, NotKept, viewOf } from "./parts.ts";

const mime = "image/jpeg";

// Markers of ITU-T T.81, table B.1.
const SOI = 0xd8;
const EOI = 0xd9;
const SOS = 0xda;
const APP0 = 0xe0;
const APP1 = 0xe1;
const APP14 = 0xee;
/** Baseline, extended and progressive with Huffman codes: the frames that browsers show. */
const FRAMES: readonly number[] = [0xc0, 0xc1, 0xc2];
/** Huffman and quantization tables, restart interval: what a decoder needs. */
const TABLES: readonly number[] = [0xc4, 0xdb, 0xdd];
const isNotes = (marker: number) => (marker >= 0xe0 && marker <= 0xef) || marker === 0xfe;
const isRestart = (marker: number) => marker >= 0xd0 && marker <= 0xd7;

const EXIF = "Exif\0\0";
/** Version, density and its unit of a JFIF head, without the small picture that may follow (JFIF 1.02). */
const JFIF_BYTES = 12;
const ADOBE_BYTES = 12;

/**
 * A JPEG with what its picture is made of and nothing else: frame, tables, scans, how its colors are coded (JFIF, Adobe), and which
 * way is up. It ends where its picture does. Throws NotKept.
 */
export function cleanJpeg(bytes: Uint8Array): CleanPhoto {
  const kept: Uint8Array[] = [];
  let heads: { readonly jfif?: Uint8Array; readonly adobe?: Uint8Array } = {};
  let turned: Orientation | null = null;
  let sides: { readonly widthPx: number; readonly heightPx: number } | null = null;
  let scans = 0;
  for (let at = 2, parts = 0; ; parts++) {
    const { marker, body, end } = segmentAt(bytes, at);
    if (parts > MAX_PARTS) throw new NotKept({ is: "broken", mime });
    if (marker === EOI) break;
    // Of two blocks browsers go by the first.
    if (marker === APP1 && letters(body, 0, EXIF.length) === EXIF) turned ??= orientationIn(body.subarray(EXIF.length));
    else if (marker === APP0 && letters(body, 0, 5) === "JFIF\0") heads = { jfif: jfifOf(body), ...heads };
    else if (marker === APP14 && letters(body, 0, 5) === "Adobe")
      heads = { adobe: segment(APP14, body.subarray(0, ADOBE_BYTES)), ...heads };
    else if (!isNotes(marker)) {
      if (FRAMES.includes(marker)) {
        if (sides) throw new NotKept({ is: "broken", mime });
        sides = sidesOf(body);
      } else if (marker === SOS) {
        if (!sides) throw new NotKept({ is: "broken", mime });
        scans++;
      } else if (!TABLES.includes(marker)) throw new NotKept({ is: "broken", mime });
      kept.push(segment(marker, body));
    }
    at = end;
    if (marker !== SOS) continue;
    at = scanEnd(bytes, end);
    kept.push(bytes.subarray(end, at));
  }
  if (!sides || scans === 0) throw new NotKept({ is: "broken", mime });
  const { jfif, adobe } = heads;
  const orientation = turned ?? UPRIGHT;
  const way = orientation === UPRIGHT ? [] : [segment(APP1, joined([ascii(EXIF), tiffOf(orientation)]))];
  const whole = [marked(SOI), ...(jfif ? [jfif] : []), ...way, ...(adobe ? [adobe] : []), ...kept, marked(EOI)];
  return { mime, bytes: joined(whole), ...shownSides(sides.widthPx, sides.heightPx, orientation) };
}

/** The marker at a place, after fill bytes, with what belongs to it. */
function segmentAt(bytes: Uint8Array, start: number): { marker: number; body: Uint8Array; end: number } {
  let at = start;
  if (at >= bytes.length) throw new NotKept({ is: "cutShort", mime });
  if (bytes[at] !== 0xff) throw new NotKept({ is: "broken", mime });
  while (bytes[at] === 0xff) at++;
  const marker = bytes[at];
  if (marker === undefined) throw new NotKept({ is: "cutShort", mime });
  at++;
  if (marker === EOI) return { marker, body: bytes.subarray(at, at), end: at };
  if (at + 2 > bytes.length) throw new NotKept({ is: "cutShort", mime });
  const length = viewOf(bytes).getUint16(at);
  if (length < 2) throw new NotKept({ is: "broken", mime });
  if (at + length > bytes.length) throw new NotKept({ is: "cutShort", mime });
  return { marker, body: bytes.subarray(at + 2, at + length), end: at + length };
}

/** Where the coded data of a scan end: at the first marker that is none of theirs. */
function scanEnd(bytes: Uint8Array, start: number): number {
  for (let at = bytes.indexOf(0xff, start); at >= 0; at = bytes.indexOf(0xff, at + 1)) {
    const next = bytes[at + 1];
    if (next === undefined) break;
    if (next !== 0x00 && next !== 0xff && !isRestart(next)) return at;
  }
  throw new NotKept({ is: "cutShort", mime });
}

/** From a frame's head (T.81, B.2.2): precision, lines, samples a line. */
function sidesOf(body: Uint8Array): { readonly widthPx: number; readonly heightPx: number } {
  if (body.length < 6) throw new NotKept({ is: "broken", mime });
  const view = viewOf(body);
  return { widthPx: view.getUint16(3), heightPx: view.getUint16(1) };
}

/** A JFIF head without its small picture, which may show more than the large one. */
function jfifOf(body: Uint8Array): Uint8Array {
  if (body.length < JFIF_BYTES + 2) throw new NotKept({ is: "broken", mime });
  return segment(APP0, joined([body.subarray(0, JFIF_BYTES), new Uint8Array(2)]));
}

const marked = (marker: number) => Uint8Array.of(0xff, marker);
function segment(marker: number, body: Uint8Array): Uint8Array {
  const length = body.length + 2;
  return joined([Uint8Array.of(0xff, marker, length >> 8, length & 0xff), body]);
}
