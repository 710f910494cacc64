import type { Mark } from "../../../machines/picture/mark.ts";
import type { PlanPicture } from "../../../machines/picture/picture.ts";
import { cornerOf } from "../../../machines/tent/tape.ts";
import type { Corner, EdgeName, Point, TentPlan } from "../../../machines/tent/types.ts";
import type { Words } from "../../text/words.ts";
import { unitVector, type XY } from "../dimension.tsx";
import { middleOf, rightAngleAt, runOf, setbackAt } from "./shapes.ts";
import { type SmallFrame, tenth } from "./small-frame.ts";

/** A text in the picture, centered at a place in px; `ring` puts it in a circle, as the order of a piece; `backed` on a ground of its own, over hatching and marks; `or`: other places that do as well. */
export type PlacedLabel = {
  readonly text: string;
  readonly at: XY;
  readonly px: number;
  readonly ring?: true;
  readonly backed?: true;
  readonly or?: readonly XY[];
};

type Of = { readonly plan: TentPlan; readonly frame: SmallFrame; readonly words: Words };

/** Above this many poles only the first and the last of a line are named. */
const MAX_POLES = 3;
/** How wide a letter of bold text is, as a part of its size. */
const LETTER = 0.62;

/** What is written in large letters at the things that a call is about: names, orders, and lengths that are worked by. */
export function labelsOf({ about, counts }: PlanPicture, of: Of): PlacedLabel[] {
  if (counts) return [];
  const { frame, words } = of;
  const pieces = about.filter((m) => m.is === "piece");
  const edges = about.filter((m) => m.is === "edge" || m.is === "stakeLine");
  const halves = about.filter((m) => m.is === "half");
  return [
    ...pieces.flatMap((m) => pieceLabels(m.id, pieces.length > 1, of)),
    ...(edges.length <= 2 ? edges.map((m) => inside(m.edge, words.edgeName(m.edge), 20, of)) : []),
    ...(halves.length === 1 && halves[0]!.way === "out" ? ringLabel(halves[0]!.id, of) : []),
    ...about.flatMap((mark) => ownLabels(mark, of, about)),
  ].map((label) => within(label, frame));
}

function ownLabels(mark: Mark, { plan, frame, words }: Of, about: readonly Mark[]): PlacedLabel[] {
  const ft = (n: number) => words.tapeText(n, "ft");
  switch (mark.is) {
    case "length":
      return [inside(mark.name as EdgeName, ft(plan.edges.find((e) => e.name === mark.name)!.lengthFt), 30, { plan, frame })];
    case "angle": {
      const [a, along, across] = rightAngleAt(plan, mark.alongFt, mark.acrossFt).map(frame.at) as [XY, XY, XY];
      const far: XY = [along[0] + across[0] - a[0], along[1] + across[1] - a[1]];
      return [
        besideAnywhere(a, along, far, ft(mark.alongFt)),
        besideAnywhere(a, across, far, ft(mark.acrossFt)),
        besideAnywhere(along, across, far, ft(mark.diagonalFt)),
      ];
    }
    case "setback": {
      const [edge, stakes] = setbackAt(plan).map(frame.at) as [XY, XY];
      const [x, y] = frame.out("AB");
      const text = words.picture.setback(ft(plan.spec.setbackFt));
      const awayPx = y === 0 ? halfWide(text, 20) + 12 : 20;
      const inside: XY = [tenth(edge[0] - x * awayPx), tenth(edge[1] - y * awayPx)];
      const outside: XY = [tenth(stakes[0] + x * awayPx), tenth(stakes[1] + y * awayPx)];
      return [{ text, at: inside, px: 20, or: [inside, outside] }];
    }
    case "poles":
      return about.length > 1 ? [] : poleLabels(mark.ids, plan, frame);
    default:
      return [];
  }
}

/** Beside a line, on the side of a point that it must keep to. */
function beside(from: XY, to: XY, toward: XY, { text, part = 0.5 }: { text: string; part?: number }): PlacedLabel {
  const px = 19;
  const [mx, my] = [from[0] + (to[0] - from[0]) * part, from[1] + (to[1] - from[1]) * part];
  const [ux, uy] = unitVector(from, to);
  const side = Math.sign((toward[0] - mx) * -uy + (toward[1] - my) * ux) || 1;
  const away = Math.abs(uy) * (halfWide(text, px) + 7) + Math.abs(ux) * (px / 2 + 7);
  return { text, at: [tenth(mx - uy * side * away), tenth(my + ux * side * away)], px };
}

