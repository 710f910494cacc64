import type { Drawing } from "./drawing.ts";
import { at, type XY } from "./geometry.ts";
import { LaidLoop } from "./lacing.tsx";
import { Hand } from "./people.tsx";
import { Arrow, Cord, Leader, Lettering, Line, Right, Strap, Wrong } from "./strokes.tsx";
import { Hook, Ring } from "./things.tsx";

const Y = 104;
/** The rope that comes back from the edge, and its end through the long loop. */
const Standing = () => (
  <Cord
    straight
    points={[
      [320, Y],
      [128, Y],
    ]}
  />
);
const Through = () => (
  <Cord
    points={[
      [136, Y],
      [112, Y + 2],
      [98, Y + 18],
      [106, Y + 38],
      [132, Y + 42],
      [160, Y + 34],
    ]}
  />
);
/** A half hitch at a place along the rope: the part that goes around behind and is tucked, and the part that crosses before. */
const behind = (x: number): XY[] => [
  [x + 34, Y - 20],
  [x + 16, Y - 36],
  [x - 12, Y - 25],
  [x - 15, Y],
  [x - 10, Y + 19],
  [x + 10, Y + 26],
  [x + 42, Y + 34],
];
const before = (x: number): XY[] => [
  [x - 20, Y + 34],
  [x - 2, Y + 16],
  [x + 20, Y - 8],
  [x + 34, Y - 20],
  [x + 29, Y - 29],
];
const HITCHES = [180, 242] as const;

/** How a half of a seam is tied off at its long loop: two half hitches. Common practice, no source: the maker's knot comes first. */
export const tieOff: Drawing = {
  frames: [
    ({ handWork: { labels: say } }) => (
      <>
        <LaidLoop at={[10, Y]} long={112} high={26} wide={11} />
        <Cord
          points={[
            [320, Y],
            [210, Y],
            [128, Y],
            [104, Y + 8],
            [96, Y + 34],
            [118, Y + 62],
            [150, Y + 70],
          ]}
          part="end"
        />
        <Cord
          points={[
            [90, Y - 24],
            [104, Y - 22],
            [121, Y - 4],
          ]}
          wide={11}
        />
        <Hand at={[186, Y + 66]} deg={278} is="pinch" thumb="right" size={0.9} />
        <Lettering at={[64, 52]} text={say.longLoop} />
        <Lettering at={[254, 80]} text={say.fromEdge} />
        <Arrow points={at("258,58 226,54 194,58")} />
      </>
    ),
    ({ handWork: { labels: say } }) => (
      <>
        <LaidLoop at={[10, Y]} long={112} high={26} wide={11} />
        {HITCHES.map((x) => (
          <Cord points={behind(x)} part="hitch" />
        ))}
        <Standing />
        <Through />
        {HITCHES.map((x) => (
          <Cord points={before(x)} />
        ))}
        <Cord
          points={[
            [280, Y + 33],
            [294, Y + 40],
            [306, Y + 56],
          ]}
        />
        {HITCHES.map((x, i) => (
          <Lettering at={[x + 12, 50]} text={String(i + 1)} />
        ))}
        <Lettering at={[84, 184]} text={say.twoHitches} />
        <Arrow points={at("170,166 206,172 244,164")} />
      </>
    ),
    ({ handWork: { labels: say } }) => (
      <>
        <LaidLoop at={[10, Y]} long={112} high={20} wide={11} />
        <Cord
          straight
          points={[
            [320, Y],
            [112, Y],
          ]}
        />
        {[132, 147, 162].map((x) => (
          <Cord
            straight
            wide={11}
            points={[
              [x + 3, Y - 15],
              [x - 3, Y + 15],
            ]}
          />
        ))}
        <Cord
          points={[
            [166, Y + 16],
            [186, Y + 30],
            [214, Y + 40],
          ]}
        />
        <Hand at={[248, Y + 50]} deg={294} size={1} />
        <Arrow points={at("232,184 258,188 292,184")} />
        <Lettering at={[150, 60]} text={say.pullHard} />
        <Right at={[296, 24]} />
      </>
    ),
  ],
};

/** A hook in its ring: shut, and half shut. Source: the calls' own text. */
export const ringHook: Drawing = {
  frames: [
    ({ handWork: { labels: say } }) => (
      <>
        <Strap
          points={[
            [236, 100],
            [320, 100],
          ]}
          wide={22}
        />
        <Ring at={[102, 104]} r={42} hole={31} />
        <Hook at={[134, 100]} shut />
        <Line
          points={[
            [102, 62],
            [102, 73],
          ]}
          is="ink"
        />
        <Hand at={[190, 142]} deg={322} is="pinch" thumb="left" />
        <Leader from={[66, 176]} to={[84, 141]} />
        <Lettering at={[54, 188]} text={say.ring} />
        <Lettering at={[222, 54]} text={say.shutAndFelt} />
        <Right at={[296, 24]} />
      </>
    ),
    ({ handWork: { labels: say } }) => (
      <>
        <Strap
          points={[
            [236, 100],
            [320, 100],
          ]}
          wide={22}
        />
        <Ring at={[102, 104]} r={42} hole={31} />
        <Hook at={[134, 100]} shut={false} />
        <Arrow points={at("92,46 66,34 36,42")} />
        <Lettering at={[222, 54]} text={say.gateOpen} />
        <Lettering at={[222, 160]} text={say.comesOff} />
        <Wrong at={[296, 24]} />
      </>
    ),
  ],
};
