import { stakeLines } from "../../../machines/tent/tape.ts";
import type { Corner, EdgeName, TentPlan } from "../../../machines/tent/types.ts";
import type { XY } from "../dimension.tsx";
import type { GroundAround } from "../site/ground-around.ts";
import { BAND_PX, isLevel, sideToward, type Toward } from "./compass.tsx";
import { Head } from "./shape.tsx";
import { type Room, type SmallFrame, type Turn, tenth } from "./small-frame.ts";
import { linesOf, sideOf, widestOf } from "./street.tsx";

/** What lies around a tent, where it is known: the compass bearing of A to B in degrees, the street along an edge. */
export type Surroundings = {
  readonly baselineBearingDeg?: number;
  readonly street?: { readonly edge: EdgeName; readonly name: string };
  /** Lines, wires and things, where anybody entered any. */
  readonly ground?: GroundAround | undefined;
};

export const LETTER_PX = 18;
/** Room for a corner's letter beside the tent, and above and below it for half a line. */
const SIDE_PX = 27;
const LEVEL_PX = 9;

/**
 * Room for the letters, for a street's name (one line above or below the tent, one word a line beside it), and outside of these
 * for north and the wind on the side where each lies.
 */
export function roomFor({ street }: Surroundings, turn: Turn, toward: readonly Toward[]): Room {
  const room = { left: SIDE_PX, right: SIDE_PX, top: LEVEL_PX, bottom: LEVEL_PX };
  if (street) {
    const side = sideOf(street.edge, turn);
    room[side] = isLevel(side) ? STREET_LEVEL_PX : 30 + widestOf(linesOf(street.name));
  }
  for (const side of new Set(toward.map(({ deg }) => sideToward(deg))))
    room[side] += isLevel(side) ? BAND_PX.level - 4 : BAND_PX.beside - 4;
  return room;
}

const STREET_LEVEL_PX = 26;

/** The letters of the corners, level with them and beside the stake line. A corner that is meant stands light on dark. */
export const CornerLetters = ({ plan, frame, meant }: { plan: TentPlan; frame: SmallFrame; meant: readonly Corner[] }) => (
  <g class="drawn-corners">
    {stakeLines(plan).map(({ from, start }) => {
      const {
        at: [x, y],
        toward,
      } = letterAt(frame, frame.at(start));
      const strong = meant.includes(from);
      return (
        <>
          {toward && <Head pen={frame} from={[x, y]} to={[x, y + toward * 21]} px={9} />}
          {strong && <circle cx={x} cy={y} r="12" fill={frame.ink} />}
          <text
            x={x}
            y={y}
            font-size={LETTER_PX}
            font-weight="700"
            fill={strong ? frame.ground : frame.ink}
            stroke={strong ? undefined : frame.ground}
            stroke-width={strong ? undefined : 4}
            paint-order="stroke"
          >
            {from}
          </text>
        </>
      );
    })}
  </g>
);

/** Where a corner's letter stands, and which way that corner is where only a part of the plan is shown that is without it. */
export function letterAt({ box, part }: SmallFrame, [x, y]: XY): { at: XY; toward: -1 | 1 | null } {
  const beside = x < box.widePx / 2 ? -13 : 13;
  const [from, to] = part ? [part.fromPx, part.toPx] : [0, box.highPx];
  const toward = part && y < from - 1 ? -1 : part && y > to + 1 ? 1 : null;
  const keepPx = toward === null ? 13 : 24;
  const level = part && toward === null ? Math.min(box.highPx - 13, Math.max(13, y)) : Math.min(to - keepPx, Math.max(from + keepPx, y));
  return { at: [tenth(x + beside), tenth(level)], toward };
}
