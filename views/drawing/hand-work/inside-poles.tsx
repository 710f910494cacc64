import { SIDE_POLE_FT, usualCenterPoleFt } from "../../../machines/tent/templates.ts";
import type { Drawing } from "./drawing.ts";
import { arc, at, away, between, moved, strip, type XY } from "./geometry.ts";
import { Person, PersonAbove } from "./people.tsx";
import { Area, Arrow, Curve, Leader, Lettering, Line, Right } from "./strokes.tsx";
import { Ground, NoGo, Pole, Ring } from "./things.tsx";

/** Half the width of the tent that is drawn, ft. Its center pole is as long as one that wide has (`usualCenterPoleFt`). */
const HALF_FT = 40;
const POLE_FT = usualCenterPoleFt(2 * HALF_FT);
const UNITS_PER_FT = 150 / POLE_FT;
/** The center pole, and somebody 6 ft tall, in the scale of the frame. */
export const POLE_LONG = POLE_FT * UNITS_PER_FT;
const TALL = 6 * UNITS_PER_FT;
const GROUND_Y = 176;
const PLATE: XY = [206, GROUND_Y - 3];

/** The pole with its top in the ring, so high over its plate: its foot is as far out as its length leaves it. */
function leaning(heightFt: number): { top: XY; foot: XY } {
  const high = heightFt * UNITS_PER_FT;
  return { top: moved(PLATE, 0, -high), foot: moved(PLATE, -Math.sqrt(POLE_LONG ** 2 - high ** 2), 0) };
}

/** The roof from the ring to the tops of the side poles, which stand outside of the frame. */
function Roof({ top }: { top: XY }) {
  const side = (way: number): XY => [PLATE[0] + way * HALF_FT * UNITS_PER_FT, GROUND_Y - SIDE_POLE_FT * UNITS_PER_FT];
  const cut = (way: number, x: number): XY => between(top, side(way), (x - top[0]) / (side(way)[0] - top[0]));
  return (
    <>
      <Line points={[cut(-1, 0), top, cut(1, 320)]} is="bold" part="roof" />
      <Ring at={moved(top, 0, -2)} r={7} hole={3} />
    </>
  );
}

const Scene = ({ heightFt }: { heightFt: number }) => {
  const { top, foot } = leaning(heightFt);
  return (
    <>
      <Ground
        surface={[
          [0, GROUND_Y],
          [320, GROUND_Y],
        ]}
      />
      <Area points={[moved(PLATE, -14, 0), moved(PLATE, 14, 0), moved(PLATE, 14, 3), moved(PLATE, -14, 3)]} is="solid" />
      <Roof top={top} />
      <Pole foot={foot} top={top} wide={6} />
    </>
  );
};

/** Somebody beside the pole, hands on it, as far along as is told. */
const OnPole = ({ heightFt, part, dx = 0 }: { heightFt: number; part: number; dx?: number }) => {
  const { top, foot } = leaning(heightFt);
  const hold = between(foot, top, part);
  const at: XY = [hold[0] + dx, GROUND_Y];
  return <Person at={at} tall={TALL} hands={[hold, between(foot, top, part + 0.05)]} leanDeg={10} stride={0.3} />;
};

