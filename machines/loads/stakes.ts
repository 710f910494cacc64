import type { StakePlate, Station } from "../tent/types.ts";
import type { AnchorFacts, ScreenedPlan } from "./facts.ts";
import type { Reason } from "./verdict.ts";

/** Stakes at one plate: what the plan has, what is driven, and the most that the sheet allows; `null`, it says nothing. */
export type PlateStakes = { readonly planned: number; readonly driven: number; readonly sheetAllows: number | null };

/** Stakes on one plate by the planning minimum, at every kind of station. Common practice, no source. */
export const USUAL_AT_PLATE = 2;

/** The most stakes of a plate that may count: what the sheet allows there; where it says nothing, what is usual, if the plan has so many. */
export const mayCount = ({ planned, sheetAllows }: Omit<PlateStakes, "driven">): number => sheetAllows ?? Math.min(planned, USUAL_AT_PLATE);

/**
 * How many stakes of a plate count: as many as there are, and never more than the sheet allows at that plate. Where it says nothing,
 * more than the planning minimum count for nothing. Fewer count as they are.
 *
 * @example stakesCounted({ planned: 3, driven: 3, sheetAllows: null }) // 2
 */
export const stakesCounted = (stakes: PlateStakes): number => Math.min(stakes.driven, mayCount(stakes));

/** Why not all stakes of a plate count; `null` where all do. */
export const notCounted = (stakes: PlateStakes): Extract<Reason, "stakesNotAllowed" | "stakesAllowedNotTold"> | null => {
  if (stakes.driven <= mayCount(stakes)) return null;
  return stakes.sheetAllows === null ? "stakesAllowedNotTold" : "stakesNotAllowed";
};

/** The stakes of one plate of a station, counted from 1. */
export function stakesAt(
  { id, kind }: Station,
  { plate, number }: { readonly plate: StakePlate; readonly number: number },
  facts: AnchorFacts,
): PlateStakes {
  const driven = facts.driven.findLast((d) => d.station === id && d.plate === number)?.stakes ?? plate.stakes;
  return { planned: plate.stakes, driven, sheetAllows: facts.sheetAllows[kind] };
}

/** Why stakes of any plate are not counted, each once. */
export function reasonsOfStakes({ stations, plates }: ScreenedPlan, facts: AnchorFacts): readonly Reason[] {
  const all = stations.flatMap((station) =>
    plates
      .filter((plate) => plate.station === station.id)
      .flatMap((plate, i) => notCounted(stakesAt(station, { plate, number: i + 1 }, facts)) ?? []),
  );
  return [...new Set(all)];
}
