import type { Drawing } from "./drawing.ts";
import { arc, at, moved, type XY } from "./geometry.ts";
import { Hand } from "./people.tsx";
import { Arrow, Cord, Dot, Leader, Lettering, Right, Strap, Wrong } from "./strokes.tsx";

const HOOK: XY = [134, 100];
const p = (x: number, y: number): XY => moved(HOOK, x, y);
/** From its shank around to its point. */
const BENT = [p(114, 0), p(62, 0), p(44, -16), p(18, -24), p(-8, -14), p(-15, 4), p(-4, 20), p(12, 23)];
/** Between these of its points the hook lies on the ring; past them it comes back below it. */
const ON_TOP = [0, 5] as const;
const GATE = p(48, -9);

/** A hook that goes through a ring, held by a strap at the right, its gate shut on its point or standing in. */
const HookInRing = ({ ring, shut }: { ring: XY; shut: boolean }) => {
  const gate = <Cord wide={8} straight points={[GATE, shut ? p(14, 21) : p(5, 7)]} part="gate" />;
  return (
    <>
      <Strap
        points={[
          [236, 100],
          [320, 100],
        ]}
        wide={22}
      />
      <Cord wide={11} points={BENT} part="hook" />
      {!shut && gate}
      <Cord wide={11} points={arc(ring, 36.5, [0, 360])} part="ring" />
      <Cord wide={11} points={BENT} over={ON_TOP} part="over" />
      {shut && gate}
      <Dot at={GATE} r={4} is="solid" />
    </>
  );
};

/** A hook in its ring: shut, and half shut. Source: the calls' own text. */
export const ringHook: Drawing = {
  frames: [
    ({ handWork: { labels: say } }) => (
      <>
        <HookInRing ring={[102, 104]} shut />
        <Hand at={[190, 124]} deg={322} is="pinch" thumb="left" />
        <Leader from={[66, 176]} to={[84, 136]} />
        <Lettering at={[54, 188]} text={say.ring} />
        <Lettering at={[222, 54]} text={say.shutAndFelt} />
        <Right at={[296, 24]} />
      </>
    ),
    ({ handWork: { labels: say } }) => (
      <>
        <HookInRing ring={[106, 108]} shut={false} />
        <Arrow points={at("154,118 172,136 182,166")} part="out" />
        <Lettering at={[222, 54]} text={say.gateOpen} />
        <Lettering at={[240, 150]} text={say.comesOff} />
        <Wrong at={[296, 24]} />
      </>
    ),
  ],
};
