import type { Marks, Move, Squared } from "../../../machines/site/squaring.ts";
import { CORNERS, type Point } from "../../../machines/tent/types.ts";
import type { Words } from "../../text/words.ts";
import type { XY } from "../dimension.tsx";
import { Label } from "../label.tsx";
import { textWidePx } from "./labels.ts";
import { Letters } from "./letters.tsx";
import { Head, pointsOf } from "./shape.tsx";
import { type SmallFrame, tenth, turned } from "./small-frame.ts";

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
      {found.moves.map((move) => (
        <Ways move={move} corner={at(want[move.corner])} sideHighPx={sideHighPx} frame={frame} words={words} />
      ))}
      <Label frame={frame} x={box.widePx / 2} y={box.highPx - 9} text={words.picture.larger(times)} px={15} bold />
    </>
  );
}

const LINE_PX = 22;

type WaysProps = { move: Move; corner: XY; sideHighPx: number; frame: SmallFrame; words: Words };

/** Beside a mark: its way across and its way along, each with an arrow as the plan is turned. */
function Ways({ move, corner: [x, y], sideHighPx, frame, words }: WaysProps) {
  const { box, turn } = frame;
  const ways = [
    { byIn: move.acrossIn, along: { xFt: Math.sign(move.acrossIn), yFt: 0 } },
    { byIn: move.alongIn, along: { xFt: 0, yFt: Math.sign(move.alongIn) } },
  ].filter(({ byIn }, i) => byIn !== 0 && !(move.corner === "B" && i === 0));
  const left = x < box.widePx / 2;
  // Toward the middle where there is room for both corners of a side, else away from it.
  const down = y < box.highPx / 2 || sideHighPx < 3 * LINE_PX ? 1 : -1;
  return ways.map(({ byIn, along }, i) => {
    const lineY = tenth(y + down * (20 + i * LINE_PX));
    const text = words.inches(Math.abs(byIn));
    const textX = left ? x - FARTHEST_PX : box.widePx - 3;
    const [dx, dy] = turned(along, turn);
    const arrowX = textX - textWidePx(text, 16) - 14;
    return (
      <>
        <LittleArrow frame={frame} at={[tenth(arrowX), lineY]} way={[dx, dy]} />
        <Label frame={frame} x={tenth(textX)} y={lineY} text={text} px={16} anchor="end" bold />
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
