import type { Drawing } from "./drawing.ts";
import { at, moved, type XY } from "./geometry.ts";
import { Hand } from "./people.tsx";
import { Area, Arrow, Cord, Leader, Lettering, Line, Right } from "./strokes.tsx";
import { Ring } from "./things.tsx";

/** A loop that lies along the seam from its grommet, in px along it; negative ones lie the other way. */
export const LaidLoop = ({ at, long, high = 15, wide = 8 }: { at: XY; long: number; high?: number; wide?: number }) => {
  const way = Math.sign(long);
  const p = (x: number, y: number) => moved(at, x * way, y);
  const far = Math.abs(long);
  return (
    <Cord
      part="loop"
      wide={wide}
      points={[
        p(0, -2),
        p(far * 0.25, -high),
        p(far - high * 0.8, -high),
        p(far, 0),
        p(far - high * 0.8, high),
        p(far * 0.25, high),
        p(0, 2),
      ]}
    />
  );
};

/** A loop that a hand holds up out of its grommet, seen from the side of the seam. */
const RaisedLoop = ({ at, to }: { at: XY; to: XY }) => {
  const [x, y] = [to[0] - at[0], to[1] - at[1]];
  return (
    <Cord
      part="loop"
      points={[
        moved(at, -3, 0),
        moved(at, x * 0.4 - 9, y * 0.5),
        moved(to, -7, 4),
        moved(to, 0, -3),
        moved(to, 7, 4),
        moved(at, x * 0.4 + 9, y * 0.5),
        moved(at, 3, 0),
      ]}
    />
  );
};

/** Two pieces that overlap: the one with the grommets lies on the one with the loops. */
const Cloth = ({ hem = 96 }: { hem?: number }) => (
  <>
    <Area
      is="earth"
      points={[
        [0, 0],
        [320, 0],
        [320, hem],
        [0, hem],
      ]}
    />
    <Line
      points={[
        [0, hem],
        [320, hem],
      ]}
      is="bold"
    />
    <Line
      points={[
        [0, hem + 7],
        [320, hem + 7],
      ]}
      is="ghost"
    />
  </>
);

const AT = [44, 112, 180] as const;
const Y = 138;
const REACH = 84;

/** Loop through loop: each comes up through its grommet and through the loop before it. Sources: the calls' own text; chain lacing of loops, TM 10-8340-222-10. */
export const loops: Drawing = {
  frames: [
    ({ handWork: { labels: say } }) => (
      <>
        <Cloth />
        {AT.map((x) => (
          <Ring at={[x, Y]} />
        ))}
        <Leader from={[194, 172]} to={[182, 149]} />
        <Lettering at={[216, 184]} text={say.grommet} />
        <Lettering at={[244, 40]} text={say.loopEdge} />
        <RaisedLoop at={[AT[0], Y]} to={[78, 62]} />
        <Hand at={[108, 50]} deg={245} is="pinch" thumb="left" size={0.9} />
        <Arrow points={at("24,122 18,92 26,58")} />
      </>
    ),
    ({ handWork: { labels: say } }) => (
      <>
        <Cloth />
        {AT.map((x) => (
          <Ring at={[x, Y]} />
        ))}
        <LaidLoop at={[AT[0], Y]} long={REACH} high={18} />
        <RaisedLoop at={[AT[1], Y]} to={[150, 58]} />
        <Hand at={[180, 46]} deg={245} is="pinch" thumb="left" size={0.9} />
        <Arrow points={at("92,112 86,84 94,52")} />
        <Lettering at={[56, 180]} text={say.first} />
        <Lettering at={[124, 180]} text={say.next} />
      </>
    ),
    ({ handWork: { labels: say } }) => (
      <>
        <Cloth />
        {AT.map((x) => (
          <Ring at={[x, Y]} />
        ))}
        {AT.slice(0, 2).map((x) => (
          <LaidLoop at={[x, Y]} long={REACH} high={18} />
        ))}
        <LaidLoop at={[AT[2], Y]} long={72} high={16} />
        <Hand at={[274, Y - 2]} deg={270} is="pinch" thumb="right" size={0.9} />
        <Arrow points={at("196,76 240,72 290,76")} />
        <Lettering at={[228, 48]} text={say.toEdge} />
        <Right at={[24, 178]} />
      </>
    ),
  ],
};

/** A run of small loops, each through the last; from left to right where the pitch is above 0. */
export const Chain = ({ from, n, pitch, y }: { from: number; n: number; pitch: number; y: number }) => (
  <>
    {Array.from({ length: n }, (_, i) => (
      <>
        <Ring at={[from + i * pitch, y]} r={5} hole={2.4} />
        <LaidLoop at={[from + i * pitch, y]} long={pitch * 1.3} high={8} wide={6} />
      </>
    ))}
  </>
);

const SEAM_Y = 104;
/** A half of a seam from above: the center ring at the left, a quarter ring on the way, the edge of the tent at the right. */
const Half = ({ ring = true }: { ring?: boolean }) => (
  <>
    <Area is="earth" points={at("0,60 304,60 304,90 0,90")} />
    <Line
      points={[
        [0, 60],
        [304, 60],
      ]}
      is="thin"
    />
    <Line
      points={[
        [0, 90],
        [304, 90],
      ]}
    />
    <Line
      points={[
        [0, 148],
        [304, 148],
      ]}
      is="thin"
    />
    <Line
      points={[
        [304, 46],
        [304, 162],
      ]}
      is="bold"
    />
    <Ring at={[18, SEAM_Y]} r={15} hole={9} />
    {ring && <Ring at={[150, SEAM_Y]} r={13} hole={7} />}
  </>
);

/** The long loop: where the run from the center ends, left on top past its ring, for the run from the edge to meet. Source: the calls' own text. */
export const longLoop: Drawing = {
  frames: [
    ({ handWork: { labels: say } }) => (
      <>
        <Half />
        <Chain from={42} n={4} pitch={22} y={SEAM_Y} />
        <LaidLoop at={[168, SEAM_Y]} long={72} high={13} />
        <Arrow points={at("30,38 80,32 138,38")} />
        <Lettering at={[36, 176]} text={say.center} />
        <Lettering at={[136, 176]} text={say.ring} />
        <Leader from={[220, 164]} to={[216, 119]} />
        <Lettering at={[222, 176]} text={say.longLoop} />
        <Lettering at={[284, 30]} text={say.edge} />
      </>
    ),
    ({ handWork: { labels: say } }) => (
      <>
        <Half />
        <Chain from={42} n={4} pitch={22} y={SEAM_Y} />
        <LaidLoop at={[168, SEAM_Y]} long={72} high={13} />
        <Chain from={294} n={2} pitch={-24} y={SEAM_Y} />
        <Arrow points={at("296,38 262,32 222,38")} />
        <Lettering at={[284, 18]} text={say.edge} />
        <Leader from={[226, 164]} to={[240, 110]} />
        <Lettering at={[220, 176]} text={say.tieHere} />
      </>
    ),
  ],
};
