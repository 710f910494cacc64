import { away, between, moved, tenth, wayDeg, type XY } from "./geometry.ts";
import { Area, Cord, Dot, Line } from "./strokes.tsx";

type Grip = "grip" | "flat" | "point" | "pinch" | "thumb";
type HandProps = {
  /** Where the middle of the hand is, the way that its fingers point, and which side the thumb is on, seen along them. */
  readonly at: XY;
  readonly deg: number;
  readonly is?: Grip;
  readonly thumb?: "left" | "right";
  readonly size?: number;
};

/** How far each finger reaches from the middle of the hand. */
const REACH: Readonly<Record<Grip, readonly [number, number, number, number]>> = {
  grip: [15, 16, 16, 14],
  flat: [29, 32, 30, 25],
  point: [33, 13, 13, 12],
  pinch: [24, 18, 17, 15],
  thumb: [12, 13, 13, 12],
};

/** Where the thumb goes, along the hand and to its side. */
const BENT: readonly XY[] = [
  [-8, 12],
  [2, 20],
  [11, 19],
];
const THUMB: Readonly<Record<Grip, readonly XY[]>> = {
  grip: BENT,
  point: BENT,
  flat: [
    [-8, 12],
    [2, 20],
    [15, 19],
  ],
  pinch: [
    [-8, 13],
    [8, 20],
    [23, 16],
  ],
  thumb: [
    [-6, 8],
    [-3, 20],
    [-2, 36],
  ],
};

/** A gloved hand: cuff, back of the hand, four fingers, thumb. What it holds is drawn before it. */
export function Hand({ at, deg, is = "grip", thumb = "left", size = 1 }: HandProps) {
  const side = thumb === "left" ? -1 : 1;
  const p = (along: number, aside: number): XY => away(away(at, deg, along * size), deg + 90, aside * side * size);
  const wide = 8.6 * size;
  return (
    <>
      <Area points={[p(-40, -9), p(-18, -10), p(-18, 10), p(-40, 9)]} is="soft" />
      <Area points={[p(-22, -12), p(-14, -12), p(-14, 12), p(-22, 12)]} is="solid" />
      <Area points={[p(-15, -11), p(-6, -14), p(6, -14), p(8, 13), p(-6, 13), p(-15, 11)]} />
      {REACH[is].map((reach, i) => (
        <Cord straight wide={wide} points={[p(0, 10 - i * 6.8), p(reach, 10 - i * 6.8)]} />
      ))}
      <Cord wide={wide} points={THUMB[is].map(([along, aside]) => p(along, aside))} />
    </>
  );
}

/** A flat hand seen on its edge, palm down: the little finger's side, so no thumb shows. */
export function HandOnEdge({ at, deg, size = 1 }: Pick<HandProps, "at" | "deg" | "size">) {
  const p = (along: number, aside: number): XY => away(away(at, deg, along * size), deg + 90, aside * size);
  return (
    <>
      <Area points={[p(-40, -7), p(-18, -7), p(-18, 7), p(-40, 7)]} is="soft" />
      <Area points={[p(-22, -9), p(-14, -9), p(-14, 9), p(-22, 9)]} is="solid" />
      <Area points={[p(-14, -7), p(4, -6), p(32, -4), p(35, 0), p(32, 3), p(4, 6), p(-14, 6)]} part="palm" />
      <Line points={[p(6, 2), p(32, 1)]} is="thin" />
    </>
  );
}

type PersonProps = {
  /** On the ground, between the feet. */
  readonly at: XY;
  readonly tall: number;
  /** Where each hand is. */
  readonly hands: readonly [XY, XY];
  readonly looks?: "left" | "right";
  readonly leanDeg?: number;
  readonly kneels?: boolean;
  /** How far apart the feet are. */
  readonly stride?: number;
};

/** A figure in a hard hat, seen from the side. */
export function Person({ at, tall, hands, looks = "right", leanDeg = 0, kneels = false, stride = 0.2 }: PersonProps) {
  const ahead = looks === "right" ? 1 : -1;
  const hips = moved(at, 0, -tall * (kneels ? 0.27 : 0.48));
  const neck = away(hips, leanDeg, tall * 0.34);
  const head = away(neck, leanDeg * 0.6, tall * 0.11);
  const wide = tenth(tall * 0.075);
  const r = tenth(tall * 0.068);
  const legs: XY[][] = kneels
    ? [
        [hips, moved(at, ahead * tall * 0.16, -tall * 0.25), moved(at, ahead * tall * 0.14, 0)],
        [hips, moved(at, -ahead * tall * 0.02, -tall * 0.03), moved(at, -ahead * tall * 0.24, -tall * 0.03)],
      ]
    : [-1, 1].map((way) => {
        const foot = moved(at, (way * stride * tall) / 2, 0);
        return [hips, moved(between(hips, foot, 0.5), ahead * tall * 0.025, 0), foot];
      });
  const arms = hands.map((hand): XY[] => [neck, moved(between(neck, hand, 0.5), 0, tall * 0.04), hand]);
  return (
    <>
      {[...legs, [hips, neck], ...arms].map((limb) => (
        <Line points={limb} is="limb" wide={wide} />
      ))}
      <Dot at={head} r={r} is="solid" />
      <Area
        is="hat"
        points={[
          ...[-90, -60, -30, 0, 30, 60, 90].map((deg) => away(moved(head, 0, -1), deg, r * 1.25)),
          moved(head, ahead > 0 ? r * 1.9 : r * 1.2, -1),
          moved(head, ahead > 0 ? r * 1.9 : r * 1.2, 2),
          moved(head, ahead > 0 ? -r * 1.2 : -r * 1.9, 2),
          moved(head, ahead > 0 ? -r * 1.2 : -r * 1.9, -1),
        ]}
      />
    </>
  );
}

type AboveProps = { readonly at: XY; readonly facing: XY; readonly reach?: boolean };

/** A figure from above: shoulders, a hard hat, and arms where it reaches for what it faces. */
export function PersonAbove({ at, facing, reach = false }: AboveProps) {
  const deg = wayDeg(at, facing);
  const [left, right] = [away(at, deg - 90, 11), away(at, deg + 90, 11)];
  return (
    <>
      {reach && (
        <>
          <Line points={[left, away(away(left, deg, 16), deg + 90, 4)]} is="limb" wide={6} />
          <Line points={[right, away(away(right, deg, 16), deg - 90, 4)]} is="limb" wide={6} />
        </>
      )}
      <Line points={[left, right]} is="limb" wide={11} />
      <Dot at={at} r={7.5} is="hat" part="above" />
      <Line points={[away(at, deg - 60, 7), away(at, deg + 60, 7)]} is="ink" />
    </>
  );
}
