import type { PlanPicture } from "../../../machines/picture/picture.ts";
import type { TentPlan } from "../../../machines/tent/types.ts";
import type { Words } from "../../text/words.ts";
import type { XY } from "../dimension.tsx";
import { Label } from "../label.tsx";
import { NorthArrow, northDeg } from "../surroundings.tsx";
import { Head } from "./shape.tsx";
import { type SmallFrame, type Turn, tenth } from "./small-frame.ts";

export type Side = "left" | "right" | "top" | "bottom";

/** What stands around a plan on the side where it lies: north, and the wind on the side that it comes from. In degrees clockwise from up. */
export type Toward = { readonly is: "north" | "wind"; readonly deg: number };

/** What is known of that, by the compass bearing of A to B; the wind only where the call depends on it. */
export function towardOf(
  plan: TentPlan,
  turn: Turn,
  bearing: number | undefined,
  { windFromDeg }: Pick<PlanPicture, "windFromDeg">,
): Toward[] {
  if (bearing === undefined) return [];
  const north = northDeg(plan, bearing) + turn;
  return [{ is: "north", deg: north }, ...(windFromDeg === undefined ? [] : [{ is: "wind" as const, deg: north + windFromDeg }])];
}

/** The side of the picture that lies that way. */
export function sideToward(deg: number): Side {
  const [x, y] = unit(deg);
  if (Math.abs(x) > Math.abs(y)) return x < 0 ? "left" : "right";
  return y < 0 ? "top" : "bottom";
}

/** How deep the band is at the outside of the picture in which they stand: above or below the plan, and beside it. */
export const BAND_PX = { level: 31, beside: 34 } as const;
export const isLevel = (side: Side): boolean => side === "top" || side === "bottom";
/** How far from the outside of the picture their middles are. */
const DEEP_PX = 20;
/** How far two in one band keep from each other, and from its ends. */
const APART_PX = { level: 66, beside: 44 } as const;
const END_PX = { level: 30, beside: 34 } as const;
const NORTH_SCALE = 0.55;
const TEXT_PX = 14;

/** North, and the wind, each outside the plan on its side. */
export function Compass({ toward, frame, words }: { toward: readonly Toward[]; frame: SmallFrame; words: Words }) {
  const spots = spotsOf(toward, frame);
  return toward.map(({ is, deg }, i) =>
    is === "north" ? (
      <g class="drawn-north">
        <NorthArrow
          pen={{ ...frame, px: (n) => tenth(n * NORTH_SCALE) }}
          at={spots[i]!}
          deg={deg}
          text={words.layoutDrawing.north}
          letterPx={TEXT_PX / NORTH_SCALE}
        />
      </g>
    ) : (
      <g class="drawn-wind">
        <WindArrow frame={frame} at={spots[i]!} deg={deg} text={words.picture.wind} />
      </g>
    ),
  );
}

/** Where each stands: in its band, on the line from the middle of the plan that way; the second keeps off the first. */
export function spotsOf(toward: readonly Toward[], { box, middle: [mx, my] }: Pick<SmallFrame, "box" | "middle">): XY[] {
  const spots: { side: Side; along: number }[] = [];
  for (const { deg } of toward) {
    const side = sideToward(deg);
    const [x, y] = unit(deg);
    const level = isLevel(side);
    const kind = level ? "level" : "beside";
    const [from, awayPx, most] = level ? [mx, my, box.widePx] : [my, mx, box.highPx];
    const reachPx = side === "top" || side === "left" ? awayPx : (level ? box.highPx : box.widePx) - awayPx;
    const clamp = (n: number) => Math.min(most - END_PX[kind], Math.max(END_PX[kind], n));
    let along = clamp(from + (reachPx * (level ? x : y)) / Math.abs(level ? y : x));
    const other = spots.find((s) => s.side === side)?.along;
    if (other !== undefined && Math.abs(other - along) < APART_PX[kind]) {
      const way = along >= other ? 1 : -1;
      const wanted = other + way * APART_PX[kind];
      along = clamp(wanted) === wanted ? wanted : other - way * APART_PX[kind];
    }
    spots.push({ side, along });
  }
  return spots.map(({ side, along }): XY => {
    const at: Readonly<Record<Side, XY>> = {
      top: [along, DEEP_PX],
      bottom: [along, box.highPx - DEEP_PX],
      left: [DEEP_PX, along],
      right: [box.widePx - DEEP_PX, along],
    };
    return at[side].map(tenth) as unknown as XY;
  });
}

/** An arrow that blows at the tent, and its name beside it. */
function WindArrow({ frame, at: [x, y], deg, text }: { frame: SmallFrame; at: XY; deg: number; text: string }) {
  const [ux, uy] = unit(deg);
  const on = (px: number): XY => [tenth(x + ux * px), tenth(y + uy * px)];
  const [from, to, base] = [on(13), on(-13), on(-1)];
  const level = isLevel(sideToward(deg));
  const right = x < frame.box.widePx / 2;
  const [tx, ty]: XY = level ? [x + (right ? 31 : -31), y] : [x, y - 19];
  return (
    <>
      <line x1={from[0]} y1={from[1]} x2={base[0]} y2={base[1]} stroke={frame.ink} stroke-width="6" />
      <Head pen={frame} from={from} to={to} px={14} />
      <Label frame={frame} x={tenth(tx)} y={tenth(ty)} text={text} px={TEXT_PX} bold />
    </>
  );
}

/** A direction, y down. */
const unit = (deg: number): XY => [Math.sin((deg * Math.PI) / 180), -Math.cos((deg * Math.PI) / 180)];
