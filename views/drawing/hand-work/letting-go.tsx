import type { Child } from "hono/jsx";
import type { Drawing } from "./drawing.ts";
import { at, away, moved, type XY } from "./geometry.ts";
import { LaidLoop } from "./lacing.tsx";
import { Area, Arrow, Cord, Curve, Dot, Lettering, Line, Strap, Wrong } from "./strokes.tsx";
import { Ground, Ring, Stake } from "./things.tsx";

const AT = [40, 102, 164, 226] as const;
const Y = 112;
const REACH = 78;

/** A seam from the center at the left; its two pieces part as far as the loops have let go. */
const Seam = ({ openTo, children }: { openTo: number; children?: Child }) => {
  const gap = openTo > 0 ? 34 : 0;
  const hem = (way: number): XY[] => [
    [0, 92 + way * gap],
    [openTo * 0.6, 92 + way * gap * 0.8],
    [openTo, 92],
    [320, 92],
  ];
  return (
    <>
      <Area is="earth" points={[[0, 0], [320, 0], ...hem(-1).reverse()]} />
      <Line points={hem(-1)} is="bold" />
      {gap > 0 && <Line points={hem(1)} is="bold" />}
      {children}
    </>
  );
};

/** One seam loop missed: the loop before it is held by nothing, and lets go of the one before that. Source: the calls' own text. */
export const unzips: Drawing = {
  frames: [
    ({ handWork: { labels: say } }) => (
      <Seam openTo={0}>
        {AT.map((x) => (
          <Ring at={[x, Y]} r={8} hole={4} />
        ))}
        <LaidLoop at={[AT[0], Y]} long={REACH} high={14} wide={7} />
        <Cord
          wide={7}
          points={[
            [AT[1], Y - 2],
            [116, Y - 16],
            [158, Y - 26],
            [176, Y - 34],
            [172, Y - 48],
            [150, Y - 44],
            [112, Y - 24],
            [AT[1], Y],
          ]}
        />
        <LaidLoop at={[AT[2], Y]} long={REACH} high={14} wide={7} />
        <LaidLoop at={[AT[3], Y]} long={REACH} high={14} wide={7} />
        <Dot at={[166, 90]} r={36} is="edge" part="missed" />
        <Lettering at={[222, 46]} text={say.missed} />
        {AT.map((x, i) => (
          <Lettering at={[x, Y + 38]} text={String(i + 1)} />
        ))}
        <Lettering at={[34, 28]} text={say.center} />
        <Lettering at={[290, 180]} text={say.edge} />
        <Wrong at={[296, 24]} />
      </Seam>
    ),
    ({ handWork: { labels: say } }) => (
      <Seam openTo={128}>
        <Ring at={[AT[0], Y + 24]} r={8} hole={4} />
        <Ring at={[AT[1], Y + 10]} r={8} hole={4} />
        <Ring at={[AT[2], Y]} r={8} hole={4} />
        <Ring at={[AT[3], Y]} r={8} hole={4} />
        <Cord
          wide={7}
          points={[
            [AT[0], Y + 22],
            [64, Y + 4],
            [92, Y - 4],
            [100, Y + 6],
            [84, Y + 16],
            [AT[0], Y + 26],
          ]}
        />
        <Cord wide={7} points={at("100,78 122,64 144,58 146,70 126,76 104,84")} />
        <LaidLoop at={[AT[2], Y]} long={REACH} high={14} wide={7} />
        <LaidLoop at={[AT[3], Y]} long={REACH} high={14} wide={7} />
        <Arrow points={at("150,44 116,36 78,42")} />
        <Lettering at={[226, 36]} text={say.twoFree} />
        {AT.map((x, i) => (
          <Lettering at={[x, Y + [50, 38, 36, 36][i]!]} text={String(i + 1)} />
        ))}
      </Seam>
    ),
    ({ handWork: { labels: say } }) => (
      <Seam openTo={160}>
        <Ring at={[AT[0], Y + 32]} r={8} hole={4} />
        <Ring at={[AT[1], Y + 24]} r={8} hole={4} />
        <Ring at={[AT[2], Y]} r={8} hole={4} />
        <Ring at={[AT[3], Y]} r={8} hole={4} />
        <LaidLoop at={[AT[2], Y]} long={REACH} high={14} wide={7} />
        <LaidLoop at={[AT[3], Y]} long={REACH} high={14} wide={7} />
        <Arrow points={at("24,74 24,52 24,28")} />
        <Arrow points={at("24,148 24,166 24,192")} />
        <Lettering at={[66, 92]} text={say.open} />
        <Lettering at={[212, 170]} text={say.openToHere} />
        <Arrow points={at("164,160 162,148 162,130")} />
      </Seam>
    ),
  ],
};

