import type { WindFacts } from "../../../machines/picture/picture.ts";
import type { Words } from "../../text/words.ts";
import type { XY } from "../dimension.tsx";
import { Label } from "../label.tsx";
import { CheckMark, Fills, Head, hatchOf, pointsOf } from "./shape.tsx";
import { PICTURE, SMALL_PALETTE, type Turn, tenth } from "./small-frame.ts";
import { WindOnTent } from "./wind-on-tent.tsx";

const PEN = { ...SMALL_PALETTE, px: (n: number) => n };
const { ink } = SMALL_PALETTE;
const CENTER: XY = [112, 124];
/** Radius of the scale, and of the band of the reading inside it. */
const SCALE_PX = 92;
const BAND_PX = 80;

/** The last reading on a half dial: what blows, what it gusts to, the limits on the scale, how old it is, and where it comes from. */
export function Dial({ facts, turn, fills = PICTURE, words }: { facts: WindFacts; turn: Turn; fills?: string; words: Words }) {
  const pen = { ...PEN, fills };
  const { reading, limits, belowMph, is } = facts;
  const mostMph = Math.ceil((Math.max(belowMph, reading?.mph ?? 0, reading?.gustMph ?? 0, ...limits.map((l) => l.mph)) * 1.25) / 10) * 10;
  const deg = (mph: number) => 180 - (Math.min(mph, mostMph) / mostMph) * 180;
  const marks = [...new Set([belowMph, ...limits.map((l) => l.mph)])].sort((a, b) => a - b);
  return (
    <>
      <Fills pen={pen} />
      <path d={ring(deg(belowMph), 0)} fill={`url(#${hatchOf(pen)})`} stroke={ink} stroke-width="1.4" />
      <path d={arc(SCALE_PX, 180, 0)} fill="none" stroke={ink} stroke-width="1.4" />
      {reading && <Reading reading={reading} old={is === "stale"} deg={deg} />}
      {marks.map((mph) => (
        <LimitMark deg={deg(mph)} text={words.picture.limitMark(mph)} />
      ))}
      <Says facts={facts} words={words} />
      <WindOnTent facts={facts} turn={turn} words={words} />
    </>
  );
}

/** A light band up to what blows, a full one on to the gust, and a pointer there. An old reading is drawn in dashes. */
function Reading({
  reading: { mph, gustMph },
  old,
  deg,
}: {
  reading: NonNullable<WindFacts["reading"]>;
  old: boolean;
  deg: (mph: number) => number;
}) {
  const dashes = old ? "6 5" : undefined;
  const pointer = deg(Math.max(mph, gustMph ?? 0));
  return (
    <>
      <path d={arc(BAND_PX, 180, deg(mph))} fill="none" stroke={ink} stroke-width="13" stroke-opacity="0.35" stroke-dasharray={dashes} />
      {gustMph !== null && gustMph > mph && (
        <path d={arc(BAND_PX, deg(mph), deg(gustMph))} fill="none" stroke={ink} stroke-width="13" stroke-dasharray={dashes} />
      )}
      <Head pen={PEN} from={spot(BAND_PX - 30, pointer)} to={spot(BAND_PX - 7, pointer)} px={14} />
    </>
  );
}

/** A limit on the scale, with its number outside. */
function LimitMark({ deg, text }: { deg: number; text: string }) {
  const [[x1, y1], [x2, y2], [x, y]] = [spot(BAND_PX - 7, deg), spot(SCALE_PX + 6, deg), spot(SCALE_PX + 17, deg)];
  return (
    <>
      <line x1={x1} y1={y1} x2={x2} y2={y2} stroke={ink} stroke-width="3" />
      <Label frame={PEN} x={x} y={y} text={text} px={16} bold />
    </>
  );
}

/** In the middle of the dial: the reading, its age, and whether it will do. */
function Says({ facts: { reading, is, belowMph }, words: { picture } }: { facts: WindFacts; words: Words }) {
  const [x] = CENTER;
  const said = is === "good" ? picture.under(belowMph) : picture.standing[is];
  return (
    <>
      <Label frame={PEN} x={x} y={99} text={reading ? picture.reading(reading.mph, reading.gustMph) : "?"} px={reading ? 21 : 44} bold />
      {reading && <Label frame={PEN} x={x} y={122} text={`${picture.mph}, ${picture.minAgo(reading.minAgo)}`} px={15} bold />}
      {is === "good" ? (
        <CheckMark pen={PEN} at={[x - 58, 149]} px={15} />
      ) : (
        <polygon
          points={pointsOf(octagon([x - 62 - said.length * 2, 151], 13))}
          fill={is === "over" ? ink : "none"}
          stroke={ink}
          stroke-width="3"
        />
      )}
      <Label frame={PEN} x={x + 8} y={151} text={said} px={19} bold />
    </>
  );
}

const octagon = ([x, y]: XY, px: number): XY[] =>
  Array.from({ length: 8 }, (_, i) => {
    const rad = ((i + 0.5) * Math.PI) / 4;
    return [x + px * Math.cos(rad), y + px * Math.sin(rad)];
  });

const spot = (radius: number, deg: number): XY => [
  tenth(CENTER[0] + radius * Math.cos((deg * Math.PI) / 180)),
  tenth(CENTER[1] - radius * Math.sin((deg * Math.PI) / 180)),
];
const arc = (radius: number, fromDeg: number, toDeg: number): string =>
  `M${spot(radius, fromDeg).join(" ")}A${radius} ${radius} 0 0 1 ${spot(radius, toDeg).join(" ")}`;
/** From a limit to the end of the scale: where it is too much. */
const ring = (fromDeg: number, toDeg: number): string =>
  `${arc(SCALE_PX, fromDeg, toDeg)}L${spot(BAND_PX - 7, toDeg).join(" ")}A${BAND_PX - 7} ${BAND_PX - 7} 0 0 0 ${spot(BAND_PX - 7, fromDeg).join(" ")}Z`;
