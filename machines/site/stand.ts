import { toGrid } from "../tent/grid.ts";
import type { Point, TentPlan } from "../tent/types.ts";
import { hullOf } from "./plane.ts";

/** Where a tent stands: the middle of its rectangle, and how A–B turns from the site's baseline, in degrees clockwise. */
export type Place = { readonly middle: Point; readonly headingDeg: number };

/** Stakes are named by their plate, counted clockwise from 1 at its station, or by the pole that they tie down. */
export type StakeName =
  | { readonly is: "plate"; readonly station: string; readonly plate: number }
  | { readonly is: "tie"; readonly pole: string };
/** Interior poles by their ids, side and corner poles by their stations. */
export type PoleName = { readonly is: "pole"; readonly id: string };

/** The stakes of a plate, or of a tie: none is farther from the mark than `reachFt`. */
export type Stakes = { readonly name: StakeName; readonly at: Point; readonly reachFt: number };
export type Pole = { readonly name: PoleName; readonly at: Point; readonly lengthFt: number };

/** What of a tent has to be clear of something, each where it stands. */
export type Standing = {
  readonly stakes: readonly Stakes[];
  readonly poles: readonly Pole[];
  /** Cloth and ropes, as one convex polygon: guy ropes count as part of the tent (IFC 3103.8.2). */
  readonly outline: readonly Point[];
};

/** From the mark of a plate to its farthest stake, ft: half a plate, and the lean of a stake underground. Common practice, no source. */
export const PLATE_REACH_FT = 1;
/** From the mark of an interior pole to the stake that ties it down, ft: beside its base plate. Common practice, no source. */
export const TIE_REACH_FT = 2;

/**
 * A tent about its middle, not turned. Poles are side poles at every station, and interior ones, each as long as the center poles:
 * no spec says how long a quarter pole is.
 *
 * @example standingOf(plan).stakes.length // 62
 */
export function standingOf({ spec, stations, plates, poles, widthFt, lengthFt }: TentPlan): Standing {
  const fromMiddle = ({ xFt, yFt }: Point): Point => ({ xFt: toGrid(xFt - widthFt / 2), yFt: toGrid(yFt - lengthFt / 2) });
  const counted = new Map<string, number>();
  const plateNo = (station: string): number => {
    const no = (counted.get(station) ?? 0) + 1;
    counted.set(station, no);
    return no;
  };
  return {
    stakes: [
      ...plates.map((plate): Stakes => {
        const name = { is: "plate", station: plate.station, plate: plateNo(plate.station) } as const;
        return { name, at: fromMiddle(plate), reachFt: PLATE_REACH_FT };
      }),
      ...poles.map((pole): Stakes => ({ name: { is: "tie", pole: pole.id }, at: fromMiddle(pole), reachFt: TIE_REACH_FT })),
    ],
    poles: [
      ...poles.map((pole): Pole => ({ name: { is: "pole", id: pole.id }, at: fromMiddle(pole), lengthFt: spec.centerPoleFt })),
      ...stations.map((station): Pole => ({ name: { is: "pole", id: station.id }, at: fromMiddle(station), lengthFt: spec.sidePoleFt })),
    ],
    outline: hullOf([...stations, ...plates].map(fromMiddle)),
  };
}

/** How a point about the middle is turned, to a millionth of a foot, so that it comes out the same on every machine. */
export function turning(headingDeg: number): (p: Point) => Point {
  const angle = (headingDeg * Math.PI) / 180;
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
  return ({ xFt, yFt }) => ({ xFt: toGrid(xFt * cos + yFt * sin), yFt: toGrid(yFt * cos - xFt * sin) });
}

/** The same tent turned about its middle. */
export function turned({ stakes, poles, outline }: Standing, headingDeg: number): Standing {
  return at({ stakes, poles, outline }, turning(headingDeg));
}

/** The same tent where it stands. */
export const standingAt = (tent: Standing, { middle, headingDeg }: Place): Standing =>
  at(turned(tent, headingDeg), ({ xFt, yFt }) => ({ xFt: middle.xFt + xFt, yFt: middle.yFt + yFt }));

const at = ({ stakes, poles, outline }: Standing, move: (p: Point) => Point): Standing => ({
  stakes: stakes.map((s) => ({ ...s, at: move(s.at) })),
  poles: poles.map((p) => ({ ...p, at: move(p.at) })),
  outline: outline.map(move),
});

/**
 * The place of a tent whose corner A is at a point.
 *
 * @example placeByCornerA(plan, { xFt: 0, yFt: 0 }, 90) // { middle: { xFt: 50, yFt: -40 }, headingDeg: 90 }
 */
export function placeByCornerA({ widthFt, lengthFt }: Pick<TentPlan, "widthFt" | "lengthFt">, cornerA: Point, headingDeg: number): Place {
  const by = turning(headingDeg)({ xFt: widthFt / 2, yFt: lengthFt / 2 });
  return { middle: { xFt: toGrid(cornerA.xFt + by.xFt), yFt: toGrid(cornerA.yFt + by.yFt) }, headingDeg };
}

/**
 * Where corner A of a tent is.
 *
 * @example cornerAOf(plan, { middle: { xFt: 50, yFt: -40 }, headingDeg: 90 }) // { xFt: 0, yFt: 0 }
 */
export function cornerAOf({ widthFt, lengthFt }: Pick<TentPlan, "widthFt" | "lengthFt">, { middle, headingDeg }: Place): Point {
  const by = turning(headingDeg)({ xFt: widthFt / 2, yFt: lengthFt / 2 });
  return { xFt: toGrid(middle.xFt - by.xFt), yFt: toGrid(middle.yFt - by.yFt) };
}
