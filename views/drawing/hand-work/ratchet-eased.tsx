import type { Drawing } from "./drawing.ts";
import { arc, at, away, type XY } from "./geometry.ts";
import { Hand } from "./people.tsx";
import { Ratchet, TEETH } from "./ratchet.tsx";
import { AT } from "./ratchets.tsx";
import { Arrow, Cord, Leader, Lettering, Line, Right, Wrong } from "./strokes.tsx";

/** One tooth of the wheel, degrees. */
export const TOOTH_DEG = 360 / TEETH;

const LOADED: readonly XY[] = [
  [326, 176],
  [216, 170],
  [150, 162],
];
/** Where the handle is before a tooth is let out, degrees from upright. */
export const HANDLE_DEG = 12;

/** A loaded strap let out one tooth at a time, both hands on, body out of line; never a handle thrown open. Sources: the calls' own text; how this ratchet lets out is its maker's to say. */
export const ratchetEased: Drawing = {
  frames: [
    ({ handWork: { labels: say } }) => (
      <>
        <Cord wide={6.4} points={LOADED} />
        <Ratchet at={AT} handleDeg={HANDLE_DEG} wheelDeg={90} />
        <Hand at={[176, 62]} deg={262} is="grip" thumb="right" size={0.9} />
        <Hand at={[250, 166]} deg={196} is="grip" thumb="left" size={0.8} />
        <Lettering at={[70, 48]} text={say.firmHandle} />
        <Lettering at={[250, 112]} text={say.handHere} />
        <Lettering at={[288, 152]} text={say.load} />
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
