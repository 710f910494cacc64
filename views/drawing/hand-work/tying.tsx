import type { Drawing } from "./drawing.ts";
import { at, type XY } from "./geometry.ts";
import { LaidLoop } from "./lacing.tsx";
import { Hand } from "./people.tsx";
import { Arrow, Cord, Lettering, Right } from "./strokes.tsx";

const Y = 104;
/** The long loop at the left, its far end where the rope comes to it. */
const LongLoop = ({ high = 26 }: { high?: number }) => <LaidLoop at={[10, Y]} long={112} high={high} wide={11} />;
/** The long loop's upper right, drawn once more: there it lies over the rope that goes through it. */
const LoopOver = ({ high = 26 }: { high?: number }) => <LaidLoop at={[10, Y]} long={112} high={high} wide={11} over={[2, 4]} />;

/** Where the two hitches are along the rope. */
const HITCHES = [172, 236] as const;
/** One hitch: over its own rope, around behind it, and tucked out over its own start. */
const hitch = (x: number): XY[] => [
  [x - 14, Y + 26],
  [x + 4, Y + 10],
  [x + 24, Y - 14],
  [x + 26, Y - 32],
  [x + 4, Y - 40],
  [x - 12, Y - 22],
  [x - 12, Y + 4],
  [x + 2, Y + 24],
  [x + 26, Y + 32],
];
/** The working end: from the right through the long loop, back below, through both hitches, and out. */
const WORKING: readonly XY[] = [
  [320, Y],
  [210, Y],
  [128, Y],
  [106, Y + 4],
  [92, Y + 20],
  [104, Y + 40],
  [132, Y + 40],
  ...HITCHES.flatMap(hitch),
  [286, Y + 46],
  [300, Y + 64],
];
/** Of those points, where each hitch begins. */
const BEGINS = HITCHES.map((_, i) => 7 + i * 9);

/** How a half of a seam is tied off at its long loop: two half hitches. Common practice, no source: the maker's knot comes first. */
export const tieOff: Drawing = {
  frames: [
    ({ handWork: { labels: say } }) => (
      <>
        <LongLoop />
        <Cord
          points={[
            [320, Y],
            [210, Y],
            [128, Y],
            [106, Y + 6],
            [94, Y + 32],
            [112, Y + 62],
            [160, Y + 70],
          ]}
          part="end"
        />
        <LoopOver />
        <Hand at={[178, Y + 68]} deg={276} is="pinch" thumb="right" size={0.9} />
        <Arrow points={at("220,190 244,192 270,190")} />
        <Lettering at={[64, 52]} text={say.longLoop} />
        <Lettering at={[254, 80]} text={say.fromEdge} />
        <Arrow points={at("258,58 226,54 194,58")} />
      </>
    ),
    ({ handWork: { labels: say } }) => (
      <>
        <LongLoop />
        <Cord points={WORKING} part="end" />
        <LoopOver />
        <Cord
          straight
          points={[
            [320, Y],
            [150, Y],
          ]}
          part="standing"
        />
        {BEGINS.map((i) => (
          <>
            <Cord points={WORKING} over={[i, i + 3]} part="start" />
            <Cord points={WORKING} over={[i + 6, i + 8]} part="tuck" />
          </>
        ))}
        {HITCHES.map((x, i) => (
          <Lettering at={[x + 8, 46]} text={String(i + 1)} />
        ))}
        <Lettering at={[84, 184]} text={say.twoHitches} />
        <Arrow points={at("176,164 208,170 244,162")} />
        <Right at={[296, 24]} />
      </>
    ),
    ({ handWork: { labels: say } }) => (
      <>
        <LongLoop high={20} />
        <Cord
          points={[
            [320, Y],
            [180, Y],
            [116, Y - 2],
            [96, Y + 6],
            [93, Y + 22],
            [112, Y + 27],
            [138, Y + 14],
          ]}
        />
        <LoopOver high={20} />
        {[136, 150, 164].map((x) => (
          <Cord
            straight
            wide={11}
            points={[
              [x + 3, Y - 13],
              [x - 3, Y + 15],
            ]}
          />
        ))}
        <Cord
          points={[
            [162, Y + 18],
            [186, Y + 32],
            [226, Y + 44],
          ]}
        />
        <Hand at={[242, Y + 50]} deg={294} size={1} />
        <Arrow points={at("232,186 258,190 294,186")} />
        <Lettering at={[160, 60]} text={say.pullHard} />
        <Right at={[296, 24]} />
      </>
    ),
  ],
};