/** A center pole leaned in: its pin in the ring, its foot kept low and walked in to its plate. Source: the calls' own text. */
export const leanIn: Drawing = {
  frames: [
    ({ handWork: { labels: say } }) => (
      <>
        <Scene heightFt={7} />
        <OnPole heightFt={7} part={0.3} dx={-4} />
        <OnPole heightFt={7} part={0.5} dx={-4} />
        <Leader from={[226, 92]} to={[208, 128]} />
        <Lettering at={[226, 80]} text={say.pinInRing} />
        <Leader from={[258, 156]} to={[222, 171]} />
        <Lettering at={[276, 146]} text={say.plate} />
        <Lettering at={[54, 100]} text={say.footFar} />
        <Leader from={[54, 110]} to={[62, 166]} />
      </>
    ),
    ({ handWork: { labels: say } }) => (
      <>
        <Scene heightFt={18} />
        <OnPole heightFt={18} part={0.13} />
        <OnPole heightFt={18} part={0.32} dx={6} />
        <Arrow points={at("104,190 140,192 176,190")} />
        <Lettering at={[54, 191]} text={say.footLow} />
        <Arrow points={at("232,110 236,84 232,54")} />
        <Lettering at={[270, 40]} text={say.topRises} />
      </>
    ),
    ({ handWork: { labels: say } }) => (
      <>
        <Scene heightFt={POLE_FT} />
        <Person at={[205, GROUND_Y]} tall={TALL} hands={at("203,134 209,130") as [XY, XY]} stride={0.5} />
        <Person at={[228, GROUND_Y]} tall={TALL} hands={at("208,138 208,146") as [XY, XY]} leanDeg={-6} looks="left" />
        <Person at={[254, GROUND_Y]} tall={TALL} hands={at("218,168 214,172") as [XY, XY]} leanDeg={-38} looks="left" kneels />
        <Lettering at={[80, 130]} text={say.handsOn} />
        <Lettering at={[80, 150]} text={say.tillSecured} />
        <Right at={[296, 24]} />
      </>
    ),
  ],
};

/** The same pole from above and from the side, in units: the fan that nobody stands in is as long as it. */
export const FAN_LONG = 118;
/** How wide the fan is to each side of the pole's line, degrees. Common practice, no source. */
const FAN_DEG = 28;
const FOOT: XY = [150, 100];

/** Standing a center pole: beside it, never in line with its foot. Source: the calls' own text. The fan is the pole's length: plain geometry. */
export const standUp: Drawing = {
  frames: [
    ({ handWork: { labels: say } }) => {
      // Its plate lies right below the ring: there the pole is to stand.
      const ring: XY = [FOOT[0] + 84, FOOT[1]];
      return (
        <>
          <NoGo points={[FOOT, ...arc(FOOT, FAN_LONG, [270 - FAN_DEG, 270 + FAN_DEG])]} part="fan" />
          <Area points={strip(moved(ring, -17, 0), moved(ring, 17, 0), 34)} is="soft" part="basePlate" />
          <Pole foot={FOOT} top={ring} wide={8} />
          <Ring at={ring} r={9} hole={4} />
          {[10, 44].flatMap((x) => [
            <PersonAbove at={[FOOT[0] + x, FOOT[1] - 27]} facing={[FOOT[0] + x, FOOT[1]]} reach />,
            <PersonAbove at={[FOOT[0] + x, FOOT[1] + 27]} facing={[FOOT[0] + x, FOOT[1]]} reach />,
          ])}
          <PersonAbove at={[292, 160]} facing={[200, 110]} />
          <Leader from={[274, 68]} to={moved(ring, 14, -13)} />
          <Lettering at={[284, 58]} text={say.plate} />
          <Lettering at={[274, 186]} text={say.caller} />
          <Lettering at={[78, 100]} text={say.nobody} />
          <Lettering at={[84, 186]} text={say.poleLength} />
          <Lettering at={[178, 36]} text={say.beside} />
          <Leader from={[52, 176]} to={away(FOOT, 246, FAN_LONG - 12)} />
        </>
      );
    },
    ({ handWork: { labels: say } }) => {
      const foot: XY = [150, 172];
      const top = away(foot, 34, FAN_LONG);
      return (
        <>
          <Ground
            surface={[
              [0, 172],
              [320, 172],
            ]}
          />
          <Curve points={arc(foot, FAN_LONG, [-90, 90])} is="edge" part="reach" />
          <Pole foot={foot} top={top} wide={7} />
          <Arrow points={arc(foot, FAN_LONG - 18, [40, 72])} />
          <Arrow points={arc(foot, FAN_LONG - 18, [28, -16])} />
          <Person
            at={[298, 172]}
            tall={34}
            hands={[
              [290, 134],
              [304, 158],
            ]}
            looks="left"
          />
          <Lettering at={[288, 106]} text={say.caller} />
          <Lettering at={[78, 26]} text={say.reachesThis} />
          <Lettering at={[150, 190]} text={say.poleLength} />
        </>
      );
    },
  ],
};
