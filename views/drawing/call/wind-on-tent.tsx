import type { WindFacts } from "../../../machines/picture/picture.ts";
import { CORNERS, type Corner, type EdgeName, type Point } from "../../../machines/tent/types.ts";
import type { Words } from "../../text/words.ts";
import type { XY } from "../dimension.tsx";
import { Label } from "../label.tsx";
import { LETTER_PX } from "./around.tsx";
import { Head, pointsOf } from "./shape.tsx";
import { SMALL_PALETTE, type Turn, tenth, turned } from "./small-frame.ts";

const PEN = { ...SMALL_PALETTE, px: (n: number) => n };
const { ink } = SMALL_PALETTE;
const CENTER: XY = [272, 50];
/** How large the tent is drawn, and how far out the arrow of the wind begins and ends. */
const TENT_PX = { wide: 54, high: 40 } as const;
const ARROW_PX = { from: 47, to: 22 } as const;
const LINE_PX = 17;
const BOTTOM_PX = 160;

/** Beside the dial: the tent with the edges that the wind comes at, as far as that is known, and the limits by name. */
export function WindOnTent({ facts, turn, words: { picture } }: { facts: WindFacts; turn: Turn; words: Words }) {
  const { reading, windward, baselineBearingDeg, limits } = facts;
  const fromDeg = reading?.fromDeg ?? null;
  const known = fromDeg !== null && baselineBearingDeg !== null;
  /** At most five: where from, and the limits. */
  const lines = [
    ...(reading ? [fromDeg === null ? picture.fromNotSaid : picture.windFrom(fromDeg)] : []),
    ...limits.map((l) => picture.limit(l.is, l.mph)),
  ];
  return (
    <>
      {known && <Tent facts={facts} turn={turn} windward={windward} />}
      {known && <Arrow deg={fromDeg - baselineBearingDeg + turn} />}
      {lines.map((text, i) => (
        <Label frame={PEN} x={CENTER[0]} y={BOTTOM_PX - (lines.length - 1 - i) * LINE_PX} text={text} px={14} bold />
      ))}
    </>
  );
}

function Tent({ facts: { widthFt, lengthFt }, turn, windward }: { facts: WindFacts; turn: Turn; windward: readonly EdgeName[] }) {
  const corners: Record<Corner, Point> = {
    A: { xFt: -widthFt / 2, yFt: -lengthFt / 2 },
    B: { xFt: -widthFt / 2, yFt: lengthFt / 2 },
    C: { xFt: widthFt / 2, yFt: lengthFt / 2 },
    D: { xFt: widthFt / 2, yFt: -lengthFt / 2 },
  };
  const across = turn === 90 || turn === 270;
  const [wide, high] = across ? [lengthFt, widthFt] : [widthFt, lengthFt];
  const scale = Math.min(TENT_PX.wide / wide, TENT_PX.high / high);
  const at = (corner: Corner): XY => {
    const [x, y] = turned(corners[corner], turn);
    return [tenth(CENTER[0] + x * scale), tenth(CENTER[1] + y * scale)];
  };
  return (
    <>
      <polygon points={pointsOf(CORNERS.map(at))} fill="none" stroke={ink} stroke-width="1.4" />
      {windward.map((edge) => (
        <polyline points={pointsOf([at(edge[0] as Corner), at(edge[1] as Corner)])} fill="none" stroke={ink} stroke-width="6" />
      ))}
      {CORNERS.map((corner) => {
        const [x, y] = at(corner);
        return (
          <Label
            frame={PEN}
            x={tenth(x + (x < CENTER[0] ? -11 : 11))}
            y={tenth(y + (y < CENTER[1] ? -7 : 7))}
            text={corner}
            px={LETTER_PX}
            bold
          />
        );
      })}
    </>
  );
}

/** Toward the tent, from where the wind comes: degrees clockwise from up. */
function Arrow({ deg }: { deg: number }) {
  const [x, y] = [Math.sin((deg * Math.PI) / 180), -Math.cos((deg * Math.PI) / 180)];
  const [from, to] = [ARROW_PX.from, ARROW_PX.to - 16].map((px): XY => [tenth(CENTER[0] + x * px), tenth(CENTER[1] + y * px)]) as [XY, XY];
  return (
    <>
      <line x1={from[0]} y1={from[1]} x2={tenth(to[0] + x * 12)} y2={tenth(to[1] + y * 12)} stroke={ink} stroke-width="5" />
      <Head pen={PEN} from={from} to={to} />
    </>
  );
}
