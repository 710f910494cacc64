import { DEFAULTS } from "../../../machines/install/limits.ts";
import { offPlumbIn } from "../../../machines/install/phases/tensioned.ts";
import { SIDE_POLE_FT } from "../../../machines/tent/templates.ts";
import type { Drawing } from "./drawing.ts";
import { at, away, moved, type XY } from "./geometry.ts";
import { Area, Dot, Hatch, Leader, Lettering, Line, Right, Span, Strap, Wrong } from "./strokes.tsx";
import { Ground, PlumbBob, Pole, Tape } from "./things.tsx";

const box = (x: number, y: number, wide: number, high: number): XY[] => [
  [x, y],
  [x + wide, y],
  [x + wide, y + high],
  [x, y + high],
];

/** A pole's top with its pin, and a ring cut through at its middle, with the strap that it is sewn to: it comes down as steep as from 8 ft to a stake 6 ft out. */
const PoleAndRing = () => (
  <>
    <Area points={box(140, 142, 40, 62)} part="pole" />
    <Area points={box(154, 44, 12, 98)} part="pin" />
    <Strap
      points={[
        [202, 122],
        [262, 202],
      ]}
      wide={11}
    />
    <Area points={box(112, 116, 34, 14)} is="solid" />
    <Area points={box(174, 116, 34, 14)} is="solid" />
  </>
);

/** The pin of a pole through both: the ring, and the grommet of the cloth above it. Source: the calls' own text. */
export const pin: Drawing = {
  frames: [
    ({ handWork: { labels: say } }) => (
      <>
        <PoleAndRing />
        <Area points={at("0,120 60,104 126,96 146,96 146,106 126,106 60,114 0,130")} is="soft" />
        <Area points={at("174,96 230,96 240,106 174,106")} is="soft" />
        <Area points={box(126, 90, 22, 20)} />
        <Area points={box(172, 90, 22, 20)} />
        <Lettering at={[96, 54]} text={say.pin} />
        <Leader from={[112, 56]} to={[154, 62]} />
        <Lettering at={[266, 68]} text={say.grommet} />
        <Leader from={[230, 76]} to={[190, 94]} />
        <Lettering at={[64, 150]} text={say.ring} />
        <Leader from={[84, 148]} to={[116, 126]} />
        <Lettering at={[92, 184]} text={say.pole} />
        <Leader from={[112, 184]} to={[148, 180]} />
        <Right at={[296, 24]} />
      </>
    ),
    ({ handWork: { labels: say } }) => (
      <>
        <PoleAndRing />
        <Area points={at("0,130 50,112 92,104 112,76 122,80 100,114 54,122 0,140")} is="soft" />
        <g>
          <Area points={at("104,84 112,70 128,78 120,92")} />
        </g>
        <Lettering at={[78, 44]} text={say.grommetFolded} />
        <Leader from={[96, 54]} to={[114, 78]} />
        <Lettering at={[234, 92]} text={say.ringOnly} />
        <Wrong at={[296, 24]} />
      </>
    ),
  ],
};

/** How far off plumb the pole is drawn, degrees: more than any is left, so that it shows. */
export const DRAWN_OFF_DEG = 10;
/** What a side pole may be off, in over its length: the same figure that the call takes. Source: `sidePoleLeanDeg`, common practice. */
export const OFF_PLUMB_IN = offPlumbIn(DEFAULTS.sidePoleLeanDeg.is, SIDE_POLE_FT);
const FOOT: XY = [136, 168];
const LONG = 142;
const HALF_POLE = 5;

/** A plumb bob from the pole's top, and a tape from its string to the foot; both ways. Source: the call's own text. */
export const plumb: Drawing = {
  frames: [
    ({ inches, feetInches, handWork: { labels: say } }) => {
      const top = away(FOOT, DRAWN_OFF_DEG, LONG);
      const hung = moved(top, HALF_POLE, 2);
      return (
        <>
          <Ground
            surface={[
              [0, FOOT[1]],
              [320, FOOT[1]],
            ]}
          />
          <Pole foot={FOOT} top={top} wide={HALF_POLE * 2} />
          <PlumbBob from={hung} long={LONG - 8} />
          <Span from={[FOOT[0] + HALF_POLE, 158]} to={[hung[0], 158]} text={say.howMuch} at={[250, 142]} />
          <Leader from={[204, 146]} to={[(FOOT[0] + hung[0]) / 2 + 3, 157]} />
          <Lettering at={[72, 60]} text={say.fromTop} />
          <Lettering at={[242, 30]} text={say.leanLarger} light />
          <Leader from={[126, 52]} to={[154, 36]} />
          <Lettering at={[240, 106]} text={say.string} />
          <Leader from={[212, 106]} to={[hung[0] + 3, 106]} />
          <Lettering at={[160, 190]} text={say.limitOver(inches(OFF_PLUMB_IN), feetInches(SIDE_POLE_FT))} />
        </>
      );
    },
    ({ handWork: { labels: say } }) => {
      const at: XY = [160, 104];
      const bob: XY = [240, 156];
      return (
        <>
          <Area is="earth" points={box(0, 0, 320, 104)} />
          <Hatch points={box(0, 0, 320, 104)} apart={16} />
          <Line
            points={[
              [0, 104],
              [320, 104],
            ]}
            is="dash"
          />
          <Tape from={at} to={[at[0], bob[1]]} />
          <Tape from={at} to={[bob[0], at[1]]} />
          <Line points={[[bob[0], at[1]], bob, [at[0], bob[1]]]} is="ghost" />
          <Dot at={at} r={11} />
          <Dot at={bob} r={6} is="solid" part="bob" />
          <Lettering at={[250, 84]} text={say.alongEdge} />
          <Lettering at={[90, 152]} text={say.outFromEdge} />
          <Lettering at={[280, 156]} text={say.string} />
          <Lettering at={[70, 36]} text={say.tent} />
          <Lettering at={[86, 84]} text={say.footAbove} />
        </>
      );
    },
  ],
};
