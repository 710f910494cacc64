import type { Context } from "hono";
import { MAX_PHOTO_BYTES } from "../machines/install/photo.ts";
import { SITE_LIMITS } from "../machines/site/site-limits.ts";
import { MAX_GEOJSON_BYTES } from "./input/geo-form.ts";
import type { Sentence } from "./input/problem.ts";
import { wantsJson } from "./routes/body.ts";
import { takesGeoJson } from "./routes/site-import.tsx";

/** Nothing said on a site is longer than this, but for a photo with what is said of it, and a brief. */
const MAX_BYTES = 64 * 1024;
const MAX_WITH_PHOTO_BYTES = MAX_PHOTO_BYTES + MAX_BYTES;
/** A brief with a site of as many stretches as one may have, a line for each number and every line by its name, is half of it. */
const MAX_BRIEF_BYTES = 1024 * 1024;

const takesPhoto = ({ req }: Context) => req.method === "POST" && /^\/jobs\/[\w-]+\/photo$/.test(req.path);
/** A job that is opened by a script: as JSON, with the whole site in it. A form never has one; a standing job's site is changed on its pages. */
const takesBrief = (c: Context) => c.req.method === "POST" && wantsJson(c) && c.req.path === "/jobs";

/** The longest body that is taken of a request, bytes. */
export function maxBytesOf(c: Context): number {
  if (takesPhoto(c)) return MAX_WITH_PHOTO_BYTES;
  if (takesGeoJson(c)) return MAX_GEOJSON_BYTES;
  return takesBrief(c) ? MAX_BRIEF_BYTES : MAX_BYTES;
}

/** What is said of a longer one: how much came, where that is known (`null`: not), and what is taken. */
export function tooLargeText(c: Context, bytes: number | null): Sentence {
  if (takesPhoto(c)) return (w) => w.photos.tooLarge(bytes, MAX_PHOTO_BYTES);
  if (takesGeoJson(c)) return (w) => w.siteForms.tooLong(bytes, MAX_GEOJSON_BYTES);
  if (takesBrief(c)) return (w) => w.errors.briefTooLarge(bytes, MAX_BRIEF_BYTES, SITE_LIMITS.maxSegments);
  return (w) => w.errors.tooLarge(bytes, MAX_BYTES);
}
