import { DEFAULTS } from "../../../machines/install/limits.ts";
import type { Drawing } from "./drawing.ts";
import type { XY } from "./geometry.ts";
import { Area, Dot, Hatch, Leader, Lettering, Line, Right, Span, Wrong } from "./strokes.tsx";
import { Ground, NoGo, Paint, Stake } from "./things.tsx";

/** Inches each side of the paint that nothing is driven in. Source: `toleranceIn`, the stricter of the published 18 to 24 in. */
export const ZONE_IN = DEFAULTS.toleranceIn.is;
/** Units for an inch. */
export const ZONE_UNITS_PER_IN = 2;
/** How wide the dashes of paint are drawn. */
export const PAINT_WIDE = 8;
const LINE_X = 150;
const EDGE = PAINT_WIDE / 2 + ZONE_IN * ZONE_UNITS_PER_IN;
const zone = (y: number, high: number): XY[] => [
  [LINE_X - EDGE, y],
  [LINE_X + EDGE, y],
  [LINE_X + EDGE, y + high],
  [LINE_X - EDGE, y + high],
];

/** The tolerance zone of a buried line, from above and cut across, to scale. */
export const tolerance: Drawing = {
  frames: [
    ({ inches, handWork: { labels: say } }) => (
      <>
        <NoGo points={zone(0, 200)} part="zone" />
        <Paint from={[LINE_X, 4]} to={[LINE_X, 204]} wide={PAINT_WIDE} />
        <Span from={[LINE_X + PAINT_WIDE / 2, 36]} to={[LINE_X + EDGE, 36]} text={inches(ZONE_IN)} at={[LINE_X + 28, 20]} />
        <Span from={[LINE_X - EDGE, 36]} to={[LINE_X - PAINT_WIDE / 2, 36]} text={inches(ZONE_IN)} at={[LINE_X - 28, 20]} />
        <Dot at={[LINE_X + 26, 104]} r={6} is="void" />
        <Wrong at={[LINE_X + 26, 132]} />
        <Dot at={[252, 104]} r={6} is="void" />
        <Right at={[252, 132]} />
        <Lettering at={[262, 74]} text={say.stakeDot} />
        <Lettering at={[46, 88]} text={say.itsOwner} />
        <Lettering at={[46, 108]} text={say.digsHere} />
        <Leader from={[88, 106]} to={[LINE_X - 30, 98]} />
        <Lettering at={[46, 180]} text={say.paint} />
        <Leader from={[70, 178]} to={[LINE_X - 4, 168]} />
      </>
    ),
    ({ handWork: { labels: say } }) => (
      <>
        <Ground
          surface={[
            [0, 78],
            [320, 78],
          ]}
          depth={122}
        />
        <Hatch points={zone(78, 122)} apart={9} deg={-45} />
        <Line
          points={[
            [LINE_X - EDGE, 66],
            [LINE_X - EDGE, 200],
          ]}
          is="edge"
        />
        <Line
          points={[
            [LINE_X + EDGE, 66],
            [LINE_X + EDGE, 200],
          ]}
          is="edge"
        />
        <Area
          points={[
            [LINE_X - PAINT_WIDE / 2, 72],
            [LINE_X + PAINT_WIDE / 2, 72],
            [LINE_X + PAINT_WIDE / 2, 79],
            [LINE_X - PAINT_WIDE / 2, 79],
          ]}
          is="solid"
        />
        <Dot at={[LINE_X + 32, 140]} r={14} part="pipe" />
        <Dot at={[LINE_X + 32, 140]} r={9} is="soft" />
        <Lettering at={[196, 40]} text={say.paint} />
        <Leader from={[184, 50]} to={[LINE_X, 74]} />
        <Lettering at={[LINE_X - 42, 148]} text={say.lineOff} />
        <Leader from={[LINE_X - 8, 146]} to={[LINE_X + 19, 141]} />
        <Stake at={[250, 78]} showing={14} inGround={84} />
        <Right at={[280, 46]} />
        <Stake at={[LINE_X - 28, 78]} showing={26} inGround={20} />
        <Wrong at={[LINE_X - 28, 26]} />
        <Lettering at={[46, 34]} text={say.noDriving} />
      </>
    ),
  ],
};
