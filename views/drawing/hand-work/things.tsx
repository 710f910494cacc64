import { away, between, moved, strip, wayDeg, type XY } from "./geometry.ts";
import { Area, Dot, Hatch, Line } from "./strokes.tsx";

type GroundProps = { readonly surface: readonly XY[]; readonly depth?: number };

/** Ground seen from the side: its surface, and short strokes below it; with a depth, the earth in which something stands. */
export function Ground({ surface, depth = 0 }: GroundProps) {
  const strokes = surface.slice(1).flatMap((to, i) => {
    const from = surface[i]!;
    const n = Math.max(1, Math.floor(Math.abs(to[0] - from[0]) / 16));
    return Array.from({ length: n }, (_, k) => between(from, to, (k + 0.8) / n));
  });
  return (
    <>
      {depth > 0 && <Area is="earth" points={[...surface, moved(surface.at(-1)!, 0, depth), moved(surface[0]!, 0, depth)]} />}
      <Line points={surface} is="bold" part="ground" />
      {strokes.map((p) => (
        <Line points={[p, moved(p, -7, 8)]} is="thin" />
      ))}
    </>
  );
}

type StakeProps = {
  /** Where it goes into the ground. */
  readonly at: XY;
  /** Off plumb, clockwise: 10 leans to the right. */
  readonly leanDeg?: number;
  readonly showing: number;
  readonly inGround: number;
  readonly wide?: number;
};

/** A stake from the side, to whatever scale its two lengths are in. */
export function Stake({ at, leanDeg = 0, showing, inGround, wide = 8 }: StakeProps) {
  const head = away(at, leanDeg, showing);
  const neck = away(at, leanDeg, showing - 5);
  const tip = away(at, leanDeg + 180, inGround);
  const shoulder = away(at, leanDeg + 180, inGround - 12);
  const side = (p: XY, by: number) => away(p, leanDeg + 90, by);
  return (
    <>
      <Area part="stake" points={[side(head, -wide / 2), side(head, wide / 2), side(shoulder, wide / 2), tip, side(shoulder, -wide / 2)]} />
      <Area is="solid" points={strip(head, neck, wide + 8)} />
    </>
  );
}

/** A pole between two points. */
export const Pole = ({ foot, top, wide = 9, part = "pole" }: { foot: XY; top: XY; wide?: number; part?: string }) => (
  <Area part={part} points={strip(foot, top, wide)} />
);

/** A brass ring around a hole in cloth, or the steel ring sewn to it, seen flat. */
export const Ring = ({ at, r = 10, hole = 5 }: { at: XY; r?: number; hole?: number }) => (
  <>
    <Dot at={at} r={r} />
    <Dot at={at} r={hole} is="void" />
  </>
);

/** Locate paint, as short dashes on the ground. */
export const Paint = ({ from, to, wide = 6 }: { from: XY; to: XY; wide?: number }) => {
  const n = 7;
  return (
    <>
      {Array.from({ length: n }, (_, i) => (
        <Area is="solid" points={strip(between(from, to, (i + 0.12) / n), between(from, to, (i + 0.78) / n), wide)} />
      ))}
    </>
  );
};

/** A plumb bob on its string. */
export const PlumbBob = ({ from, long }: { from: XY; long: number }) => {
  const end = moved(from, 0, long);
  return (
    <>
      <Line points={[from, moved(end, 0, -16)]} is="ink" part="string" />
      <Area is="solid" points={[moved(end, -6, -16), moved(end, 6, -16), moved(end, 4, -7), end, moved(end, -4, -7)]} />
    </>
  );
};

/** A measuring tape between two points: a narrow band with its marks. */
export function Tape({ from, to }: { from: XY; to: XY }) {
  const deg = wayDeg(from, to);
  const n = Math.floor(Math.hypot(to[0] - from[0], to[1] - from[1]) / 9);
  return (
    <>
      <Area points={strip(from, to, 8)} part="tape" />
      {Array.from({ length: Math.max(0, n - 1) }, (_, i) => {
        const p = between(from, to, (i + 1) / n);
        return <Line points={[away(p, deg - 90, 4), away(p, deg - 90, i % 2 ? 0 : -2)]} is="thin" />;
      })}
    </>
  );
}

/** A stake plate from above with its two stakes, square across a strap that pulls in a given way. */
export function PlateAbove({ at, pullDeg, size = 1 }: { at: XY; pullDeg: number; size?: number }) {
  const across = pullDeg + 90;
  return (
    <>
      <Area part="plate" points={strip(away(at, across, -17 * size), away(at, across, 17 * size), 13 * size)} />
      {[-9, 9].map((by) => (
        <Dot at={away(at, across, by * size)} r={4.2 * size} is="solid" part="head" />
      ))}
    </>
  );
}

/** A surface that nobody is in: dense strokes and a bold edge. */
export const NoGo = ({ points, part }: { points: readonly XY[]; part?: string }) => (
  <>
    <Hatch points={points} apart={9} deg={-45} />
    <Area is="edge" points={points} part={part} />
  </>
);
