import type { Marks, Move, Squared } from "../../../machines/site/squaring.ts";
import { CORNERS, type Point } from "../../../machines/tent/types.ts";
import type { Words } from "../../text/words.ts";
import type { XY } from "../dimension.tsx";
import { Label } from "../label.tsx";
import { textWidePx } from "./labels.ts";
import { Letters } from "./letters.tsx";
import { Head, pointsOf } from "./shape.tsx";
import { type Box, type Room, type SmallFrame, tenth, turned } from "./small-frame.ts";

type Out = Extract<Squared, { is: "square" | "out" }>;

/** How far the mark that is off most is drawn from its place. */
const FARTHEST_PX = 24;
const ROUND_FACTORS = [1, 10, 100].flatMap((tens) => [1, 2, 3, 4, 5, 6, 8].map((n) => n * tens));

/**
 * How many times what is off is drawn larger, so that it can be seen: the largest round number at which no mark is drawn farther
 * from its place than there is room for.
 */
export function largerBy(marks: Marks, want: Marks, pxPerFt: number): number {
  const farthestPx = Math.max(...CORNERS.map((c) => Math.hypot(marks[c].xFt - want[c].xFt, marks[c].yFt - want[c].yFt))) * pxPerFt;
  return ROUND_FACTORS.findLast((n) => n * farthestPx <= FARTHEST_PX) ?? 1;
}

/** The marks as they are over the figure that is wanted, and for each that has to move which way and how far, as it is said. */
export function Moves({ found, want, frame, words }: { found: Out; want: Marks; frame: SmallFrame; words: Words }) {
  const { ink, ground, box, at } = frame;
  const ways = found.moves.flatMap(waysOf);
  const times = largerBy(found.marks, want, frame.pxPerFt);
  const drawn = (corner: keyof Marks): Point => ({
    xFt: want[corner].xFt + (found.marks[corner].xFt - want[corner].xFt) * times,
    yFt: want[corner].yFt + (found.marks[corner].yFt - want[corner].yFt) * times,
  });
  const a = at(want.A);
  const ys = CORNERS.map((c) => at(want[c])[1]);
  const sideHighPx = Math.max(...ys) - Math.min(...ys);
  return (
    <>
      <polygon points={pointsOf(CORNERS.map((c) => at(want[c])))} fill="none" stroke={ink} stroke-width="1.6" stroke-dasharray="6 5" />
      <polygon points={pointsOf(CORNERS.map((c) => at(drawn(c))))} fill="none" stroke={ink} stroke-width="2.6" />
      <rect x={tenth(a[0] - 6)} y={tenth(a[1] - 6)} width="12" height="12" fill={ink} stroke={ground} stroke-width="2" />
      {found.moves.map((move) => {
        const [from, to] = [at(drawn(move.corner)), at(want[move.corner])];
        return (
          <>
            <circle cx={from[0]} cy={from[1]} r="4.5" fill={ground} stroke={ink} stroke-width="2.6" />
            <line x1={from[0]} y1={from[1]} x2={to[0]} y2={to[1]} stroke={ink} stroke-width="4.5" />
            <Head pen={frame} from={from} to={to} px={11} />
          </>
        );
      })}
      <Letters want={want} frame={frame} awayPx={FARTHEST_PX + 16} />
      {isTall(box) ? (
        <InWords ways={ways} frame={frame} words={words} />
      ) : (
        found.moves.map((move) => (
          <Beside ways={waysOf(move)} corner={at(want[move.corner])} sideHighPx={sideHighPx} frame={frame} words={words} />
        ))
      )}
      <Label frame={frame} x={box.widePx / 2} y={box.highPx - 9} text={words.picture.larger(times)} px={15} bold />
    </>
  );
}

/** A way that a mark moves: across the tent, or along it. */
type OneWay = { readonly corner: Move["corner"]; readonly way: "across" | "along"; readonly byIn: number };

