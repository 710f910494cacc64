import { isWithin } from "../../machines/install/bounds.ts";
import { PHOTO_SIDE_PX, type PhotoType, type Unfit } from "../../machines/install/photo.ts";
import { cleanJpeg } from "./jpeg.ts";
import { type CleanPhoto, NotKept } from "./parts.ts";
import { cleanPng } from "./png.ts";
import { cleanWebp } from "./webp.ts";
import { cameInstead, photoTypeOf } from "./what-came.ts";

const CLEAN: Readonly<Record<PhotoType, (bytes: Uint8Array) => CleanPhoto>> = {
  "image/jpeg": cleanJpeg,
  "image/png": cleanPng,
  "image/webp": cleanWebp,
};

/**
 * What came for a photo: as it is stored, without the place, the phone, and all else that a camera writes beside its picture; or
 * why it is not kept. What a browser, a name or a header says of it counts for nothing.
 */
export function readPhoto(bytes: Uint8Array): { readonly photo: CleanPhoto } | { readonly unfit: Unfit } {
  const mime = photoTypeOf(bytes);
  if (mime === null) return { unfit: { is: "none", came: cameInstead(bytes) } };
  try {
    const photo = CLEAN[mime](bytes);
    const { widthPx, heightPx } = photo;
    if (isWithin(widthPx, PHOTO_SIDE_PX) && isWithin(heightPx, PHOTO_SIDE_PX)) return { photo };
    return { unfit: { is: "size", widthPx, heightPx } };
  } catch (error) {
    if (error instanceof NotKept) return { unfit: error.unfit };
    throw error;
  }
}
