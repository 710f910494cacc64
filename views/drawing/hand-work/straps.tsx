import type { Child } from "hono/jsx";
import type { Drawing } from "./drawing.ts";
import { arc, at, away, type XY } from "./geometry.ts";
import { Hand } from "./people.tsx";
import { Area, Arrow, Leader, Lettering, Line, Right, Strap, Wrong } from "./strokes.tsx";
import { Ground, Stake } from "./things.tsx";

const Y = 152;
const SURFACE: readonly XY[] = [
  [0, Y],
  [320, Y],
];
const STAKES = [136, 192] as const;
const SHOWS = 62;

/** The two stakes of a plate, seen from the tent, with what goes behind them drawn before: the plate stands square across its strap. */
const Pair = ({ behind, children }: { behind: Child; children?: Child }) => (
  <>
    <Ground surface={SURFACE} depth={48} />
    {behind}
    {STAKES.map((x) => (
      <Stake at={[x, Y]} showing={SHOWS} inGround={40} wide={12} />
    ))}
    <Area points={at("108,143 220,143 220,152 108,152")} is="soft" part="plate" />
    {children}
  </>
);

/** Where the band lies: just above the plate. */
const LOW = Y - 19;
/** Where its eye is, between the stakes. */
const EYE: XY = [174, LOW];

/** The end with the eye that is sewn into it, come around one stake to the front. */
const EyeEnd = () => (
  <>
    <Strap
      points={[
        [124, LOW],
        [162, LOW],
      ]}
      wide={14}
      part="band"
    />
    <Line points={at("125,126 118,133 125,140")} is="bold" />
    <Area points={at("158,126 180,124 186,133 180,142 158,140")} />
    <Area points={at("164,129 178,129 178,137 164,137")} is="soft" part="eye" />
  </>
);

/** How far the stakes are bent over that are strapped high, degrees. */
const BENT_DEG = 14;
const FOOT: XY = [190, Y];

/** A strap choked low around the stakes of its plate, and one tied high. Source: the call's own text; where exactly, the sheet shows. */
export const strapChoked: Drawing = {
  frames: [
    ({ handWork: { labels: say } }) => (
      <Pair behind={<Strap points={at("124,131 208,129 262,108")} wide={12} />}>
        <EyeEnd />
        <Hand at={[276, 100]} deg={250} thumb="right" size={0.85} />
        <Arrow points={at("286,132 270,164 228,164")} />
        <Lettering at={[84, 20]} text={say.seenFromTent} light />
        <Lettering at={[164, 56]} text={say.around} />
        <Leader from={[84, 174]} to={[162, 138]} />
        <Lettering at={[50, 178]} text={say.eye} />
      </Pair>
    ),
    ({ handWork: { labels: say } }) => (
      <Pair behind={<Strap points={at("124,131 204,131")} wide={12} />}>
        <Strap
          points={[
            [204, LOW],
            [176, LOW],
          ]}
          wide={14}
          part="band"
        />
        <Line points={at("203,126 210,133 203,140")} is="bold" />
        <EyeEnd />
        <Strap points={[EYE, [EYE[0], -6]]} wide={12} part="pulled" />
        <Hand at={[188, 60]} deg={268} thumb="right" size={0.85} />
        <Arrow points={at("234,76 236,56 234,30")} />
        <Lettering at={[272, 84]} text={say.toTent} />
        <Lettering at={[82, 20]} text={say.seenFromTent} light />
        <Lettering at={[258, 178]} text={say.throughEye} />
        <Leader from={[226, 168]} to={[178, 138]} />
        <Right at={[296, 24]} />
      </Pair>
    ),
    ({ handWork: { labels: say } }) => {
      const high = away(FOOT, -BENT_DEG, SHOWS - 12);
      return (
        <>
          <Ground surface={SURFACE} depth={48} />
          <Line points={[FOOT, away(FOOT, 0, SHOWS + 12)]} is="ghost" />
          <Stake at={FOOT} leanDeg={-BENT_DEG} showing={SHOWS} inGround={40} wide={12} />
          <Area points={at("182,143 198,143 198,152 182,152")} is="soft" />
          <Strap points={[high, [96, 2]]} wide={12} />
          <Strap points={[away(high, 90 - BENT_DEG, 10), away(high, 270 - BENT_DEG, 10)]} wide={14} />
          <Arrow points={arc(FOOT, SHOWS + 18, [16, -8])} />
          <Lettering at={[46, 24]} text={say.toTent} />
          <Lettering at={[232, 56]} text={say.bendsOver} />
          <Wrong at={[296, 24]} />
        </>
      );
    },
  ],
};
