import type { NoPhoto, PhotoType } from "../../machines/install/photo.ts";
import { letters } from "./parts.ts";
import { PNG_SIGNATURE } from "./png.ts";

/** So much of a file tells what it is. */
const HEAD_BYTES = 1024;

/** Of which kind a picture is by its first bytes, whatever it is called; `null` where it is none that is kept. */
export function photoTypeOf(bytes: Uint8Array): PhotoType | null {
  if (bytes[0] === 0xff && bytes[1] === 0xd8 && bytes[2] === 0xff) return "image/jpeg";
  if (PNG_SIGNATURE.every((byte, i) => bytes[i] === byte)) return "image/png";
  return letters(bytes, 0, 4) === "RIFF" && letters(bytes, 8, 12) === "WEBP" ? "image/webp" : null;
}

/** Files that begin with these letters at a place. */
const BEGINNINGS: readonly (readonly [at: number, begins: string, is: NoPhoto])[] = [
  [0, "%PDF", "pdf"],
  [0, "GIF8", "gif"],
  [0, "BM", "bmp"],
  [0, "II*\0", "tiff"],
  [0, "MM\0*", "tiff"],
  [0, "PK\u0003\u0004", "zip"],
  [0, "\u001aE\u00df\u00a3", "video"],
  [4, "ftypavi", "avif"],
  [4, "ftyphe", "heic"],
  [4, "ftypmif", "heic"],
  [4, "ftypmsf", "heic"],
  [4, "ftyp", "video"],
];

/** What came in place of a photo, by its first bytes: to be named to whoever sent it, and trusted in nothing. */
export function cameInstead(bytes: Uint8Array): NoPhoto {
  if (bytes.length === 0) return "empty";
  const begun = BEGINNINGS.find(([at, begins]) => letters(bytes, at, at + begins.length) === begins);
  if (begun) return begun[2];
  const head = textIn(bytes);
  if (head === null) return "unknown";
  if (/<svg[\s>]/i.test(head)) return "svg";
  return /^\s*<(?:!doctype|html|\?xml|!--|head|body|script)/i.test(head) ? "html" : "text";
}

/** Its beginning, where that is text; a letter that was cut off at the end is none the worse. */
function textIn(bytes: Uint8Array): string | null {
  try {
    const head = new TextDecoder("utf-8", { fatal: true }).decode(bytes.subarray(0, HEAD_BYTES), { stream: true });
    return /[^\P{Cc}\t\n\f\r]/u.test(head) ? null : head;
  } catch {
    return null;
  }
}
