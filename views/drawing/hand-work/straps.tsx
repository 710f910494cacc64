import type { Child } from "hono/jsx";
import type { Drawing } from "./drawing.ts";
import { at, away, moved, type XY } from "./geometry.ts";
import { Hand } from "./people.tsx";
import { Area, Arrow, Lettering, Line, Right, Strap, Wrong } from "./strokes.tsx";
import { Ground, Stake } from "./things.tsx";

const Y = 152;
const SURFACE: readonly XY[] = [
  [0, Y],
  [320, Y],
];
const STAKES = [136, 192] as const;
const SHOWS = 62;

/** Two stakes of a plate, seen from outside the tent, with what goes behind them drawn before. */
const Pair = ({ leanDeg = 0, behind, children }: { leanDeg?: number; behind?: Child; children?: Child }) => (
  <>
    <Ground surface={SURFACE} depth={48} />
    {behind}
    {STAKES.map((x) => (
      <Stake at={[x, Y]} leanDeg={leanDeg} showing={SHOWS} inGround={40} wide={12} />
    ))}
    <Area
      points={[
        [108, Y - 9],
        [220, Y - 9],
        [220, Y],
        [108, Y],
      ]}
      is="soft"
      part="plate"
    />
    {children}
  </>
);

/** The eye that is sewn into the end of a strap, and the band around both stakes at a height. */
const Band = ({ y }: { y: number }) => (
  <>
    <Strap
      points={[
        [112, y],
        [216, y],
      ]}
      wide={14}
      part="band"
    />
    <Line
      points={[
        [216, y - 7],
        [224, y],
        [216, y + 7],
      ]}
      is="bold"
    />
    <Area
      points={[
        [84, y - 9],
        [112, y - 7],
        [112, y + 7],
        [84, y + 9],
        [78, y],
      ]}
    />
    <Area
      points={[
        [89, y - 4],
        [104, y - 3],
        [104, y + 3],
        [89, y + 4],
      ]}
      is="soft"
    />
  </>
);

const LOW = Y - 19;

/** A strap choked low around the stakes of its plate, and one tied high. Source: the call's own text; where exactly, the sheet shows. */
export const strapChoked: Drawing = {
  frames: [
    ({ handWork: { labels: say } }) => (
      <Pair
        behind={
          <Strap
            points={[
              [216, LOW - 8],
              [120, LOW - 12],
              [60, LOW - 34],
            ]}
            wide={12}
          />
        }
      >
        <Band y={LOW} />
        <Hand at={[44, LOW - 40]} deg={110} is="grip" thumb="left" size={0.85} />
        <Arrow points={at("206,70 162,58 118,70")} />
        <Lettering at={[160, 30]} text={say.around} />
        <Lettering at={[50, 174]} text={say.eye} />
      </Pair>
    ),
    ({ handWork: { labels: say } }) => (
      <Pair>
        <Band y={LOW} />
        <Strap
          points={[
            [96, LOW],
            [66, LOW - 30],
            [10, 40],
          ]}
          wide={12}
        />
        <Hand at={[48, 82]} deg={128} is="grip" thumb="left" size={0.85} />
        <Arrow points={at("84,78 62,46 42,22")} />
        <Lettering at={[196, 34]} text={say.throughEye} />
        <Right at={[296, 24]} />
      </Pair>
    ),
    ({ handWork: { labels: say } }) => (
      <Pair leanDeg={-9}>
        <Band y={Y - 52} />
        <Strap
          points={[
            [96, Y - 52],
            [66, Y - 82],
            [22, 20],
          ]}
          wide={12}
        />
        {STAKES.map((x) => (
          <Line points={[[x, Y], away([x, Y], 0, SHOWS + 10)]} is="ghost" />
        ))}
        <Arrow points={[moved([210, 76], 0, 0), [170, 60], [128, 64]]} />
        <Lettering at={[194, 34]} text={say.bendsOver} />
        <Wrong at={[296, 24]} />
      </Pair>
    ),
  ],
};
