import type { Drawing } from "./drawing.ts";
import { arc, at, away, moved, strip, type XY } from "./geometry.ts";
import { Hand, PersonAbove } from "./people.tsx";
import { Ratchet, TEETH } from "./ratchet.tsx";
import { AT } from "./ratchets.tsx";
import { Area, Arrow, Cord, Dot, Leader, Lettering, Line, Right, Strap, Wrong } from "./strokes.tsx";
import { NoGo } from "./things.tsx";

/** One tooth of the wheel, degrees. */
export const TOOTH_DEG = 360 / TEETH;

const LOADED: readonly XY[] = [
  [326, 176],
  [216, 170],
  [150, 162],
];
/** Where the handle is before a tooth is let out, degrees from upright. */
export const HANDLE_DEG = 12;

/** How far to each side of a loaded strap nobody's body or face is, in units. Common practice, no source. */
export const IN_LINE = 30;
const STRAP_Y = 82;
/** Where whoever eases it stands: beside the ratchet, square to the strap. */
const BESIDE: XY = [176, 146];
const HANDS: readonly [XY, XY] = [
  [134, STRAP_Y + 16],
  [214, STRAP_Y],
];

/** A loaded strap let out one tooth at a time, both hands on, body out of line; never a handle thrown open. Sources: the calls' own text; how this ratchet lets out is its maker's to say. */
export const ratchetEased: Drawing = {
  frames: [
    ({ handWork: { labels: say } }) => (
      <>
        <NoGo points={strip([0, STRAP_Y], [320, STRAP_Y], 2 * IN_LINE)} part="inLine" />
        <Strap
          points={[
            [-4, STRAP_Y],
            [324, STRAP_Y],
          ]}
          part="strap"
        />
        <Area points={strip([76, STRAP_Y], [156, STRAP_Y], 26)} is="soft" />
        <Area points={strip([108, STRAP_Y], [150, STRAP_Y], 34)} part="handleAbove" />
        <Line points={at("118,65 118,99")} />
        <Area points={strip([142, STRAP_Y], [150, STRAP_Y], 20)} is="solid" />
        {HANDS.map((hand, i) => (
          <Line points={[moved(BESIDE, i === 0 ? -11 : 11, 0), [hand[0] + (i === 0 ? 12 : -4), 122], hand]} is="limb" wide={7} />
        ))}
        {HANDS.map((hand) => (
          <Dot at={hand} r={6} />
        ))}
        <PersonAbove at={BESIDE} facing={[BESIDE[0], STRAP_Y]} />
        <Lettering at={[54, 28]} text={say.toStake} />
        <Lettering at={[266, 28]} text={say.toPole} />
        <Lettering at={[40, 66]} text={say.nobody} />
        <Lettering at={[280, 66]} text={say.nobody} />
        <Lettering at={[176, 182]} text={say.outOfLine} />
      </>
    ),
    ({ handWork: { labels: say } }) => (
      <>
        <Cord wide={6.4} points={LOADED} />
        <Ratchet at={AT} handleDeg={HANDLE_DEG} wheelDeg={90} />
        <Hand at={[176, 62]} deg={262} is="grip" thumb="right" size={0.9} />
        <Hand at={[250, 166]} deg={196} is="grip" thumb="left" size={0.8} />
        <Lettering at={[70, 48]} text={say.firmHandle} />
        <Lettering at={[250, 112]} text={say.handHere} />
        <Lettering at={[290, 152]} text={say.load} />
        <Arrow points={at("272,190 290,192 314,194")} />
      </>
    ),
    ({ handWork: { labels: say } }) => (
      <>
        <Cord wide={6.4} points={LOADED} />
        <Line points={[AT, away(AT, HANDLE_DEG, 104)]} is="ghost" />
        <Ratchet at={AT} handleDeg={HANDLE_DEG - TOOTH_DEG} wheelDeg={90 - TOOTH_DEG} pawlUp />
        <Arrow points={arc(AT, 118, [HANDLE_DEG + 4, HANDLE_DEG - TOOTH_DEG - 4])} />
        <Arrow points={at("180,190 206,192 236,194")} />
        <Hand at={[150, 58]} deg={262} is="grip" thumb="right" size={0.9} />
        <Hand at={[262, 166]} deg={196} is="grip" thumb="left" size={0.8} />
        <Leader from={[206, 100]} to={[134, 96]} />
        <Lettering at={[238, 98]} text={say.pawlUp} />
        <Lettering at={[54, 58]} text={say.oneTooth} />
        <Right at={[296, 24]} />
      </>
    ),
    ({ handWork: { labels: say } }) => (
      <>
        <Cord wide={6.4} points={at("326,130 280,172 236,140 196,168 164,152")} />
        <Ratchet at={AT} handleDeg={78} wheelDeg={20} pawlUp />
        <Arrow points={arc(AT, 118, [0, 62])} />
        <Lettering at={[86, 46]} text={say.thrownOpen} />
        <Lettering at={[244, 190]} text={say.runsOut} />
        <Wrong at={[296, 24]} />
      </>
    ),
  ],
};
