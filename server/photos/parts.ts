import type { PhotoFacts, Unfit } from "../../machines/install/photo.ts";

/** A photo without what it does not show: its bytes as they are stored, its kind, and its sides as it is shown upright. */
export type CleanPhoto = Pick<PhotoFacts, "mime" | "widthPx" | "heightPx"> & { readonly bytes: Uint8Array<ArrayBuffer> };

/** A picture that is not kept, and why. */
export class NotKept extends Error {
  readonly unfit: Unfit;
  constructor(unfit: Unfit) {
    super(`a picture that is ${unfit.is}`);
    this.name = "NotKept";
    this.unfit = unfit;
  }
}

/** More parts than any camera writes: taking apart so many would keep a hold waiting. Common practice, no source. */
export const MAX_PARTS = 2000;

/** Pieces put together. */
export function joined(parts: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** Letters of a code, one byte each. */
export const letters = (bytes: Uint8Array, from: number, to: number): string => String.fromCharCode(...bytes.subarray(from, to));
export const ascii = (text: string): Uint8Array => Uint8Array.from(text, (letter) => letter.charCodeAt(0));
export const viewOf = (bytes: Uint8Array): DataView => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
