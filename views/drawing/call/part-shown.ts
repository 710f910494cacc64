import type { Mark } from "../../../machines/picture/mark.ts";
import type { TentPlan } from "../../../machines/tent/types.ts";
import type { XY } from "../dimension.tsx";
import { type Shape, shapesOf } from "./shapes.ts";
import { type Box, type Extent, extentOf, frameFor, type Room, reachOf, type SmallFrame, type Turn, usualTurn } from "./small-frame.ts";

/** Below this part of the size at which a plan fits lying the other way, it lies the narrow way. */
const NARROW = 0.6;
/** A part is shown instead of the whole where it is drawn this much larger. */
const WORTH = 1.35;
/** Feet that are shown before and after what a call is about. */
const MARGIN_FT = 7;

/**
 * The frame of a plan in a box. Where somebody turned it so that it lies the narrow way across a phone, and the call is about a part
 * of it, that part is shown at the tent's full width, and the rest is cut off at the top or the bottom.
 */
export function planFrame(plan: TentPlan, about: readonly Mark[], turn: Turn, { box, room }: { box: Box; room: Room }): SmallFrame {
  const all = extentOf(reachOf(plan), turn);
  const whole = frameFor(plan, all, turn, { box, room });
  if (box.widePx < box.highPx || about.length === 0) return whole;
  if (fitsAt(all, box) > fitsAt(extentOf(reachOf(plan), usualTurn(plan, box)), box) * NARROW) return whole;
  const levels = about
    .flatMap((mark) => shapesOf(mark, plan, whole, false))
    .flatMap(spotsIn)
    .map(([, y]) => whole.levelFt(y));
  const [from, to] = [Math.min(...levels) - MARGIN_FT, Math.max(...levels) + MARGIN_FT];
  const [widePx, highPx] = [box.widePx - room.left - room.right, box.highPx - room.top - room.bottom];
  const pxPerFt = Math.min(widePx / (all.right - all.left), highPx / (to - from));
  if (pxPerFt < whole.pxPerFt * WORTH) return whole;
  const highFt = highPx / pxPerFt;
  const top = Math.min(Math.max((from + to - highFt) / 2, all.top), all.bottom - highFt);
  const part: Extent = { ...all, top, bottom: top + highFt };
  return { ...frameFor(plan, part, turn, { box, room }), part: { fromPx: room.top, toPx: box.highPx - room.bottom } };
}

/** How large an extent fits into a whole box. */
const fitsAt = ({ left, right, top, bottom }: Extent, { widePx, highPx }: Box): number =>
  Math.min(widePx / (right - left), highPx / (bottom - top));

function spotsIn(shape: Shape): readonly XY[] {
  return shape.is === "spot" ? [shape.at] : shape.points;
}
