import type { Drawing } from "./drawing.ts";
import { at, moved, type XY } from "./geometry.ts";
import { Hand } from "./people.tsx";
import { Area, Arrow, Cord, Leader, Lettering, Line, Right } from "./strokes.tsx";
import { Ring } from "./things.tsx";

/** `over`: only so much of it, drawn once more over what goes through it. */
type LaidProps = { at: XY; long: number; high?: number; wide?: number; over?: readonly [number, number] };
/** A loop that lies along the seam from its grommet, in units along it; negative ones lie the other way. */
export const LaidLoop = ({ at, long, high = 15, wide = 8, over }: LaidProps) => {
  const way = Math.sign(long);
  const p = (x: number, y: number) => moved(at, x * way, y);
  const far = Math.abs(long);
  return (
    <Cord
      part={over ? "over" : "loop"}
      wide={wide}
      over={over}
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
        <Hand at={[104, 51]} deg={245} is="pinch" thumb="left" size={0.9} />
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
        <Hand at={[176, 47]} deg={245} is="pinch" thumb="left" size={0.9} />
        <Arrow points={at("152,124 170,104 176,76")} />
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
