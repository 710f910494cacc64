import type { PhotoType } from "../../machines/install/photo.ts";
import { ascii, joined } from "../../server/photos/parts.ts";

const bytes = (base64: string): Uint8Array<ArrayBuffer> => new Uint8Array(Buffer.from(base64, "base64"));

/** The same picture of 32 by 24 px, yellow with a green quarter at the top left, drawn on a canvas for this project. */
export const PICTURES: Readonly<Record<PhotoType, Uint8Array<ArrayBuffer>>> = {
  "image/jpeg": bytes(
    "/9j/4AAQSkZJRgABAQAAAQABAAD/2wBDABALDA4MChAODQ4SERATGCgaGBYWGDEjJR0oOjM9PDkzODdASFxOQERXRTc4UG1RV19iZ2hnPk1xeXBkeFxlZ2P/2wBDARESEhgVGC8aGi9jQjhCY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2P/wAARCAAYACADASIAAhEBAxEB/8QAFQABAQAAAAAAAAAAAAAAAAAAAAb/xAAYEAEAAwEAAAAAAAAAAAAAAAAAFmSj4v/EABcBAQEBAQAAAAAAAAAAAAAAAAAFAwT/xAAYEQEAAwEAAAAAAAAAAAAAAAAAAxRRsf/aAAwDAQACEQMRAD8AmhTRG9l0RG9l047cO9Z15MU4CKqAAAAP/9k=",
  ),
  "image/png": bytes(
    "iVBORw0KGgoAAAANSUhEUgAAACAAAAAYCAYAAACbU/80AAAARElEQVR4AezUMQ0AMAhEUYIGXFRE50qrvdqoiEPEDSyf5O/kkZB1lpz0tpwyhocFEEAAAQTy3won95NzAgQQQACBcYEGAAD//8zSP8EAAAAGSURBVAMAXPxiEbYceBcAAAAASUVORK5CYII=",
  ),
  "image/webp": bytes(
    "UklGRnQAAABXRUJQVlA4WAoAAAAAAAAAHwAAFwAAVlA4IFYAAAAQBACdASogABgAPtFUo0uoJKMhsAgBABoJQBWF0rkwFv/gPJAJPI7oAAD+6LHX6o0wMAzNs0/vFyzfBEmLUBHgZB7ar1RvRKA00CaDF6wsjrDlFQAAAA==",
  ),
};

/** Stands in everything that a camera of these tests writes beside its picture. */
export const PLACE = "44.55880 N 95.77120 W, phone of Jory";

/** EXIF as a camera writes it: which way is up, a description, and a directory with the place (EXIF 2.32, 4.6). */
function exifOf(orientation: number): Uint8Array {
  const place = Buffer.from(`${PLACE}\0`);
  const tiff = Buffer.alloc(8 + 2 + 3 * 12 + 4 + 2 + 12 + 4);
  const gpsAt = 8 + 2 + 3 * 12 + 4;
  tiff.write("II*\0", 0, "latin1");
  tiff.writeUInt32LE(8, 4);
  tiff.writeUInt16LE(3, 8);
  const entry = (at: number, [tag, type, count, value]: readonly [number, number, number, number]) => {
    tiff.writeUInt16LE(tag, at);
    tiff.writeUInt16LE(type, at + 2);
    tiff.writeUInt32LE(count, at + 4);
    tiff.writeUInt32LE(value, at + 8);
  };
  entry(10, [0x010e, 2, place.length, tiff.length]);
  entry(22, [0x0112, 3, 1, orientation]);
  entry(34, [0x8825, 4, 1, gpsAt]);
  tiff.writeUInt16LE(1, gpsAt);
  entry(gpsAt + 2, [0x001c, 7, place.length, tiff.length]);
  return joined([tiff, place]);
}

function segment(marker: number, body: Uint8Array): Uint8Array {
  return joined([Uint8Array.of(0xff, marker, (body.length + 2) >> 8, (body.length + 2) & 0xff), body]);
}
function pngChunk(name: string, data: Uint8Array): Uint8Array {
  const inner = joined([ascii(name), data]);
  const frame = Buffer.alloc(8);
  frame.writeUInt32BE(data.length, 0);
  frame.writeUInt32BE(crcOf(inner), 4);
  return joined([frame.subarray(0, 4), inner, frame.subarray(4)]);
}
/** CRC-32, bit by bit: another way than the program's. */
function crcOf(data: Uint8Array): number {
  let sum = 0xffffffff;
  for (const byte of data) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit++) sum = (sum >>> 1) ^ (sum & 1 ? 0xedb88320 : 0);
  }
  return (sum ^ 0xffffffff) >>> 0;
}
function riffChunk(name: string, data: Uint8Array): Uint8Array {
  const length = Buffer.alloc(4);
  length.writeUInt32LE(data.length);
  return joined([ascii(name), length, data, new Uint8Array(data.length % 2)]);
}

/** A picture as a camera leaves it: the place and the phone in every part that can hold them. */
export function fromCamera(type: PhotoType, orientation = 1, picture: Uint8Array = PICTURES[type]): Uint8Array<ArrayBuffer> {
  const note = Buffer.from(PLACE);
  const exif = exifOf(orientation);
  switch (type) {
    case "image/jpeg": {
      const notes = [
        segment(0xe1, joined([ascii("Exif\0\0"), exif])),
        segment(0xe1, joined([ascii("http://ns.adobe.com/xap/1.0/\0"), note])),
        segment(0xe2, joined([ascii("ICC_PROFILE\0"), note])),
        segment(0xed, joined([ascii("Photoshop 3.0\0"), note])),
        segment(0xfe, note),
      ];
      // After the JFIF head, which is twenty bytes from the start.
      return joined([picture.subarray(0, 20), ...notes, picture.subarray(20)]);
    }
    case "image/png": {
      const text = joined([ascii("Location\0"), note]);
      const notes = [
        pngChunk("tEXt", text),
        pngChunk("zTXt", text),
        pngChunk("iTXt", text),
        pngChunk("eXIf", exif),
        pngChunk("tIME", new Uint8Array(7)),
        pngChunk("plAc", note),
      ];
      return joined([picture.subarray(0, 33), ...notes, picture.subarray(33)]);
    }
    case "image/webp": {
      const inner = joined([picture.subarray(8), riffChunk("EXIF", exif), riffChunk("XMP ", note), riffChunk("plac", note)]);
      const whole = joined([riffChunk("RIFF", inner).subarray(0, 8), inner]);
      whole[20]! |= 0x08 | 0x04;
      return whole;
    }
  }
}

/** A program that somebody hides behind a picture. */
export const MARKUP = "<!doctype html><script>alert(document.cookie)</script>";
export const withTail = (picture: Uint8Array): Uint8Array<ArrayBuffer> => joined([picture, ascii(MARKUP)]);

/** A photo as a form sends it. */
export function photoForm(photo: Uint8Array<ArrayBuffer> | null, fields: Readonly<Record<string, string>>, name = "photo.jpg"): FormData {
  const form = new FormData();
  for (const [field, value] of Object.entries(fields)) form.set(field, value);
  if (photo) form.set("photo", new File([photo], name, { type: "image/jpeg" }));
  return form;
}
