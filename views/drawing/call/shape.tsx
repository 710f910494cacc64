import { unitVector, type XY } from "../dimension.tsx";
import { Label } from "../label.tsx";
import type { Pen } from "../palette.ts";
import type { Shape, Tick } from "./shapes.ts";
import { middleOf } from "./shapes.ts";
import { PICTURE, tenth } from "./small-frame.ts";

/** How strongly a thing is drawn: what the call is about, what was done, what comes next. They differ by shape and weight, not by color. */
export type How = "about" | "done" | "next";
type Drawn<S> = { pen: Pen; shape: Extract<Shape, { is: S }>; how: How };

/** Patterns have the name of their drawing: one that is not shown takes those in it along, and a page may have two. */
export const hatchOf = ({ fills = PICTURE }: Pen): string => `${fills}-hatch`;
const lightOf = ({ fills = PICTURE }: Pen): string => `${fills}-light`;

/** The fills of surfaces: dense lines for what is meant, wide thin ones for what is done. */
export const Fills = ({ pen, pen: { ink } }: { pen: Pen }) => (
  <defs>
    <pattern id={hatchOf(pen)} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line x1="3.5" y1="0" x2="3.5" y2="7" stroke={ink} stroke-width="2.6" />
    </pattern>
    <pattern id={lightOf(pen)} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">
      <line x1="3" y1="0" x2="3" y2="6" stroke={ink} stroke-width="0.7" />
    </pattern>
  </defs>
);

/** One shape as it is drawn. */
export function DrawnShape({ pen, shape, how }: { pen: Pen; shape: Shape; how: How }) {
  switch (shape.is) {
    case "area":
      return <Area pen={pen} shape={shape} how={how} />;
    case "way":
      return <Way pen={pen} shape={shape} how={how} />;
    case "spot":
      return <Spot pen={pen} shape={shape} how={how} />;
    case "band":
      return how === "about" ? <Band pen={pen} shape={shape} /> : null;
  }
}

const Area = ({ pen, pen: { ink }, shape: { points, middle, open }, how }: Drawn<"area">) => (
  <>
    <polygon
      points={pointsOf(points)}
      fill={{ about: open ? "none" : `url(#${hatchOf(pen)})`, done: `url(#${lightOf(pen)})`, next: "none" }[how]}
      stroke={ink}
      stroke-width={{ about: 4, done: 1, next: 2.6 }[how]}
      stroke-dasharray={how === "next" ? "7 5" : undefined}
    />
    {how === "done" && <CheckMark pen={pen} at={middle} px={8} />}
  </>
);

function Way({ pen, shape: { points, ends, ticks, dots = [] }, how }: Drawn<"way">) {
  const { ink, ground } = pen;
  const [from, to] = [points[0]!, points.at(-1)!];
  const headless = how === "about" && ends !== "none" ? shortened(from, to, ends === "both") : { from, to };
  const line = { x1: headless.from[0], y1: headless.from[1], x2: headless.to[0], y2: headless.to[1] };
  if (how === "next") return <line {...line} stroke={ink} stroke-width="3" stroke-dasharray="8 6" />;
  if (how === "done")
    return (
      <>
        <line {...line} stroke={ink} stroke-width="5" stroke-opacity="0.3" />
        <CheckMark pen={pen} at={middleOf(from, to)} px={7} />
      </>
    );
  return (
    <>
      <line {...line} stroke={ground} stroke-width="10" />
      <line {...line} stroke={ink} stroke-width="5.5" />
      {ticks.map((tick) => (
        <PlateAcross pen={pen} tick={tick} />
      ))}
      {dots.map(([cx, cy]) => (
        <circle cx={cx} cy={cy} r="3.4" fill={ground} stroke={ink} stroke-width="1.8" />
      ))}
      {ends !== "none" && <Head pen={pen} from={from} to={to} />}
      {ends === "both" && <Head pen={pen} from={to} to={from} />}
    </>
  );
}

const HEAD_PX = 15;

/** An arrowhead whose point is at `to`. */
export function Head({ pen: { ink, ground }, from, to, px = HEAD_PX }: { pen: Pen; from: XY; to: XY; px?: number }) {
  const [x, y] = unitVector(from, to);
  const base: XY = [to[0] - x * px, to[1] - y * px];
  const half = px * 0.52;
  const points: XY[] = [to, [base[0] - y * half, base[1] + x * half], [base[0] + y * half, base[1] - x * half]];
  return <polygon points={pointsOf(points)} fill={ink} stroke={ground} stroke-width="2.4" paint-order="stroke" />;
}

/** A line without what its arrowheads cover. */
function shortened(from: XY, to: XY, both: boolean): { from: XY; to: XY } {
  const [x, y] = unitVector(from, to);
  const cut = Math.min(HEAD_PX - 2, Math.hypot(to[0] - from[0], to[1] - from[1]) / (both ? 2 : 1));
  return {
    from: both ? [tenth(from[0] + x * cut), tenth(from[1] + y * cut)] : from,
    to: [tenth(to[0] - x * cut), tenth(to[1] - y * cut)],
  };
}

const PlateAcross = ({ pen: { ink }, tick: { at, turnDeg } }: { pen: Pen; tick: Tick }) => (
  <rect
    x={tenth(at[0] - 1.8)}
    y={tenth(at[1] - 7)}
    width="3.6"
    height="14"
    fill={ink}
    transform={turnDeg % 180 === 0 ? undefined : `rotate(${tenth(turnDeg)} ${at[0]} ${at[1]})`}
  />
);

function Spot({ pen, shape: { at, px, no }, how }: Drawn<"spot">) {
  const { ink, ground } = pen;
  const [cx, cy] = at;
  if (how === "next") return <circle cx={cx} cy={cy} r={px - 1} fill="none" stroke={ink} stroke-width="2.4" stroke-dasharray="5 3.6" />;
  if (how === "done")
    return (
      <>
        <circle cx={cx} cy={cy} r={px - 2} fill={ground} stroke={ink} stroke-width="1" />
        <CheckMark pen={pen} at={at} px={px - 4} />
      </>
    );
  return (
    <>
      <circle cx={cx} cy={cy} r={px} fill={no ? ground : "none"} stroke={ground} stroke-width={px < 9 ? 5 : 7} />
      <circle cx={cx} cy={cy} r={px} fill="none" stroke={ink} stroke-width={px < 9 ? 2.6 : 3.6} />
      {no && <Label frame={pen} x={cx} y={cy} text={String(no)} px={15} bold />}
    </>
  );
}

const Band = ({ pen: { ink }, shape: { points } }: { pen: Pen; shape: Extract<Shape, { is: "band" }> }) => (
  <polyline points={pointsOf(points)} fill="none" stroke={ink} stroke-width="20" stroke-opacity="0.16" stroke-linecap="round" />
);

/** A check mark: done, or good. */
export function CheckMark({ pen: { ink, ground }, at: [x, y], px }: { pen: Pen; at: XY; px: number }) {
  const points: XY[] = [
    [x - px * 0.7, y],
    [x - px * 0.15, y + px * 0.6],
    [x + px * 0.8, y - px * 0.7],
  ];
  return [ground, ink].map((stroke, i) => (
    <polyline
      points={pointsOf(points)}
      fill="none"
      stroke={stroke}
      stroke-width={tenth(Math.max(1.8, px / 3.4) + (i === 0 ? 3 : 0))}
      stroke-linecap="round"
    />
  ));
}

export const pointsOf = (points: readonly XY[]): string => points.map((p) => p.map(tenth).join(",")).join(" ");
