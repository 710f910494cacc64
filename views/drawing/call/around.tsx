import { stakeLines } from "../../../machines/tent/tape.ts";
import type { Corner, EdgeName, TentPlan } from "../../../machines/tent/types.ts";
import type { Words } from "../../text/words.ts";
import type { XY } from "../dimension.tsx";
import { Label } from "../label.tsx";
import { NorthArrow, northDeg } from "../surroundings.tsx";
import { outward, type Room, type SmallFrame, type Turn, tenth } from "./small-frame.ts";

/** What lies around a tent, where it is known: the compass bearing of A to B in degrees, the street along an edge. */
export type Surroundings = {
  readonly baselineBearingDeg?: number;
  readonly street?: { readonly edge: EdgeName; readonly name: string };
};

export const LETTER_PX = 18;
/** Room for a corner's letter beside the tent, and above and below it for half a line. */
const SIDE_PX = 27;
const LEVEL_PX = 9;
/** Room for the north arrow whichever way it points, and how much smaller it is than on the layout sheet. */
const NORTH_PX = 50;
const NORTH_SCALE = 0.7;
const STREET_TEXT_PX = 14;
const STREET_LETTERS = 8;

export type Side = "left" | "right" | "top" | "bottom";

/** The side of the picture that an edge is on. */
export function sideOf(edge: EdgeName, turn: Turn): Side {
  const [x, y] = outward(edge, turn);
  if (x !== 0) return x < 0 ? "left" : "right";
  return y < 0 ? "top" : "bottom";
}

/** Room for the letters, and for a street's name: one line above or below the tent, one word a line beside it. */
export function roomFor({ street, baselineBearingDeg: bearing }: Surroundings, turn: Turn): Room {
  const side = street ? sideOf(street.edge, turn) : null;
  const north = bearing === undefined ? {} : { [northSide(side)]: NORTH_PX };
  const usual: Room = { left: SIDE_PX, right: SIDE_PX, top: LEVEL_PX, bottom: LEVEL_PX, ...north };
  if (!street || side === null) return usual;
  if (side === "top" || side === "bottom") return { ...usual, [side]: 26 };
  const longest = Math.max(...linesOf(street.name).map((line) => line.length));
  return { ...usual, [side]: 30 + longest * STREET_TEXT_PX * 0.64 };
}

/** North stands halfway up on a side where no street is. */
const northSide = (street: Side | null): "left" | "right" => (street === "right" ? "left" : "right");

/** The letters of the corners, level with them and beside the stake line. A corner that is meant stands light on dark. */
export const CornerLetters = ({ plan, frame, meant }: { plan: TentPlan; frame: SmallFrame; meant: readonly Corner[] }) => (
  <g class="drawn-corners">
    {stakeLines(plan).map(({ from, start }) => {
      const [x, y] = letterAt(frame, frame.at(start));
      const strong = meant.includes(from);
      return (
        <>
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

function letterAt({ box }: SmallFrame, [x, y]: XY): XY {
  const beside = x < box.widePx / 2 ? -13 : 13;
  return [tenth(x + beside), tenth(Math.min(box.highPx - 13, Math.max(13, y)))];
}

/** North, and the street along its edge. */
export function Around({ plan, frame, around, words }: { plan: TentPlan; frame: SmallFrame; around: Surroundings; words: Words }) {
  const { baselineBearingDeg: bearing, street } = around;
  const { widePx, highPx } = frame.box;
  const side = northSide(street ? sideOf(street.edge, frame.turn) : null);
  const x = side === "left" ? NORTH_PX / 2 : widePx - NORTH_PX / 2;
  return (
    <>
      {street && <SmallStreet plan={plan} frame={frame} edge={street.edge} name={street.name} />}
      {bearing !== undefined && (
        <g class="drawn-north">
          <NorthArrow
            pen={{ ...frame, px: (n) => tenth(n * NORTH_SCALE) }}
            at={[x, highPx / 2]}
            deg={northDeg(plan, bearing) + frame.turn}
            text={words.layoutDrawing.north}
            letterPx={14 / NORTH_SCALE}
          />
        </g>
      )}
    </>
  );
}

/** Two curbs along the edge, and the street's name. */
function SmallStreet({ plan, frame, edge, name }: { plan: TentPlan; frame: SmallFrame; edge: EdgeName; name: string }) {
  const side = sideOf(edge, frame.turn);
  const { start, end } = stakeLines(plan).find((l) => l.edge === edge)!;
  const [[x1, y1], [x2, y2]] = [frame.at(start), frame.at(end)];
  const level = side === "top" || side === "bottom";
  const sign = side === "left" || side === "top" ? -1 : 1;
  const [outer, lines] = level ? [sign * 9, [shortened(name, 30)]] : [sign * 25, linesOf(name)];
  const curb = (n: number) => (level ? { x1, y1: tenth(y1 + n), x2, y2: tenth(y2 + n) } : { x1: tenth(x1 + n), y1, x2: tenth(x2 + n), y2 });
  const [mx, my] = [(x1 + x2) / 2, (y1 + y2) / 2];
  const widest = Math.max(...lines.map((l) => l.length)) * STREET_TEXT_PX * 0.64;
  return (
    <g class="drawn-street">
      <line {...curb(level ? sign * 5 : outer)} stroke={frame.ink} stroke-width="1.5" />
      <line {...curb(level ? sign * 23 : outer + sign * (widest + 4))} stroke={frame.ink} stroke-width="1.5" />
      {lines.map((line, i) => (
        <Label
          frame={frame}
          x={tenth(level ? mx : mx + outer + sign * (widest / 2 + 2))}
          y={tenth(level ? my + sign * 14 : my + (i - (lines.length - 1) / 2) * (STREET_TEXT_PX + 2))}
          text={line}
          px={STREET_TEXT_PX}
          bold
        />
      ))}
    </g>
  );
}

/** A name word by word, for where it stands beside the tent. */
const linesOf = (name: string): string[] =>
  name
    .split(/\s+/)
    .slice(0, 4)
    .map((word) => shortened(word, STREET_LETTERS));

const shortened = (text: string, letters: number): string => (text.length <= letters ? text : `${text.slice(0, letters - 1)}…`);
