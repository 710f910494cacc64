import { arc, away, moved, type XY } from "./geometry.ts";
import { Area, Dot, Line, Strap } from "./strokes.tsx";

/** Teeth of the wheel that is drawn. */
export const TEETH = 12;
const WHEEL = 27;
/** Radius of the spool with its slot. */
export const SPOOL = 12;

type RatchetProps = {
  /** The axle: wheel and spool turn about it, and so does the handle. */
  readonly at: XY;
  /** Which way the handle points, from straight up, clockwise. */
  readonly handleDeg: number;
  /** How far the wheel is turned. */
  readonly wheelDeg?: number;
  /** Whether the pawl on the handle is lifted out of the teeth. */
  readonly pawlUp?: boolean;
};

/** A ratchet from the side, its near cheek left off: frame with the anchor's strap at the left, toothed wheel, spool, handle with its pawl. */
export function Ratchet({ at, handleDeg, wheelDeg = 0, pawlUp = false }: RatchetProps) {
  const tooth = 360 / TEETH;
  const wheel = Array.from({ length: TEETH }, (_, i): XY[] => [
    away(at, wheelDeg + i * tooth, WHEEL - 6),
    away(at, wheelDeg + i * tooth + 3, WHEEL),
    away(at, wheelDeg + i * tooth + 15, WHEEL - 3),
  ]).flat();
  const grip = (along: number, aside: number) => away(away(at, handleDeg, along), handleDeg + 90, aside);
  const lift = pawlUp ? 11 : 0;
  return (
    <>
      <Strap points={[moved(at, -92, 10), [-4, at[1] + 10]]} part="anchor" />
      <Area
        points={[
          moved(at, -98, 2),
          moved(at, -90, -3),
          moved(at, 4, -14),
          moved(at, 16, 4),
          moved(at, 8, 18),
          moved(at, -90, 18),
          moved(at, -98, 14),
        ]}
        is="soft"
      />
      <Dot at={moved(at, -86, 9)} r={5} is="solid" />
      <Area points={wheel} part="wheel" />
      <Area
        points={[grip(0, -9), grip(84, -8), grip(98, -11), grip(104, 0), grip(98, 11), grip(84, 8), grip(0, 9)]}
        is="paper"
        part="handle"
      />
      <Line points={[grip(84, -8), grip(84, 8)]} />
      <Area
        points={[grip(WHEEL - 3 + lift, -4), grip(WHEEL - 3 + lift, 4), grip(WHEEL + 22 + lift, 5), grip(WHEEL + 22 + lift, -5)]}
        is="solid"
        part="pawl"
      />
      <Spool at={at} turnDeg={wheelDeg} />
    </>
  );
}

/** The spool's two halves, with the slot between them that the webbing goes through. */
export const Spool = ({ at, turnDeg = 0, r = SPOOL }: { at: XY; turnDeg?: number; r?: number }) => (
  <>
    {[0, 180].map((half) => {
      const middle = away(at, turnDeg + half, 3);
      return <Area points={arc(middle, r - 3, [turnDeg + half - 90, turnDeg + half + 90])} is="solid" part="spool" />;
    })}
  </>
);
