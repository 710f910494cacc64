import type { XY } from "../dimension.tsx";

export type { XY };

/** A frame of a drawing is so many units wide and high. On a phone of 360 px a unit is close to 1 px. */
export const FRAME = { wide: 320, high: 200 } as const;
/** Two of these stand side by side on a phone. */
export const NARROW = { wide: 154, high: 200 } as const;

const RADIANS = Math.PI / 180;

/** Rounds to a tenth of a unit. */
export const tenth = (n: number): number => Math.round(n * 10) / 10 + 0;

/** Points as they are written in a row: `at("0,60 304,60")`. */
export const at = (points: string): XY[] =>
  points.split(" ").map((point): XY => {
    const [x, y] = point.split(",").map(Number);
    return [x!, y!];
  });

/** The point so far from another. The way is in degrees from straight up, clockwise: 90 is to the right. */
export const away = ([x, y]: XY, deg: number, by: number): XY => [x + by * Math.sin(deg * RADIANS), y - by * Math.cos(deg * RADIANS)];

/** The way from one point to another, in degrees from straight up, clockwise. */
export const wayDeg = ([x1, y1]: XY, [x2, y2]: XY): number => Math.atan2(x2 - x1, y1 - y2) / RADIANS;

export const distance = ([x1, y1]: XY, [x2, y2]: XY): number => Math.hypot(x2 - x1, y2 - y1);

/** The point a part of the way from one to another: 0 is the first, 1 the second. */
export const between = ([x1, y1]: XY, [x2, y2]: XY, part: number): XY => [x1 + (x2 - x1) * part, y1 + (y2 - y1) * part];

export const moved = ([x, y]: XY, across: number, down: number): XY => [x + across, y + down];

/** Points on a circle from one way to another, in degrees from straight up, clockwise. */
export function arc(center: XY, radius: number, [fromDeg, toDeg]: readonly [number, number]): XY[] {
  const steps = Math.max(2, Math.ceil(Math.abs(toDeg - fromDeg) / 6));
  return Array.from({ length: steps + 1 }, (_, i) => away(center, fromDeg + ((toDeg - fromDeg) * i) / steps, radius));
}

/** Points on one turn of a spiral. */
const STEPS = 20;

/** A spiral of so many whole turns, clockwise or (below 0) the other way, growing from one radius to another: webbing on a spool. */
export const spiral = (center: XY, [fromRadius, toRadius]: readonly [number, number], fromDeg: number, turns: number): XY[] =>
  Array.from({ length: Math.abs(turns) * STEPS + 1 }, (_, i) => {
    const part = i / (Math.abs(turns) * STEPS);
    return away(center, fromDeg + turns * 360 * part, fromRadius + (toRadius - fromRadius) * part);
  });

/** A strip of one width along a line from one point to another, as four corners. */
export function strip(from: XY, to: XY, wide: number): XY[] {
  const deg = wayDeg(from, to);
  return [away(from, deg - 90, wide / 2), away(to, deg - 90, wide / 2), away(to, deg + 90, wide / 2), away(from, deg + 90, wide / 2)];
}

export const pointsOf = (points: readonly XY[]): string => points.map((p) => p.map(tenth).join(",")).join(" ");

/** A smooth line through points (Catmull and Rom's), as SVG takes it: all of it, or what lies between two of them, by their numbers. */
export function smooth(points: readonly XY[], [first, last]: readonly [number, number] = [0, points.length - 1]): string {
  const at = (i: number): XY => points[Math.min(points.length - 1, Math.max(0, i))]!;
  const write = (p: XY) => p.map(tenth).join(" ");
  const curves = points.slice(1).map((to, i) => {
    const from = at(i);
    const [before, after] = [at(i - 1), at(i + 2)];
    const bend: XY = [from[0] + (to[0] - before[0]) / 6, from[1] + (to[1] - before[1]) / 6];
    const bendBack: XY = [to[0] - (after[0] - from[0]) / 6, to[1] - (after[1] - from[1]) / 6];
    return `C${write(bend)} ${write(bendBack)} ${write(to)}`;
  });
  return `M${write(at(first))}${curves.slice(first, last).join("")}`;
}

/** The strokes that hatch a surface, so far apart: pairs of ends. */
export function hatching(outline: readonly XY[], apart: number, deg = 45): [XY, XY][] {
  const [sin, cos] = [Math.sin(deg * RADIANS), Math.cos(deg * RADIANS)];
  const turned = outline.map(([x, y]): XY => [x * cos + y * sin, y * cos - x * sin]);
  const back = ([u, v]: XY): XY => [u * cos - v * sin, u * sin + v * cos];
  const levels = turned.map(([, v]) => v);
  const strokes: [XY, XY][] = [];
  for (let v = Math.min(...levels) + apart / 2; v < Math.max(...levels); v += apart) {
    const across = turned
      .flatMap(([u1, v1], i) => {
        const [u2, v2] = turned[(i + 1) % turned.length]!;
        return v1 <= v !== v2 <= v ? [u1 + ((u2 - u1) * (v - v1)) / (v2 - v1)] : [];
      })
      .sort((a, b) => a - b);
    for (let i = 0; i + 1 < across.length; i += 2) strokes.push([back([across[i]!, v]), back([across[i + 1]!, v])]);
  }
  return strokes;
}
