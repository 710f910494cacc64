import type { Drawing } from "./drawing.ts";
import { at } from "./geometry.ts";
import { Hand } from "./people.tsx";
import { Arrow, Cord, Curve, Leader, Lettering, Line, Right, Wrong } from "./strokes.tsx";

/** The rain flap, cut across the seam: flat over the lace, and left out. Source: the calls' own text. */
export const flap: Drawing = {
  frames: [
    ({ handWork: { labels: say } }) => (
      <>
        <Layers />
        <Curve is="bold" part="flap" points={at("44,146 62,132 100,126 140,104 170,100 200,112 236,130 282,132")} />
        <Hand at={[232, 96]} deg={124} is="flat" thumb="left" />
        <Arrow points={at("90,94 124,64 172,66")} />
        <Leader from={[54, 60]} to={[72, 129]} />
        <Lettering at={[58, 48]} text={say.flap} />
        <Leader from={[150, 178]} to={[160, 122]} />
        <Lettering at={[150, 188]} text={say.lace} />
        <Right at={[296, 24]} />
      </>
    ),
    ({ handWork: { labels: say } }) => (
      <>
        <Layers />
        <Curve is="bold" part="flap" points={at("44,146 62,128 80,92 66,76 82,58 64,46 80,36")} />
        {[150, 178, 206].map((x) => (
          <Arrow
            points={[
              [x, 28],
              [x - 3, 60],
              [x - 6, 92],
            ]}
          />
        ))}
        <Lettering at={[240, 48]} text={say.rain} />
        <Leader from={[42, 36]} to={[68, 64]} />
        <Lettering at={[34, 24]} text={say.flap} />
        <Wrong at={[296, 24]} />
      </>
    ),
  ],
};

/** Two pieces, cut across: the one from the left, to which the flap is sewn, goes below the one from the right; the lace comes up through both. */
const Layers = () => (
  <>
    <Curve is="bold" part="under" points={at("0,142 44,148 110,156 228,157")} />
    <Curve is="bold" part="upper" points={at("320,142 240,140 160,139 84,139")} />
    <Cord
      wide={20}
      straight
      points={[
        [150, 122],
        [172, 122],
      ]}
    />
    <Line
      points={[
        [160, 114],
        [160, 156],
      ]}
      is="ghost"
    />
  </>
);
