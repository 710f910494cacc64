import type { Point } from "../tent/types.ts";
import type { SiteModel } from "./model.ts";
import { allOf, type Check, ofGround, ofThings } from "./outline-room.ts";
import { segmentsOf } from "./plane.ts";
import { type ClearanceRules, knownFt, wireTerms, zoneTerms } from "./rules.ts";
import type { SearchLimits } from "./shifts.ts";
import { type Place, type Standing, turned } from "./stand.ts";
import { type Zone, type ZoneGrid, zoneGrid } from "./zone-grid.ts";

/**
 * A tent turned by some degrees about its middle, asked about one place of its middle after the other. Answers are those of
 * `clearancesOf`, without its distances.
 */
export type TurnedTent = {
  /** Whether nothing at all is short. */
  readonly isFree: Check;
  /** Plates and ties in a zone, counted no further than one more than `most`. */
  readonly stakesInZones: (xFt: number, yFt: number, most: number) => number;
  /** Whether poles, ropes and cloth are clear of wires and things, and on the ground that may be used. */
  readonly restIsClear: Check;
};

/** The room around a place as far as a search goes: made once, then asked for each turn. */
export function roomAround(tent: Standing, site: SiteModel, within: { place: Place; rules: ClearanceRules; limits: SearchLimits }) {
  const { place, rules, limits } = within;
  const tentFt = Math.max(...[...tent.stakes, ...tent.poles].map(({ at }) => Math.sqrt(at.xFt ** 2 + at.yFt ** 2)));
  const region = { middle: place.middle, halfFt: tentFt + limits.maxShiftFt + 2 };
  const zonesOf = (points: readonly Point[], radiusFt: number): Zone[] => segmentsOf(points).map((segment) => ({ segment, radiusFt }));

  const lines = site.buried.flatMap((line) => zonesOf(line.points, knownFt(zoneTerms(line, rules))));
  const lineGrid = zoneGrid(lines, region, Math.max(0, ...tent.stakes.map((s) => s.reachFt)));
  // Where a clearance is not known, a pole must at least not reach the wire; the verdict there stays "not known".
  const wires = site.overhead.flatMap((line) => zonesOf(line.points, knownFt(wireTerms(line, rules))));
  const wireGrid = zoneGrid(wires, region, Math.max(0, ...tent.poles.map((p) => p.lengthFt)));
  const things = ofThings(site.things, rules, region);

  return (headingDeg: number): TurnedTent => {
    const { stakes, poles, outline } = turned(tent, headingDeg);
    const stakesInZones = counter(lineGrid, stakes);
    const polesInZones = counter(
      wireGrid,
      poles.map(({ at, lengthFt }) => ({ at, reachFt: lengthFt })),
    );
    const isClearOfWires: Check = (xFt, yFt) => polesInZones(xFt, yFt, 0) === 0;
    const restIsClear = allOf([isClearOfWires, ofGround(site.ground, outline), ...things(outline)]);
    return { isFree: allOf([(xFt, yFt) => stakesInZones(xFt, yFt, 0) === 0, restIsClear]), stakesInZones, restIsClear };
  };
}

/** Counts the points that are in a zone of a grid. Those are asked first the next time: beside that place they likely are again. */
function counter(grid: ZoneGrid, points: readonly { readonly at: Point; readonly reachFt: number }[]): TurnedTent["stakesInZones"] {
  if (grid.isEmpty) return () => 0;
  const [xs, ys] = [Float64Array.from(points, ({ at }) => at.xFt), Float64Array.from(points, ({ at }) => at.yFt)];
  const reaches = Float64Array.from(points, ({ reachFt }) => reachFt);
  const order = Uint16Array.from(points, (_, i) => i);
  return (xFt, yFt, most) => {
    let count = 0;
    for (let i = 0; i < order.length; i++) {
      const point = order[i]!;
      if (!grid.isIn(xs[point]! + xFt, ys[point]! + yFt, reaches[point]!)) continue;
      order[i] = order[count]!;
      order[count++] = point;
      if (count > most) return count;
    }
    return count;
  };
}
