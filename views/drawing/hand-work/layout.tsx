import type { Drawing } from "./drawing.ts";
import { at, away, between, moved, strip, type XY } from "./geometry.ts";
import { Person } from "./people.tsx";
import { Area, Arrow, Dot, Leader, Lettering, Line, Right, Wrong } from "./strokes.tsx";
import { Ground, PlumbBob, Tape } from "./things.tsx";

/** The triangle that is drawn, ft: three, four, five times ten. */
export const TRIANGLE_FT = { along: 40, across: 30, diagonal: 50 } as const;
const UNITS_PER_FT = 3.6;
const A: XY = [72, 182];
const ALONG: XY = moved(A, 0, -TRIANGLE_FT.along * UNITS_PER_FT);
const ACROSS: XY = moved(A, TRIANGLE_FT.across * UNITS_PER_FT, 0);
/** How far off a corner is drawn that was made small, degrees: more than it would be, so that it shows. */
const OFF_DEG = 7;

/** A square corner from three, four, five. Source: geometry, exact. */
export const threeFourFive: Drawing = {
  frames: [
    ({ feetInches, handWork: { labels: say } }) => (
      <>
        <Line points={[A, [A[0], 8]]} is="bold" />
        <Tape from={A} to={ACROSS} />
        <Tape from={ALONG} to={ACROSS} />
        <Line points={[moved(A, 0, -16), moved(A, 16, -16), moved(A, 16, 0)]} part="square" />
        {[A, ALONG, ACROSS].map((at) => (
          <Dot at={at} r={5} is="solid" part="corner" />
        ))}
        <Lettering at={[46, 182]} text="A" />
        <Lettering at={[40, 16]} text={say.toCorner("B")} />
        <Lettering at={[102, 30]} text={say.mark} />
        <Lettering at={[34, 110]} text={feetInches(TRIANGLE_FT.along)} />
        <Lettering at={[120, 164]} text={feetInches(TRIANGLE_FT.across)} />
        <Lettering at={[176, 98]} text={feetInches(TRIANGLE_FT.diagonal)} />
        <Leader from={[224, 150]} to={moved(ACROSS, 4, -2)} />
        <Lettering at={[242, 138]} text={say.tapesCross} />
        <Lettering at={[244, 184]} text={say.toCorner("D")} />
      </>
    ),
    ({ handWork: { labels: say } }) => (
      <>
        <Line
          points={[
            [40, 182],
            [40, 8],
          ]}
          is="bold"
        />
        <Line
          points={[
            [40, 182],
            [316, 182],
          ]}
          is="dash"
        />
        <Area points={at("40,182 40,150 64,182")} />
        <Line points={[[40, 182], away([40, 182], 90 - OFF_DEG, 266)]} part="off" />
        <Arrow points={at("298,180 300,166 303,152")} />
        <Lettering at={[232, 128]} text={say.offHere} />
        <Lettering at={[120, 110]} text={say.smallTriangle} />
        <Leader from={[88, 120]} to={[52, 166]} />
        <Lettering at={[190, 66]} text={say.errorLarger} light />
        <Wrong at={[296, 24]} />
      </>
    ),
  ],
};

/** How steep the slope is: so much down for so much along. */
export const SLOPE = 0.4;
const slopeAt = (x: number): XY => [x, 190 - x * SLOPE];
const HILL: readonly XY[] = [slopeAt(0), slopeAt(320)];
/** One pull of the tape, in units along the level. */
export const PULL = 116;
const [TOP_X, MID_X, END_X] = [286, 286 - PULL, 286 - 2 * PULL];

/** Down a slope in level steps, the bob telling where each ends; and a tape laid on the ground. Source: the call's own text; geometry. */
export const levelTape: Drawing = {
  frames: [
    ({ handWork: { labels: say } }) => {
      const first = slopeAt(TOP_X)[1] - 4;
      const second = slopeAt(MID_X)[1] - 4;
      return (
        <>
          <Ground surface={HILL} />
          <Tape from={[TOP_X, first]} to={[MID_X, first]} />
          <PlumbBob from={[MID_X, first]} long={slopeAt(MID_X)[1] - first} />
          <Tape from={[MID_X, second]} to={[END_X, second]} />
          <PlumbBob from={[END_X, second]} long={slopeAt(END_X)[1] - second} />
          <Person
            at={slopeAt(MID_X - 16)}
            tall={62}
            hands={[
              [MID_X, first],
              [MID_X - 4, first - 2],
            ]}
          />
          <Person
            at={slopeAt(END_X - 16)}
            tall={62}
            hands={[
              [END_X, second],
              [END_X - 4, second - 2],
            ]}
          />
          <Lettering at={[226, 52]} text={say.level} />
          <Lettering at={[108, 98]} text={say.level} />
          <Lettering at={[256, 152]} text={say.bobMarks} />
          <Leader from={[222, 144]} to={moved(slopeAt(MID_X), 4, -2)} />
          <Right at={[24, 24]} />
        </>
      );
    },
    ({ handWork: { labels: say } }) => {
      const from = slopeAt(TOP_X);
      // As much tape, laid down the slope: its end is not as far out.
      const to = between(from, slopeAt(END_X), (2 * PULL) / Math.hypot(2 * PULL, 2 * PULL * SLOPE));
      return (
        <>
          <Ground surface={HILL} />
          <Area points={strip(moved(from, 0, -5), moved(to, 0, -5), 8)} part="laid" />
          <Line
            points={[
              [END_X, 190],
              [END_X, 60],
            ]}
            is="ghost"
          />
          <Line points={[to, [to[0], 60]]} is="ghost" />
          <Arrow
            points={[
              [END_X, 78],
              [END_X + 3, 78],
              [to[0], 78],
            ]}
          />
          <Lettering at={[26, 78]} text={say.level} />
          <Lettering at={[108, 40]} text={say.comesShort} />
          <Lettering at={[216, 142]} text={say.onGround} />
          <Leader from={[206, 132]} to={[194, 107]} />
          <Wrong at={[296, 24]} />
        </>
      );
    },
  ],
};
