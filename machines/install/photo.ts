import type { Hash } from "../digest/digest.ts";
import type { Bounds } from "./bounds.ts";
import type { GateId } from "./ids.ts";

/** Kinds of pictures that are kept: what phones and browsers both write and show. */
export const PHOTO_TYPES = ["image/jpeg", "image/webp", "image/png"] as const;
export type PhotoType = (typeof PHOTO_TYPES)[number];

/** Width and height of a picture, in px. Under it nothing can be seen on one, over it a phone runs out of memory. Common practice, no source. */
export const PHOTO_SIDE_PX: Bounds = { from: 16, to: 4096 };
/** The most bytes that one is sent with: 1.5 MB, five times what the page sends. Common practice, no source. */
export const MAX_PHOTO_BYTES = 1_500_000;
/** The most letters of what it shows. */
export const MAX_PHOTO_TEXT = 200;

/** A picture as it is stored: by the SHA-256 of its bytes, how many they are, and its sides as it is shown upright. */
export type PhotoFacts = {
  readonly hash: Hash;
  readonly mime: PhotoType;
  readonly bytes: number;
  readonly widthPx: number;
  readonly heightPx: number;
};

/** What it is a photo of: a gate, or `null` for the call or the site in general; and in somebody's words. */
export type PhotoOf = { readonly gate: GateId | null; readonly text: string | null };

/** What came where a photo was wanted, by its first bytes. */
export const NO_PHOTOS = ["empty", "pdf", "svg", "html", "text", "gif", "heic", "avif", "tiff", "bmp", "video", "zip", "unknown"] as const;
export type NoPhoto = (typeof NO_PHOTOS)[number];

/** Why a picture is not kept: it is none; it ends too early; it is not built as its kind is; it moves; a side of it is out of bounds. */
export type Unfit =
  | { readonly is: "none"; readonly came: NoPhoto }
  | { readonly is: "cutShort" | "broken" | "moving"; readonly mime: PhotoType }
  | { readonly is: "size"; readonly widthPx: number; readonly heightPx: number };
