import { DEFAULTS } from "../../../machines/install/limits.ts";
import type { Drawing } from "./drawing.ts";
import { arc, at, away, moved, spiral, type XY } from "./geometry.ts";
import { Hand } from "./people.tsx";
import { Ratchet, Spool } from "./ratchet.tsx";
import { Arrow, Cord, Curve, Dot, Leader, Lettering, Line, Right, Wrong } from "./strokes.tsx";

/** Where the axle stands in a frame. */
export const AT: XY = [148, 142];
/** Webbing, seen on edge, from the pole to the spool. */
const LOAD: readonly XY[] = [
  [326, 176],
  [210, 166],
  [162, 160],
];
/** On up through the slot of a spool that is turned with it upright. */
const SLOT: readonly XY[] = [
  [150, 158],
  [148, 146],
  [148, 128],
  [152, 118],
];
/** Fewest turns, as every job asks for them. Common practice, no source (`limits.ts`). */
export const TURNS = DEFAULTS.minTurns.is;
/** The tail threaded through the slot, flat, with enough left to stand the pole. Sources: the call's own text; the ratchet's maker shows the way. */
export const ratchetThreaded: Drawing = {
  frames: [
    ({ handWork: { labels: say } }) => (
      <>
        <Ratchet at={AT} handleDeg={-40} wheelDeg={90} />
        <Cord wide={6.4} points={[...LOAD, ...SLOT, [158, 104], [176, 88]]} part="webbing" />
        <Spool at={AT} turnDeg={90} />
        <Hand at={[204, 72]} deg={240} is="pinch" thumb="right" size={0.9} />
        <Arrow points={at("230,152 196,146 176,118")} />
        <Lettering at={[236, 28]} text={say.upThroughSlot} />
        <Lettering at={[262, 188]} text={say.toPole} />
        <Lettering at={[54, 184]} text={say.toStake} />
      </>
    ),
    ({ handWork: { labels: say } }) => (
      <>
        <Ratchet at={AT} handleDeg={-40} wheelDeg={90} />
        <Cord
          wide={6.4}
          points={[...LOAD, ...SLOT, [168, 106], [206, 98], [244, 112], [276, 100], [300, 118], [304, 144]]}
          part="webbing"
        />
        <Spool at={AT} turnDeg={90} />
        <Leader from={[246, 70]} to={[244, 108]} />
        <Lettering at={[246, 56]} text={say.longTail} />
        <Lettering at={[262, 188]} text={say.toPole} />
        <Right at={[296, 24]} />
      </>
    ),
  ],
};

const BIG: XY = [148, 101];
const [INNER, PITCH] = [28, 14] as const;
/** Webbing wound on the spool, turn on turn. */
const Wound = ({ turns }: { turns: number }) => {
  const outer = INNER + turns * PITCH;
  const end: XY = away(BIG, 180, outer);
  return (
    <>
      <Cord wide={9} points={[...spiral(BIG, [INNER - 6, outer], 180, -turns), moved(end, 40, 2), [330, end[1] + 6]]} part="turns" />
      <Spool at={BIG} turnDeg={90} r={20} />
    </>
  );
};

/** The slack pulled through by hand, then the last of it wrapped on, its turns counted. Source: `minTurns` (common practice, no source) and the call's own text. */
export const ratchetWrapped: Drawing = {
  frames: [
    ({ handWork: { labels: say } }) => (
      <>
        <Ratchet at={AT} handleDeg={-40} wheelDeg={90} />
        <Cord wide={6.4} points={[...LOAD, ...SLOT, [166, 106], [200, 92], [258, 66]]} part="webbing" />
        <Spool at={AT} turnDeg={90} />
        <Hand at={[246, 70]} deg={246} is="grip" thumb="right" />
        <Arrow points={at("200,60 240,36 280,20")} />
        <Lettering at={[262, 188]} text={say.toPole} />
        <Lettering at={[120, 24]} text={say.pullSlack} />
      </>
    ),
    ({ handWork: { labels: say } }) => (
      <>
        <Wound turns={TURNS} />
        {Array.from({ length: TURNS }, (_, i) => {
          const at = away(BIG, 0, INNER + PITCH * (i + 0.5));
          return (
            <>
              <Dot at={moved(at, 0, -2)} r={9} />
              <Lettering at={moved(at, 0, -2)} text={String(i + 1)} />
            </>
          );
        })}
        <Arrow points={arc(BIG, 84, [245, 290])} />
        <Lettering at={[248, 68]} text={say.fullTurns(TURNS)} />
        <Lettering at={[270, 188]} text={say.toPole} />
        <Right at={[296, 24]} />
      </>
    ),
    ({ handWork: { labels: say } }) => (
      <>
        <Wound turns={4} />
        {[-1, 1].map((side) => (
          <Curve
            is="dash"
            points={[
              [148 + side * 66, 30],
              [148 + side * 66, 180],
            ]}
          />
        ))}
        <Lettering at={[266, 54]} text={say.spoolFull} />
        <Lettering at={[274, 76]} text={say.jams} />
        <Lettering at={[41, 26]} text={say.itsFrame} />
        <Leader from={[56, 36]} to={[82, 44]} />
        <Wrong at={[296, 24]} />
      </>
    ),
  ],
};

const FLAT: XY = [186, 132];

/** The handle pressed flat until its catch drops, then tried. Source: the call's own text. */
export const ratchetLocked: Drawing = {
  frames: [
    ({ handWork: { labels: say } }) => (
      <>
        <Ratchet at={FLAT} handleDeg={290} wheelDeg={90} pawlUp />
        <Cord wide={6.4} points={at("326,166 236,156 196,152")} />
        <Hand at={[97, 80]} deg={110} is="flat" thumb="left" />
        <Arrow points={at("36,58 28,84 34,116")} />
        <Lettering at={[222, 60]} text={say.palmDown} />
        <Lettering at={[270, 184]} text={say.toPole} />
      </>
    ),
    ({ handWork: { labels: say } }) => (
      <>
        <Ratchet at={FLAT} handleDeg={272} wheelDeg={90} />
        <Cord wide={6.4} points={at("326,166 236,156 196,152")} />
        <Hand at={[74, 156]} deg={14} is="grip" thumb="right" size={0.8} />
        <Arrow points={at("46,112 44,84 46,56")} />
        <Line
          points={[
            [24, 50],
            [68, 50],
          ]}
          is="bold"
        />
        <Leader from={[206, 68]} to={[156, 127]} />
        <Lettering at={[222, 56]} text={say.catchDown} />
        <Lettering at={[84, 30]} text={say.tryLift} />
        <Right at={[296, 24]} />
      </>
    ),
  ],
};
