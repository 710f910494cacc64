import { all, type Element, textOf } from "./xml.ts";

type XY = readonly [number, number];

/** Every point of a line, a surface, a path or a circle's rim, as they are written: of a curve its ends and what bends it. */
export function pointsIn({ name, attributes: { points, d, cx, cy, r } }: Element): XY[] {
  if (name === "circle") {
    const [x, y, by] = [Number(cx), Number(cy), Number(r)];
    return [
      [x - by, y - by],
      [x + by, y + by],
    ];
  }
  const numbers = ((points ?? d ?? "").match(/-?\d+(?:\.\d+)?/g) ?? []).map(Number);
  return Array.from({ length: numbers.length / 2 }, (_, i): XY => [numbers[2 * i]!, numbers[2 * i + 1]!]);
}

/** How far a strap, the ground or a hem runs on over the edge of a frame at most, as what is cut off there goes on. */
const RUNS_ON = 16;
const LINES = ["polyline", "polygon", "path", "circle"];

/** What is drawn outside of its frame, but for what runs on over its edge. */
export function outsideDrawing(svg: Element): string[] {
  const [, , wide, high] = svg.attributes.viewBox!.split(" ").map(Number) as [number, number, number, number];
  return all(svg)
    .filter(({ name }) => LINES.includes(name))
    .filter((e) => {
      const points = pointsIn(e);
      const isIn = ([x, y]: XY) => x >= -RUNS_ON && x <= wide + RUNS_ON && y >= -RUNS_ON && y <= high + RUNS_ON;
      return points.length === 0 || points.some(([x, y]) => Number.isNaN(x + y)) || !points.every(isIn);
    })
    .map(({ name, attributes }) => `${name} ${attributes.class} ${attributes.points ?? attributes.d ?? attributes.cx}`);
}

/** How wide a bold letter is of its height, on average, in a wide typeface. */
const LETTER_WIDE = 0.6;

/** The box of a text by its middle, its start or its end. */
export function textBox(e: Element) {
  const [x, y, px] = [Number(e.attributes.x), Number(e.attributes.y), Number(e.attributes["font-size"])];
  const wide = textOf(e).length * px * LETTER_WIDE;
  const left = { start: x, end: x - wide, middle: x - wide / 2 }[e.attributes["text-anchor"] ?? "middle"]!;
  return { text: textOf(e), left, right: left + wide, top: y - px * 0.4, bottom: y + px * 0.4 };
}

/** Texts that lie over each other. */
export function overlappingText(svg: Element): string[] {
  const boxes = all(svg)
    .filter((e) => e.name === "text")
    .map(textBox);
  return boxes.flatMap((a, i) =>
    boxes
      .slice(i + 1)
      .flatMap((b) => (a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom ? [`${a.text} / ${b.text}`] : [])),
  );
}