/** Units for a foot: poles of 8 ft, 10 ft apart (`SIDE_POLE_FT`, `SPACING_FT`), stakes 6 ft out. */
const FT = 8;
const GROUND_Y = 156;
const POLES = [84, 164, 244] as const;
const POLE_LONG = 8 * FT;

/** An edge from outside: its poles as far over as told, the corner first, and the cloth along their tops. */
const Edge = ({ overDeg, strapped }: { overDeg: readonly [number, number, number]; strapped: boolean }) => {
  const tops = POLES.map((x, i) => away([x, GROUND_Y], overDeg[i]!, POLE_LONG));
  const sag = (a: XY, b: XY): XY => [(a[0] + b[0]) / 2, Math.min(GROUND_Y - 8, (a[1] + b[1]) / 2 + (overDeg[0] > 0 ? 14 : 3))];
  const [first, second, third] = tops as [XY, XY, XY];
  const last: XY = [324, overDeg[2] > 20 ? third[1] - 6 : GROUND_Y - POLE_LONG];
  const eave = [first, sag(first, second), second, sag(second, third), third, last];
  return (
    <>
      <Ground
        surface={[
          [0, GROUND_Y],
          [320, GROUND_Y],
        ]}
        depth={44}
      />
      {POLES.map((x, i) => (
        <Area
          points={[moved([x, GROUND_Y], -3, 0), moved(tops[i]!, -3, 0), moved(tops[i]!, 3, 0), moved([x, GROUND_Y], 3, 0)]}
          part="pole"
        />
      ))}
      <Stake at={[POLES[0] - 6 * FT, GROUND_Y]} leanDeg={-8} showing={10} inGround={32} />
      {strapped && <Strap points={[first, [POLES[0] - 6 * FT, GROUND_Y - 5]]} wide={7} />}
      {!strapped && (
        <Curve
          points={[
            [POLES[0] - 6 * FT, GROUND_Y - 5],
            [50, 148],
            [60, 152],
            [72, 150],
          ]}
          is="bold"
        />
      )}
      <Curve points={eave} is="bold" />
    </>
  );
};

/** One corner let go early: the edge sags, and the next poles go over in a row. Source: the calls' own text. */
export const cornerEarly: Drawing = {
  frames: [
    ({ handWork: { labels: say } }) => (
      <>
        <Edge overDeg={[0, 0, 0]} strapped />
        <Lettering at={[62, 52]} text={say.corner} />
        <Lettering at={[220, 52]} text={say.holdsRest} />
        <Arrow points={at("98,72 150,68 206,72")} />
        <Lettering at={[30, 116]} text={say.strap} />
      </>
    ),
    ({ handWork: { labels: say } }) => (
      <>
        <Edge overDeg={[36, 9, 2]} strapped={false} />
        <Lettering at={[64, 52]} text={say.strapOff} />
        <Arrow points={at("64,84 86,78 112,84")} />
        <Lettering at={[226, 52]} text={say.sags} />
        <Wrong at={[296, 24]} />
      </>
    ),
    ({ handWork: { labels: say } }) => (
      <>
        <Edge overDeg={[82, 62, 36]} strapped={false} />
        <Arrow points={at("120,104 164,84 214,84")} />
        <Lettering at={[150, 52]} text={say.inARow} />
        <Wrong at={[296, 24]} />
      </>
    ),
  ],
};
