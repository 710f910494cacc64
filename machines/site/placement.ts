import type { TentPlan } from "../tent/types.ts";
import { clearancesOf, type SiteClearances } from "./clearances.ts";
import { fixesAt, type StakeFix } from "./fixes.ts";
import type { SiteModel } from "./model.ts";
import { roomAround, type TurnedTent } from "./room.ts";
import type { ClearanceRules } from "./rules.ts";
import { costFt, inOrder, SEARCH, type SearchLimits, type Shift, shifted, shiftsTo, turnsTo } from "./shifts.ts";
import { type Place, standingOf } from "./stand.ts";

/** A place with what is computed there. `clearances.verdict` is never better than "not short": what is not known stays so. */
type PlaceFound = { readonly shift: Shift; readonly costFt: number; readonly place: Place; readonly clearances: SiteClearances };

export type PlacementFound =
  /** The wanted place, or the cheapest shift of it, at which nothing is short. */
  | ({ readonly is: "asWanted" | "moved" } & PlaceFound)
  /** No place is free, and this one has fewest plates and ties in zones, none of anything else; the cheapest of those. */
  | ({ readonly is: "leastBad"; readonly fixes: readonly StakeFix[] } & PlaceFound)
  /** Nowhere within the limits is a place clear of wires, of what stands there and of the edge of the ground. */
  | { readonly is: "nowhere" };

/** What a place is looked for by. */
export type Search = { readonly place: Place; readonly rules: ClearanceRules; readonly limits?: SearchLimits };

/**
 * The nearest place and heading at which nothing is short, from a wanted one: the first in the order of `inOrder` on the grid of
 * whole feet and whole degrees, exactly. Of a wire
 * whose clearance is not known a place keeps no more than out of a pole's reach; the verdict says that it is not known.
 */
export function findPlace(plan: TentPlan, site: SiteModel, search: Search): PlacementFound {
  const finding = findPlaceInSteps(plan, site, search);
  for (let step = finding.next(); ; step = finding.next()) if (step.done) return step.value;
}

/** The same, which pauses after each turn: others have their turn in between. */
export function* findPlaceInSteps(
  plan: TentPlan,
  site: SiteModel,
  { place, rules, limits = SEARCH }: Search,
): Generator<undefined, PlacementFound> {
  const turnedBy = roomAround(standingOf(plan), site, { place, rules, limits });
  const grid: Grid = { place, limits, shifts: shiftsTo(limits.maxShiftFt), turnedBy };
  const free = yield* firstFree(grid);
  const shift = free ?? (yield* leastBad(grid));
  if (!shift) return { is: "nowhere" };
  const at = shifted(place, shift);
  const clearances = clearancesOf(plan, site, { place: at, rules });
  const found: PlaceFound = { shift, costFt: costFt(shift, limits.turnCostFtPerDeg), place: at, clearances };
  if (!free) return { is: "leastBad", ...found, fixes: fixesAt(plan, site, { place: at, rules }) };
  const isWanted = shift.alongFt === 0 && shift.offFt === 0 && shift.turnDeg === 0;
  return { is: isWanted ? "asWanted" : "moved", ...found };
}

type Grid = {
  readonly place: Place;
  readonly limits: SearchLimits;
  /** In their order. */
  readonly shifts: readonly Shift[];
  readonly turnedBy: (headingDeg: number) => TurnedTent;
};

/** Turn by turn: of each only the shifts that are cheaper than the best so far. A turn that costs as much itself ends it. */
function* firstFree({ place: { middle, headingDeg }, limits, shifts, turnedBy }: Grid): Generator<undefined, Shift | null> {
  const { turnCostFtPerDeg, maxTurnDeg } = limits;
  let best: Shift | null = null;
  let bestFt = Number.POSITIVE_INFINITY;
  for (const turnDeg of turnsTo(maxTurnDeg)) {
    if (costFt({ alongFt: 0, offFt: 0, turnDeg }, turnCostFtPerDeg) >= bestFt) break;
    const tent = turnedBy(headingDeg + turnDeg);
    for (const { alongFt, offFt } of shifts) {
      const shift = { alongFt, offFt, turnDeg };
      const ft = costFt(shift, turnCostFtPerDeg);
      // Of equal cost the smaller turn goes first, and that was tried before.
      if (ft >= bestFt) break;
      const [xFt, yFt] = [middle.xFt + offFt, middle.yFt + alongFt];
      if (!tent.isFree(xFt, yFt)) continue;
      [best, bestFt] = [shift, ft];
      break;
    }
    yield;
  }
  return best;
}

/** Fewest plates and ties in zones, then the order of shifts; nothing else may be short. */
function* leastBad({ place: { middle, headingDeg }, limits, shifts, turnedBy }: Grid): Generator<undefined, Shift | null> {
  let best: { readonly shift: Shift; readonly inZones: number } | null = null;
  for (const turnDeg of turnsTo(limits.maxTurnDeg)) {
    const tent = turnedBy(headingDeg + turnDeg);
    // What was not clear last time is asked first: stakes or the rest.
    let restFirst = false;
    for (const { alongFt, offFt } of shifts) {
      const shift = { alongFt, offFt, turnDeg };
      const most: number = best?.inZones ?? Number.POSITIVE_INFINITY;
      const [xFt, yFt] = [middle.xFt + offFt, middle.yFt + alongFt];
      if (restFirst && !tent.restIsClear(xFt, yFt)) continue;
      const inZones = tent.stakesInZones(xFt, yFt, most);
      if (inZones > most || (best && inZones === most && inOrder(best.shift, shift, limits.turnCostFtPerDeg) <= 0)) restFirst = false;
      else if (!restFirst && !tent.restIsClear(xFt, yFt)) restFirst = true;
      else best = { shift, inZones };
    }
    yield;
  }
  return best?.shift ?? null;
}
