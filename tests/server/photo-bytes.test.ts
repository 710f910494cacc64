import { describe, expect, it } from "vitest";
import { PHOTO_TYPES, type PhotoType } from "../../machines/install/photo.ts";
import { ascii, joined } from "../../server/photos/parts.ts";
import { readPhoto } from "../../server/photos/read-photo.ts";
import { fromCamera, MARKUP, PICTURES, PLACE, withTail } from "../support/photos.ts";

const kept = (bytes: Uint8Array) => {
  const read = readPhoto(bytes);
  if ("unfit" in read) throw new Error(JSON.stringify(read.unfit));
  return read.photo;
};
const unfit = (bytes: Uint8Array) => {
  const read = readPhoto(bytes);
  return "unfit" in read ? read.unfit : null;
};
const text = (bytes: Uint8Array) => Buffer.from(bytes).toString("latin1");

describe.each(PHOTO_TYPES)("%s from a camera", (type) => {
  it("is kept without the place and the phone, wherever those stood in it, and otherwise to the byte", () => {
    const camera = fromCamera(type);
    expect(text(camera).split(PLACE).length).toBeGreaterThan(3);
    const photo = kept(camera);
    expect(text(photo.bytes)).not.toContain("44.5588");
    expect([...photo.bytes]).toEqual([...PICTURES[type]]);
    expect(photo).toMatchObject({ mime: type, widthPx: 32, heightPx: 24 });
  });
  it("ends where its picture does: what somebody hid behind it is cut off", () => {
    const photo = kept(withTail(fromCamera(type)));
    expect(text(photo.bytes)).not.toContain("script");
    expect([...photo.bytes]).toEqual([...PICTURES[type]]);
  });
  it("cut short anywhere is refused as that, or as damaged", () => {
    const camera = fromCamera(type);
    for (let length = 12; length < camera.length; length += 3)
      expect(["cutShort", "broken"], String(length)).toContain(unfit(camera.subarray(0, length))?.is);
  });
});

describe.each(["image/jpeg", "image/png"] as const)("%s from a camera that was held otherwise", (type) => {
  it.each([1, 3, 6, 8])("with orientation %i says that, and nothing else of the camera; its sides are those that are seen", (way) => {
    const photo = kept(fromCamera(type, way));
    expect(text(photo.bytes)).not.toContain("44.5588");
    expect([photo.widthPx, photo.heightPx]).toEqual(way > 4 ? [24, 32] : [32, 24]);
    const more = photo.bytes.length - PICTURES[type].length;
    expect(more).toBe(way === 1 ? 0 : { "image/jpeg": 36, "image/png": 38 }[type]);
    // Read again it is the same: what was written says what it was written for.
    expect([...kept(photo.bytes).bytes]).toEqual([...photo.bytes]);
  });
});

it("whatever one byte of it becomes, a photo is kept or refused, and nothing is thrown", () => {
  for (const type of PHOTO_TYPES) {
    const camera = fromCamera(type, 6);
    for (let at = 0; at < camera.length; at++) {
      const bent = camera.slice();
      bent[at]! ^= 0xff;
      expect(() => readPhoto(bent)).not.toThrow();
    }
  }
});

it("one in more parts than a camera writes is refused before they are all looked at", () => {
  const head = PICTURES["image/jpeg"].subarray(0, 20);
  const empty = Uint8Array.of(0xff, 0xfe, 0, 2);
  const parts = (count: number) => joined([head, ...Array.from({ length: count }, () => empty), PICTURES["image/jpeg"].subarray(20)]);
  expect([...kept(parts(1900)).bytes]).toEqual([...PICTURES["image/jpeg"]]);
  expect(unfit(parts(2001))).toEqual({ is: "broken", mime: "image/jpeg" });
});

describe("what is no photo is named by what it is, not by what it is called", () => {
  const ftyp = (brand: string) => joined([Uint8Array.of(0, 0, 0, 24), ascii(`ftyp${brand}`), new Uint8Array(16)]);
  it.each<[string, Uint8Array]>([
    ["empty", new Uint8Array()],
    ["pdf", ascii("%PDF-1.7\n")],
    ["svg", ascii('<?xml version="1.0"?><svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>')],
    ["html", ascii(MARKUP)],
    ["text", ascii("a note on the gate")],
    ["gif", ascii("GIF89a")],
    ["heic", ftyp("heic")],
    ["avif", ftyp("avif")],
    ["tiff", ascii("MM\0*\0\0\0\b")],
    ["bmp", ascii("BM\0\0")],
    ["video", ftyp("qt  ")],
    ["zip", ascii("PK\u0003\u0004")],
    ["unknown", Uint8Array.of(1, 2, 3, 4)],
  ])("%s", (came, bytes) => expect(unfit(bytes)).toEqual({ is: "none", came }));
});

/** A JPEG whose frame says that it has these sides. */
function sized(widthPx: number, heightPx: number): Uint8Array {
  const picture = PICTURES["image/jpeg"].slice();
  const frame = picture.findIndex((byte, i) => byte === 0xff && picture[i + 1] === 0xc0);
  new DataView(picture.buffer).setUint16(frame + 5, heightPx);
  new DataView(picture.buffer).setUint16(frame + 7, widthPx);
  return picture;
}
describe("the sides of a picture are bounded", () => {
  it.each([
    [16, 4096],
    [4096, 16],
  ])("%i by %i px is kept", (w, h) => expect(kept(sized(w, h))).toMatchObject({ widthPx: w, heightPx: h }));
  it.each([
    [15, 24],
    [4097, 24],
    [24, 0],
    [65_535, 65_535],
  ])("%i by %i px is refused with its sides", (w, h) => expect(unfit(sized(w, h))).toEqual({ is: "size", widthPx: w, heightPx: h }));
});

it("a moving WebP is refused as that", () => {
  const picture = PICTURES["image/webp"];
  const moving = joined([picture, ascii("ANIM"), Uint8Array.of(6, 0, 0, 0), new Uint8Array(6)]);
  new DataView(moving.buffer).setUint32(4, moving.length - 8, true);
  expect(unfit(moving)).toEqual({ is: "moving", mime: "image/webp" satisfies PhotoType });
});
