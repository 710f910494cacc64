import type { XY } from "../dimension.tsx";
import { type PlacedLabel, textWidePx } from "./labels.ts";
import { type Box, tenth } from "./small-frame.ts";

/** A place on the picture that is taken, in px. */
export type Taken = { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };

/** The place around a spot. */
export const around = ([x, y]: XY, px: number): Taken => ({ left: x - px, right: x + px, top: y - px, bottom: y + px });

/**
 * Labels that lie over nothing: each where it belongs, else a little above or below that, and else not at all. The first come first.
 */
export function apart(labels: readonly PlacedLabel[], taken: readonly Taken[], box: Box): PlacedLabel[] {
  const full = [...taken];
  const kept: PlacedLabel[] = [];
  for (const label of labels) {
    const place = placesFor(label).find((at) => isFree(placeOf({ ...label, at }), full, box));
    if (!place) continue;
    full.push(placeOf({ ...label, at: place }));
    kept.push({ ...label, at: place });
  }
  return kept;
}

const placesFor = ({ at: [x, y], px, or }: PlacedLabel): readonly XY[] =>
  or ?? [0, -1.15, 1.15].map((part): XY => [x, tenth(y + part * px)]);

function placeOf({ at: [x, y], text, px, ring }: PlacedLabel): Taken {
  const [wide, high] = ring ? [px * 0.68, px * 0.68] : [textWidePx(text, px) / 2, px * 0.42];
  return { left: x - wide, right: x + wide, top: y - high, bottom: y + high };
}

const isFree = (place: Taken, full: readonly Taken[], { widePx, highPx }: Box): boolean =>
  place.left >= 0 &&
  place.right <= widePx &&
  place.top >= 0 &&
  place.bottom <= highPx &&
  full.every((t) => place.left >= t.right || place.right <= t.left || place.top >= t.bottom || place.bottom <= t.top);
