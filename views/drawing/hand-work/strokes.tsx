import type { Child } from "hono/jsx";
import { away, between, hatching, pointsOf, smooth, tenth, wayDeg, type XY } from "./geometry.ts";

/** How a line or a surface looks: ink alone, the page's ground within ink, ink all over, a light tint. The sheet of styles says how. */
type Look = "ink" | "thin" | "bold" | "dash" | "limb" | "paper" | "solid" | "soft" | "ghost" | "earth" | "void" | "edge" | "hat";
type Points = { readonly points: readonly XY[]; readonly is?: Look; readonly part?: string; readonly wide?: number };

export const Line = ({ points, is = "ink", part, wide }: Points) => (
  <polyline class={is} points={pointsOf(points)} data-part={part} stroke-width={wide} />
);
export const Area = ({ points, is = "paper", part }: Points) => <polygon class={is} points={pointsOf(points)} data-part={part} />;
export const Curve = ({ points, is = "ink", part }: Points) => <path class={is} d={smooth(points)} data-part={part} />;
export const Dot = ({ at, r, is = "paper", part }: { at: XY; r: number; is?: Look; part?: string }) => (
  <circle class={is} cx={tenth(at[0])} cy={tenth(at[1])} r={r} data-part={part} />
);

/** Strokes across a surface: it means something without any color. */
export const Hatch = ({ points, apart = 8, deg = 45 }: { points: readonly XY[]; apart?: number; deg?: number }) => (
  <path
    class="hatch"
    d={hatching(points, apart, deg)
      .map(([from, to]) => `M${from.map(tenth).join(" ")}L${to.map(tenth).join(" ")}`)
      .join("")}
  />
);

type CordProps = { readonly points: readonly XY[]; readonly wide?: number; readonly straight?: boolean; readonly part?: string };
/** `over`: only what lies between two of its points, drawn once more over what it crosses. Its ends are open: they join the rest. */
type RopeProps = CordProps & { readonly over?: readonly [number, number] };

/** A rope, seen from the side: whatever is drawn later lies over it. */
export function Cord({ points, wide = 8, straight = false, part, over }: RopeProps) {
  const d = straight ? `M${points.map((p) => p.map(tenth).join(" ")).join("L")}` : smooth(points, over);
  const butt = over ? " butt" : "";
  return (
    <>
      <path class={`cord${butt}`} d={d} stroke-width={wide} data-part={part} />
      <path class={`core${butt}`} d={d} stroke-width={tenth(wide - 3.4)} />
    </>
  );
}

/** Webbing, seen flat: a strap with a seam down its middle. */
export function Strap({ points, wide = 12, straight = true, part }: CordProps) {
  const d = straight ? `M${points.map((p) => p.map(tenth).join(" ")).join("L")}` : smooth(points);
  return (
    <>
      <path class="cord butt" d={d} stroke-width={wide} data-part={part} />
      <path class="core butt webbing" d={d} stroke-width={tenth(wide - 3.6)} />
      <path class="stitch" d={d} />
    </>
  );
}

const HEAD = 13;
/** Which way something moves: a line through points with a head at its end. */
export function Arrow({ points, part }: { points: readonly XY[]; part?: string }) {
  const [before, to] = [points.at(-2)!, points.at(-1)!];
  const deg = wayDeg(before, to);
  const base = away(to, deg + 180, HEAD);
  const line = [...points.slice(0, -1), away(to, deg + 180, HEAD - 2)];
  return (
    <>
      <path class="under" d={smooth(line)} />
      <path class="bold" d={smooth(line)} data-part={part} />
      <polygon class="head" points={pointsOf([to, away(base, deg - 90, HEAD * 0.55), away(base, deg + 90, HEAD * 0.55)])} />
    </>
  );
}

type WordsProps = { readonly at: XY; readonly text: string; readonly anchor?: "start" | "middle" | "end"; readonly light?: boolean };
/** Letters of a drawing, in units: on a phone 360 px wide they are 14 px high or more. */
export const LETTERS = 15;
/** A word in a drawing, by the middle of its height. */
export const Lettering = ({ at: [x, y], text, anchor = "middle", light = false }: WordsProps) => (
  <text class={light ? "light" : undefined} x={tenth(x)} y={tenth(y)} font-size={LETTERS} text-anchor={anchor}>
    {text}
  </text>
);

type SpanProps = {
  readonly from: XY;
  readonly to: XY;
  readonly text: string;
  readonly at?: XY;
  readonly anchor?: "start" | "middle" | "end";
};
/** A length between two points, with ticks at its ends and its figure beside it or where it is told. */
export function Span({ from, to, text, at, anchor = "middle" }: SpanProps) {
  const deg = wayDeg(from, to);
  const tick = (p: XY): XY[] => [away(p, deg - 90, 6), away(p, deg + 90, 6)];
  return (
    <>
      <Line points={[from, to]} is="thin" part="span" />
      <Line points={tick(from)} is="thin" />
      <Line points={tick(to)} is="thin" />
      <Lettering at={at ?? away(between(from, to, 0.5), deg - 90, 12)} text={text} anchor={anchor} />
    </>
  );
}

/** A line that leads from a word to what it names. */
export const Leader = ({ from, to }: { from: XY; to: XY }) => (
  <>
    <Line points={[from, to]} is="thin" />
    <Dot at={to} r={2.6} is="solid" />
  </>
);

const BADGE = 15;
/** A corner mark: done right, a check; done wrong, a cross. */
export const Right = ({ at }: { at: XY }) => (
  <Badge at={at} part="right">
    <Line points={[moveBy(at, -8, 0), moveBy(at, -2, 7), moveBy(at, 8, -7)]} is="bold" />
  </Badge>
);
export const Wrong = ({ at }: { at: XY }) => (
  <Badge at={at} part="wrong">
    <Line points={[moveBy(at, -7, -7), moveBy(at, 7, 7)]} is="bold" />
    <Line points={[moveBy(at, 7, -7), moveBy(at, -7, 7)]} is="bold" />
  </Badge>
);
const Badge = ({ at, part, children }: { at: XY; part: string; children?: Child }) => (
  <>
    <Dot at={at} r={BADGE} part={part} />
    {children}
  </>
);
const moveBy = ([x, y]: XY, across: number, down: number): XY => [x + across, y + down];
