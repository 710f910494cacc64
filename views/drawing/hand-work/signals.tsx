import type { DrawFrame, Drawing } from "./drawing.ts";
import { arc, type XY } from "./geometry.ts";
import { Hand, HandOnEdge, Person } from "./people.tsx";
import { Arrow } from "./strokes.tsx";
import { Ground } from "./things.tsx";

const AT: XY = [72, 184];
const TALL = 120;
/** Where the caller's other arm hangs. */
const DOWN: XY = [54, 118];

type Signal = {
  readonly wrist: XY;
  readonly hand: Parameters<typeof Hand>[0];
  readonly onEdge?: true;
  readonly moves?: readonly (readonly XY[])[];
};
const signal =
  ({ wrist, hand, onEdge, moves = [] }: Signal): DrawFrame =>
  () => (
    <>
      <Ground
        surface={[
          [0, 184],
          [154, 184],
        ]}
      />
      <Person at={AT} tall={TALL} hands={[DOWN, wrist]} />
      {onEdge ? <HandOnEdge {...hand} /> : <Hand {...hand} />}
      {moves.map((points) => (
        <Arrow points={points} />
      ))}
    </>
  );

/** Hold, take up slack, lower, all clear. Common practice, no source: each crew agrees on its own at the talk. */
export const signals: Drawing = {
  narrow: true,
  frames: [
    signal({ wrist: [90, 56], hand: { at: [93, 36], deg: 4, is: "flat", thumb: "left", size: 0.72 } }),
    signal({
      wrist: [112, 70],
      hand: { at: [116, 48], deg: 6, is: "point", thumb: "left", size: 0.66 },
      moves: [arc([119, 26], 18, [-130, 140])],
    }),
    signal({
      wrist: [104, 96],
      hand: { at: [121, 98], deg: 92, size: 0.8 },
      onEdge: true,
      moves: [
        [
          [128, 118],
          [128, 142],
          [128, 162],
        ],
      ],
    }),
    signal({ wrist: [104, 84], hand: { at: [122, 76], deg: 78, is: "thumb", thumb: "left", size: 0.72 } }),
  ],
};
