import type { Drawing } from "./drawing.ts";
import { at } from "./geometry.ts";
import { LaidLoop } from "./lacing.tsx";
import { Area, Arrow, Leader, Lettering, Line } from "./strokes.tsx";
import { Ring } from "./things.tsx";

/** A run of small loops, each through the last; from left to right where the pitch is above 0. */
const Chain = ({ from, n, pitch, y }: { from: number; n: number; pitch: number; y: number }) => (
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
    {ring && <Ring at={[148, SEAM_Y]} r={11} hole={6} />}
  </>
);

const LONG_LOOP = { at: [170, SEAM_Y], long: 72, high: 14 } as const;
/** The run from the center: its last small loop lies around the quarter ring to the next grommet, where the long loop comes up through it. */
const FromCenter = () => (
  <>
    <Chain from={46} n={3} pitch={24} y={SEAM_Y} />
    <Ring at={[118, SEAM_Y]} r={5} hole={2.4} />
    <LaidLoop at={[118, SEAM_Y]} long={60} high={19} wide={6} />
    <Ring at={[170, SEAM_Y]} r={5} hole={2.4} />
    <LaidLoop {...LONG_LOOP} />
  </>
);

/** The long loop: where the run from the center ends, left on top past its ring, for the run from the edge to meet. Source: the calls' own text. */
export const longLoop: Drawing = {
  frames: [
    ({ handWork: { labels: say } }) => (
      <>
        <Half />
        <FromCenter />
        <Arrow points={at("30,38 80,32 138,38")} />
        <Lettering at={[36, 176]} text={say.center} />
        <Lettering at={[140, 176]} text={say.ring} />
        <Leader from={[142, 165]} to={[146, 116]} />
        <Leader from={[220, 164]} to={[216, 119]} />
        <Lettering at={[228, 176]} text={say.longLoop} />
        <Lettering at={[284, 30]} text={say.edge} />
      </>
    ),
    ({ handWork: { labels: say } }) => (
      <>
        <Half />
        <FromCenter />
        <Chain from={294} n={2} pitch={-25} y={SEAM_Y} />
        <LaidLoop {...LONG_LOOP} over={[1, 3]} />
        <Arrow points={at("296,38 262,32 222,38")} />
        <Lettering at={[284, 18]} text={say.edge} />
        <Leader from={[226, 164]} to={[240, 110]} />
        <Lettering at={[220, 176]} text={say.tieHere} />
      </>
    ),
  ],
};