const waysOf = ({ corner, acrossIn, alongIn }: Move): OneWay[] =>
  [
    { corner, way: "across" as const, byIn: corner === "B" ? 0 : acrossIn },
    { corner, way: "along" as const, byIn: alongIn },
  ].filter(({ byIn }) => byIn !== 0);

/** Its direction as the plan is turned. */
const directionOf = ({ way, byIn }: OneWay, { turn }: SmallFrame): XY =>
  turned(way === "across" ? { xFt: Math.sign(byIn), yFt: 0 } : { xFt: 0, yFt: Math.sign(byIn) }, turn);

const LINE_PX = 22;
const TEXT_PX = 16;

/** Whether a box has room for each way in words, under the figure. */
const isTall = ({ highPx }: Box): boolean => highPx >= 280;

/** Room that is kept free around the figure for which way each mark has to move and how far, and how much larger that is drawn. */
export function roomToMove(box: Box, moves: readonly Move[]): Room {
  if (!isTall(box)) return { left: 106, right: 106, top: 28, bottom: 66 };
  return { left: 62, right: 62, top: 34, bottom: 58 + LINE_PX * moves.flatMap(waysOf).length };
}

/** Under the figure: each way with its corner, an arrow as the plan is turned, and in words. */
function InWords({ ways, frame, words }: { ways: readonly OneWay[]; frame: SmallFrame; words: Words }) {
  const { widePx, highPx } = frame.box;
  const texts = ways.map(({ corner, way, byIn }) => words.picture.way(corner, way, byIn));
  const left = Math.max(4, (widePx - 46 - textWidePx(longest(texts), TEXT_PX - 1)) / 2);
  return ways.map((way, i) => {
    const y = tenth(highPx - 22 - (ways.length - i) * LINE_PX + LINE_PX / 2);
    return (
      <>
        <Label frame={frame} x={tenth(left + 6)} y={y} text={way.corner} px={TEXT_PX} bold />
        <LittleArrow frame={frame} at={[tenth(left + 28), y]} way={directionOf(way, frame)} />
        <Label frame={frame} x={tenth(left + 44)} y={y} text={texts[i]!} px={TEXT_PX - 1} anchor="start" bold />
      </>
    );
  });
}

const longest = (texts: readonly string[]): string => texts.reduce((a, b) => (b.length > a.length ? b : a), "");

type BesideProps = { ways: readonly OneWay[]; corner: XY; sideHighPx: number; frame: SmallFrame; words: Words };

/** Beside a mark: its way across and its way along, each with an arrow and how far. */
function Beside({ ways, corner: [x, y], sideHighPx, frame, words }: BesideProps) {
  const { widePx, highPx } = frame.box;
  // The upper corner of a side keeps off the lower one's.
  const first = y < highPx / 2 ? Math.min(18, sideHighPx - 26) : 18;
  return ways.map((way, i) => {
    const lineY = tenth(y + first + i * LINE_PX);
    const text = words.inches(Math.abs(way.byIn));
    const wide = textWidePx(text, TEXT_PX);
    const end = x < widePx / 2 ? Math.max(x - FARTHEST_PX, 28 + wide) : Math.min(widePx - 3, x + FARTHEST_PX + 28 + wide);
    return (
      <>
        <LittleArrow frame={frame} at={[tenth(end - wide - 14), lineY]} way={directionOf(way, frame)} />
        <Label frame={frame} x={tenth(end)} y={lineY} text={text} px={TEXT_PX} anchor="end" bold />
      </>
    );
  });
}

function LittleArrow({ frame, at: [x, y], way: [dx, dy] }: { frame: SmallFrame; at: XY; way: XY }) {
  const [from, to]: [XY, XY] = [
    [x - dx * 9, y - dy * 9],
    [x + dx * 9, y + dy * 9],
  ];
  return (
    <>
      <line x1={from[0]} y1={from[1]} x2={x} y2={y} stroke={frame.ink} stroke-width="4" />
      <Head pen={frame} from={from} to={to} px={11} />
    </>
  );
}
