import { type NoPhoto, PHOTO_SIDE_PX, type PhotoType, type Unfit } from "../../../machines/install/photo.ts";
import { number } from "./names.ts";

const CAME: Readonly<Record<NoPhoto, string>> = {
  empty: "An empty file",
  pdf: "A PDF",
  svg: "An SVG drawing",
  html: "A web page",
  text: "A text",
  gif: "A GIF",
  heic: "A HEIC picture",
  avif: "An AVIF picture",
  tiff: "A TIFF picture",
  bmp: "A BMP picture",
  video: "A video",
  zip: "A ZIP archive",
  unknown: "No picture",
};
const TYPE: Readonly<Record<PhotoType, string>> = { "image/jpeg": "JPEG", "image/png": "PNG", "image/webp": "WebP" };

/** Why what came is not kept, and what to do. */
export function unfitText(unfit: Unfit): string {
  switch (unfit.is) {
    case "none":
      return `${CAME[unfit.came]} came, not a photo. Take one here, or pick a JPEG, PNG or WebP file.`;
    case "cutShort":
      return `That ${TYPE[unfit.mime]} ends before its picture does. Send it again, or take another.`;
    case "broken":
      return `That ${TYPE[unfit.mime]} is damaged inside. Take another.`;
    case "moving":
      return `That ${TYPE[unfit.mime]} moves. Send one that stands still.`;
    case "size": {
      const { from, to } = PHOTO_SIDE_PX;
      return `${number(unfit.widthPx)} × ${number(unfit.heightPx)} px is out of range: ${from} to ${number(to)} a side. Pick another.`;
    }
  }
}

/** Bytes as people compare them: 312 kB, 3.4 MB; a limit of 1.5 MB is 1,500,000 bytes. */
const size = (bytes: number): string =>
  bytes < 1e6 ? `${number(Math.ceil(bytes / 1000))} kB` : `${number(Math.ceil(bytes / 1e5) / 10)} MB`;

/** Photos of a job: taken, looked at, and in its record. */
export const photos = {
  title: "Photos",
  take: "Take a photo",
  shows: "What it shows, in a few words",
  of: "What it is of",
  site: "The site in general",
  keep: "Keep this photo",
  opensNothing: "It goes into the record, without the place and the phone that are in a camera's file. It answers nothing.",
  notTrainee: "Whoever learns only looks.",
  whose: "Pick whose screen this is, to take one.",
  soFar: (n: number) => (n === 0 ? "No photo yet." : n === 1 ? "1 photo so far" : `${n} photos so far`),
  by: (name: string, time: string) => `${name}, ${time}`,
  /** For whoever cannot see it; what it shows stands beside it. */
  alt: (no: number) => `Photo of entry ${no}`,
  one: (no: number) => `Photo, entry ${no}`,
  all: "All photos",
  full: "The file itself",
  facts: (widthPx: number, heightPx: number, bytes: number) => `${number(widthPx)} × ${number(heightPx)} px, ${size(bytes)}`,
  noFile: "No photo came along. Take one, and send it again. Nothing was recorded.",
  noSuch: (no: string) => `Entry ${no.slice(0, 12)} of this job is no photo. Look at all photos.`,
  noSuchFile: "No entry of this job names that photo.",
  missing: "The photo is no longer in the data file as its entry says. Put your last copy of the file back.",
  tooLarge: (bytes: number | null, mostBytes: number) =>
    `That photo is ${bytes === null ? "far" : `${size(bytes)},`} over the ${size(mostBytes)} that go through. With scripts on, this page makes it smaller; or set the camera to smaller pictures. Nothing was recorded.`,
} as const;
