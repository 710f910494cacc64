import { DEFAULTS } from "../../../machines/install/limits.ts";
import { SETBACK_FT, SIDE_POLE_FT } from "../../../machines/tent/templates.ts";
import type { Drawing } from "./drawing.ts";
import { arc, at, away, type XY } from "./geometry.ts";
import { Hand } from "./people.tsx";
import { Area, Arrow, Lettering, Line, Right, Span, Strap, Wrong } from "./strokes.tsx";
import { Ground, Stake, Tape } from "./things.tsx";

/** The lean that is drawn, degrees: inside what holds where no sheet says otherwise (0 to 15, NAVEDTRA 14251). */
export const DRAWN_LEAN_DEG = 10;
const { from: MIN_LEAN_DEG, to: MAX_LEAN_DEG } = DEFAULTS.stakeLeanDeg.is;

/** Units for an inch in the drawings of a stake: 3.4, so that a stake of 42 in stands in the frame. */
export const UNITS_PER_IN = 3.4;
/** A stake as it is drawn, in: a common size; the sheet says which. Common practice, no source. */
export const STAKE_IN = 42;
/** What may show where no sheet says otherwise, in. Common practice, no source (`limits.ts`). */
export const SHOWING_IN = DEFAULTS.maxShowingIn.is;
/** What shows of the one that is driven short, in. */
export const TOO_HIGH_IN = 12;

const SURFACE: readonly XY[] = [
  [0, 112],
  [320, 112],
];
const AT: XY = [196, 112];
/** So much of a stake shows and is in the ground, drawn to the scale of the frame: a seventh shows. */
const [SHOWS, IN] = [26, 84] as const;

/** How far off upright a strap comes down from the top of a side pole to its stake, degrees: plain geometry. */
export const STRAP_DEG = (Math.atan2(SETBACK_FT, SIDE_POLE_FT) * 180) / Math.PI;

/** A leaned stake with its strap, the plumb line, and the fan of what is allowed. */
const Leaned = ({ deg }: { deg: number }) => (
  <>
    <Ground surface={SURFACE} depth={88} />
    <Strap points={[away(AT, deg, 8), away(away(AT, deg, 8), -STRAP_DEG, 140)]} wide={9} part="strap" />
    <Stake at={AT} leanDeg={deg} showing={SHOWS} inGround={IN} wide={9} />
  </>
);

/** Plumb, leaning away, leaning toward the tent. Source: `stakeLeanDeg`, NAVEDTRA 14251 (15°, away from the pull); the sheet rules. */
export const stakeLean: Drawing = {
  frames: [
    ({ handWork: { labels: say } }) => (
      <>
        <Leaned deg={MIN_LEAN_DEG} />
        <Line points={[AT, away(AT, 0, 94)]} is="ghost" />
        <Lettering at={[240, 30]} text={say.plumb} />
        <Lettering at={[46, 24]} text={say.toTent} />
        <Right at={[296, 24]} />
      </>
    ),
    ({ handWork: { labels: say } }) => (
      <>
        <Area is="soft" points={[AT, ...arc(AT, 90, [MIN_LEAN_DEG, MAX_LEAN_DEG])]} part="fan" />
        <Leaned deg={DRAWN_LEAN_DEG} />
        <Line points={[AT, away(AT, MIN_LEAN_DEG, 90)]} is="ghost" />
        <Line points={[AT, away(AT, MAX_LEAN_DEG, 90)]} is="ghost" />
        <Lettering at={[272, 60]} text={say.upToDeg(MAX_LEAN_DEG)} />
        <Lettering at={[46, 24]} text={say.toTent} />
        <Arrow points={at("196,18 214,16 240,22")} />
        <Right at={[296, 24]} />
      </>
    ),
    ({ handWork: { labels: say } }) => (
      <>
        <Leaned deg={-DRAWN_LEAN_DEG} />
        <Line points={[AT, away(AT, 0, 94)]} is="ghost" />
        <Arrow points={at("146,86 128,62 110,38")} />
        <Lettering at={[46, 24]} text={say.toTent} />
        <Lettering at={[246, 66]} text={say.pullsOut} />
        <Wrong at={[296, 24]} />
      </>
    ),
  ],
};

const LEVEL: readonly XY[] = [
  [0, 54],
  [320, 54],
];
const ShownStake = ({ showingIn }: { showingIn: number }) => (
  <>
    <Ground surface={LEVEL} depth={146} />
    <Stake at={[150, 54]} showing={showingIn * UNITS_PER_IN} inGround={(STAKE_IN - showingIn) * UNITS_PER_IN} wide={9} />
  </>
);

/** What shows and what is in the ground, of a stake of 42 in, to scale. Source: `maxShowingIn`; the sheet's embedment comes first. */
export const showing: Drawing = {
  frames: [
    ({ inches, handWork: { labels: say } }) => (
      <>
        <ShownStake showingIn={SHOWING_IN} />
        <Strap points={[[146, 46], away([146, 46], -STRAP_DEG, 66)]} wide={8} part="strap" />
        <Span
          from={[180, 54]}
          to={[180, 54 - SHOWING_IN * UNITS_PER_IN]}
          text={say.atMost(inches(SHOWING_IN))}
          at={[192, 26]}
          anchor="start"
        />
        <Span from={[180, 54]} to={[180, 54 + (STAKE_IN - SHOWING_IN) * UNITS_PER_IN]} text={say.inGround} at={[192, 116]} anchor="start" />
        <Lettering at={[192, 138]} text={say.holds} anchor="start" />
        <Right at={[300, 182]} />
      </>
    ),
    ({ inches, handWork: { labels: say } }) => (
      <>
        <ShownStake showingIn={TOO_HIGH_IN} />
        <Tape from={[178, 54]} to={[178, 10]} />
        <Hand at={[204, 32]} deg={270} is="pinch" thumb="right" size={0.8} />
        <Lettering at={[284, 32]} text={inches(TOO_HIGH_IN)} />
        <Lettering at={[228, 96]} text={say.driveDown} />
        <Arrow points={at("236,114 237,128 236,148")} />
        <Wrong at={[300, 182]} />
      </>
    ),
  ],
};
