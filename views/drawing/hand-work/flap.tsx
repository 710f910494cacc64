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
        <Curve is="bold" part="flap" points={at("64,128 104,126 140,104 170,100 200,112 236,128 276,130")} />
        <Hand at={[236, 92]} deg={128} is="flat" thumb="left" />
        <Arrow points={at("78,92 120,62 172,64")} />
        <Leader from={[66, 60]} to={[100, 125]} />
        <Lettering at={[58, 48]} text={say.flap} />
        <Leader from={[150, 178]} to={[160, 122]} />
        <Lettering at={[150, 188]} text={say.lace} />
        <Right at={[296, 24]} />
      </>
    ),
    ({ handWork: { labels: say } }) => (
      <>
        <Layers />
        <Curve is="bold" part="flap" points={at("64,128 92,122 108,84 92,70 106,54 88,42 104,34")} />
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
        <Leader from={[50, 60]} to={[88, 72]} />
        <Lettering at={[40, 48]} text={say.flap} />
        <Wrong at={[296, 24]} />
      </>
    ),
  ],
};

/** Two pieces, cut across, one on the other, with the lace on top. */
const Layers = () => (
  <>
    <Curve is="bold" points={at("0,156 90,152 160,150 228,152")} />
    <Curve is="bold" points={at("320,140 240,138 110,136 64,130 0,136")} />
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
        [160, 150],
      ]}
      is="ghost"
    />
  </>
);
