import { MIN_FACTOR_OF_SAFETY } from "../loads/capacity.ts";
import { type Screening, screenAnchors } from "../loads/screening.ts";
import type { Reason } from "../loads/verdict.ts";
import type { TentPlan } from "../tent/types.ts";
import { anchorFactsOf } from "./anchor-facts.ts";
import type { Brief } from "./brief.ts";
import type { PullsFor } from "./checks/pulls-for.ts";

type Screened = Pick<Brief, "anchorage" | "sheet" | "use">;

/** What the screening of a job's anchors comes to, and what a pull is held against, where that can be said. */
export type AnchorsScreened = {
  readonly screening: Screening;
  /** The plate whose stakes have most to hold; `null` where no load could be worked out. Whole pounds, rounded up. */
  readonly worst: (PullsFor & { readonly station: string }) | null;
  /** Whether the load is that, or only at least that: then no pull shows that it is held. */
  readonly isLoadKnown: boolean;
};

const OF_LOAD: readonly Reason[] = [
  "walled", "wallsNotTold", "gustNotTold", "exposureNotTold", "underRoofNotTold", "roofSlopeNotPublished",
]; // biome-ignore format: what is not known of the load

/** Those of some reasons for which the load of anchors is not known. */
export const reasonsOfLoad = (all: readonly Reason[]): readonly Reason[] => all.filter((reason) => OF_LOAD.includes(reason));

/** The screening of a job's anchors; `null` where nobody told anything of them, and then they are not screened. */
export function screenedOf(brief: Screened, plan: TentPlan): AnchorsScreened | null {
  const { anchorage } = brief;
  if (anchorage === undefined) return null;
  const screening = screenAnchors(plan, anchorFactsOf(brief));
  const plates = screening.stations.flatMap(({ station, plates }) => plates.map((plate) => ({ station, ...plate })));
  const worst = plates.reduce<(typeof plates)[number] | null>(
    (most, one) => ((one.demandLbf ?? 0) > (most?.demandLbf ?? 0) ? one : most),
    null,
  );
  return { screening, worst: worst && pullsFor(worst, plan, anchorage), isLoadKnown: reasonsOfLoad(screening.reasons).length === 0 };
}

type WorstPlate = { readonly station: string; readonly demandLbf: number | null; readonly stakesCounted: number };

function pullsFor({ station, demandLbf, stakesCounted }: WorstPlate, { stations }: TentPlan, anchorage: NonNullable<Brief["anchorage"]>) {
  const { kind } = stations.find(({ id }) => id === station)!;
  const perStake = demandLbf ?? 0;
  return {
    station,
    demandLbf: wholeUp(perStake),
    tensionLbf: wholeUp(perStake * stakesCounted),
    stakes: stakesCounted,
    allowed: anchorage.sheetAllows[kind],
    factor: Math.max(MIN_FACTOR_OF_SAFETY, anchorage.factorOfSafety ?? MIN_FACTOR_OF_SAFETY),
  };
}

/** Up to a whole pound: what is stored with a job has no computed fractions. */
const wholeUp = (lbf: number): number => Math.ceil(lbf - 1e-6);