/** Beside a line at its middle, or where there is room along it, on the other side too. */
function besideAnywhere(from: XY, to: XY, toward: XY, text: string): PlacedLabel {
  const away: XY = [from[0] + to[0] - toward[0], from[1] + to[1] - toward[1]];
  const or = [toward, away].flatMap((side) => [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8].map((part) => beside(from, to, side, { text, part }).at));
  return { ...beside(from, to, toward, { text }), or };
}

/** Inside the tent at the middle of an edge. */
function inside(edge: EdgeName, text: string, px: number, { plan, frame }: Pick<Of, "plan" | "frame">): PlacedLabel {
  const [x, y] = frame.out(edge);
  const middle = middleOf(frame.at(cornerOf(plan, edge[0] as Corner)), frame.at(cornerOf(plan, edge[1] as Corner)));
  const inward = y === 0 ? halfWide(text, px) + 12 : px / 2 + 12;
  return { text, at: [tenth(middle[0] - x * inward), tenth(middle[1] - y * inward)], px, backed: true };
}

/** Where along a mid its name stands where all are named: by turns, so that no two names touch. */
const BY_TURNS = [0.5, 0.17, 0.83];

/** The order of a piece in a ring and its name. */
function pieceLabels(id: string, several: boolean, { plan, frame, words }: Of): PlacedLabel[] {
  const piece = plan.pieces.find((p) => p.id === id)!;
  const { xFt, yFt, widthFt, lengthFt } = piece.at;
  const name = words.drawing.piece(id);
  const across = frame.turn === 90 || frame.turn === 270;
  const [widePx, highPx] = (across ? [lengthFt, widthFt] : [widthFt, lengthFt]).map((ft) => ft * frame.pxPerFt - 8) as [number, number];
  const px = several || textWidePx(name, 17) > widePx ? 14 : 17;
  const mids = plan.pieces.filter((p) => p.kind === "mid");
  const part = several && piece.kind === "mid" ? BY_TURNS[mids.indexOf(piece) % BY_TURNS.length]! : 0.5;
  const place: Point = across
    ? { xFt: xFt + widthFt * part, yFt: yFt + lengthFt / 2 }
    : { xFt: xFt + widthFt / 2, yFt: yFt + lengthFt * part };
  const [x, y] = frame.cloth(place);
  const total = plan.pieces.length;
  const order: PlacedLabel[] = total > 1 ? [{ text: String(piece.order), at: [x, tenth(y - px * 0.72)], px: px + 2, ring: true }] : [];
  // Where its number and its name would cover a piece, its name is left out: the call says it too.
  if (!several && total > 1 && textWidePx(name, px) > widePx && px * 3 > highPx) return order;
  return [...order, { text: name, at: [x, tenth(y + (total > 1 ? px * 0.9 : 0))], px, backed: true }];
}

/** The distance to the quarter ring farthest out, at the middle of what is laced. */
function ringLabel(id: string, { plan, frame, words }: Of): PlacedLabel[] {
  const { half, center, ring, edge } = runOf(plan, id);
  if (!ring) return [];
  const [from, to, end] = [center, ring, edge].map(frame.cloth) as [XY, XY, XY];
  const text = words.tapeText(half.ringsAtFt.at(-1)!, "ft");
  const { box } = frame;
  const middle: XY = [box.widePx / 2, box.highPx / 2];
  const label = beside(from, to, middle[0] === end[0] || middle[1] === end[1] ? [middle[0] + 1, middle[1] + 1] : middle, { text });
  return [{ ...label, backed: true }];
}

function poleLabels(ids: readonly string[], { poles }: TentPlan, frame: SmallFrame): PlacedLabel[] {
  const named = ids.length > MAX_POLES ? [ids[0]!, ids.at(-1)!] : ids;
  return named.map((id) => {
    const [x, y] = frame.at(poles.find((p) => p.id === id)!);
    return { text: id, at: [tenth(x + 9 + textWidePx(id, 16) / 2), tenth(y - 14)], px: 16 };
  });
}

/** About how wide a bold text is, in px. */
export const textWidePx = (text: string, px: number): number => text.length * px * LETTER;
const halfWide = (text: string, px: number): number => textWidePx(text, px) / 2;

/** Moved into the box where it would stand out of it. */
function within({ at: [x, y], ...label }: PlacedLabel, { box }: SmallFrame): PlacedLabel {
  const wide = halfWide(label.text, label.px) + 2;
  const clamp = (n: number, room: number, most: number) => tenth(Math.min(most - room, Math.max(room, n)));
  return { ...label, at: [clamp(x, wide, box.widePx), clamp(y, label.px / 2 + 1, box.highPx)] };
}

/** The corners that a picture points at. */
export const cornersIn = (marks: readonly Mark[]): Corner[] => marks.flatMap((m) => (m.is === "corner" ? [m.corner] : []));
