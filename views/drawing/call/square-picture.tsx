import type { SquarePicture } from "../../../machines/picture/picture.ts";
import type { LengthName, Marks, Squared } from "../../../machines/site/squaring.ts";
import { CORNERS, type Corner, type EdgeName, type TentPlan } from "../../../machines/tent/types.ts";
import type { Words } from "../../text/words.ts";
import type { XY } from "../dimension.tsx";
import { Label } from "../label.tsx";
import { textWidePx } from "./labels.ts";
import { Letters } from "./letters.tsx";
import { Moves, roomToMove } from "./moves.tsx";
import { CheckMark, DrawnShape, pointsOf } from "./shape.tsx";
import { type Box, type SmallFrame, smallFrame, type Turn, tenth } from "./small-frame.ts";

type Props = { picture: SquarePicture; plan: TentPlan; turn: Turn; box: Box; words: Words };

const ROOM = { left: 30, right: 30, top: 13, bottom: 13 } as const;

/** What four marks come to: what is still to be taped, which length to tape again, which marks to move, or that it is square. */
export function SquareDrawing({ picture, plan, turn, box, words }: Props) {
  const { want, found } = picture;
  const moves = found?.is === "out" && found.moves.length > 0;
  const frame = smallFrame(plan, Object.values(want), turn, { box, room: moves ? roomToMove(box, found.moves) : ROOM });
  if (moves) return <Moves found={found} want={want} frame={frame} words={words} />;
  return (
    <>
      <Lines picture={picture} frame={frame} words={words} />
      <Letters want={want} frame={frame} />
      {found?.is === "square" && <IsSquare frame={frame} want={want} words={words} />}
    </>
  );
}

/** Square: a large check mark, and the word. */
function IsSquare({ frame, want, words }: { frame: SmallFrame; want: Marks; words: Words }) {
  const { ink } = frame;
  const [x, y] = middleOfMarks(want, frame);
  return (
    <>
      <polygon points={pointsOf(CORNERS.map((c) => frame.at(want[c])))} fill="none" stroke={ink} stroke-width="5" />
      <CheckMark pen={frame} at={[x, y - 28]} px={26} />
      <Label frame={frame} x={x} y={tenth(y + 8)} text={words.picture.square} px={24} bold />
    </>
  );
}

const middleOfMarks = (want: Marks, { at }: SmallFrame): XY => {
  const spots = CORNERS.map((c) => at(want[c]));
  return [tenth(spots.reduce((sum, [x]) => sum + x, 0) / 4), tenth(spots.reduce((sum, [, y]) => sum + y, 0) / 4)];
};

/** The lengths to tape again: those that make no triangle, or the one that stands out; none where nothing does. */
function doubted(found: Squared | null, read: readonly LengthName[]): readonly LengthName[] {
  if (found?.is === "farOff") return read;
  if (found === null || !("suspects" in found)) return [];
  if (found.suspects.length > 0) return found.suspects.map(({ name }) => name);
  if (found.is === "out" || found.is === "square") return [];
  return found.is === "noTriangle" ? [found.longest, ...found.others] : read;
}

/** The six lengths: the one to tape now strong, those that were read with a check mark, those to come thin. */
function Lines({ picture, frame, words }: { picture: SquarePicture; frame: SmallFrame; words: Words }) {
  const { want, lengths, next, found } = picture;
  const isSquare = found?.is === "square";
  const again = doubted(
    found,
    lengths.flatMap(({ name, readFt }) => (readFt === null ? [] : [name])),
  );
  const spots = (name: LengthName) => [name[0], name[1]].map((c) => frame.at(want[c as Corner])) as [XY, XY];
  const rows = lengths.map((row) => {
    const strong = again.length > 0 ? again.includes(row.name) : !isSquare && row.name === next && row.readFt === null;
    return { ...row, strong, points: spots(row.name) };
  });
  return (
    <>
      {rows.map(({ name, points, strong, readFt }) =>
        strong ? (
          <g class="drawn-length-strong" data-length={name}>
            <DrawnShape pen={frame} how="about" shape={{ is: "way", points, ends: "both", ticks: [] }} />
          </g>
        ) : (
          <polyline
            points={pointsOf(points)}
            fill="none"
            stroke={frame.ink}
            stroke-width={readFt === null ? 1.4 : 2.4}
            stroke-dasharray={readFt === null ? "7 5" : undefined}
          />
        ),
      )}
      {rows.map(({ name, points, strong, wantFt, readFt, good, offIn }) => {
        // Where one is doubted, the others only stand in its way.
        if ((isSquare && readFt !== null) || (again.length > 0 && !again.includes(name)) || again.length > 1) return null;
        const off = readFt !== null && !good && !again.includes(name);
        const text =
          again.includes(name) && readFt !== null
            ? `${words.tapeText(readFt, "ft")}?`
            : off
              ? words.picture.off(offIn)
              : words.tapeText(wantFt, "ft");
        const px = strong ? 19 : 15;
        const [x, y] = labelAt(name, points, textWidePx(text, px), frame);
        return (
          <>
            {readFt !== null && good && again.length === 0 && (
              <CheckMark pen={frame} at={[tenth(x - textWidePx(text, px) / 2 - 9), y]} px={8} />
            )}
            <Label frame={frame} x={x} y={y} text={text} px={px} bold />
          </>
        );
      })}
      {found && again.length > 0 && <Again frame={frame} want={want} words={words} />}
    </>
  );
}

const Again = ({ frame, want, words }: { frame: SmallFrame; want: Marks; words: Words }) => {
  const [x, y] = middleOfMarks(want, frame);
  return <Label frame={frame} x={x} y={tenth(y + 34)} text={words.picture.again} px={22} bold />;
};

/** Inside the figure for an edge; for a diagonal on its line, each in a half of its own. */
function labelAt(name: LengthName, [from, to]: readonly XY[], widePx: number, frame: SmallFrame): XY {
  if (name === "AC" || name === "BD") {
    const t = from![1] < to![1] === (name === "AC") ? 0.3 : 0.7;
    const [x, y] = [from![0] + (to![0] - from![0]) * t, from![1] + (to![1] - from![1]) * t];
    return [tenth(x), tenth(y)];
  }
  const [ox, oy] = frame.out(name as EdgeName);
  const inward = oy === 0 ? widePx / 2 + 8 : 15;
  return [tenth((from![0] + to![0]) / 2 - ox * inward), tenth((from![1] + to![1]) / 2 - oy * inward)];
}
