import { amount } from "../figures/line.ts";
import type { Capacity } from "./capacity.ts";
import type { LoadLine } from "./lines.ts";
import type { Reason, Verdict } from "./verdict.ts";

/** Stakes at one plate: what the plan has, what is driven, and the most that the sheet allows; `null`, it says nothing. */
export type PlateStakes = { readonly planned: number; readonly driven: number; readonly sheetAllows: number | null };

/** Stakes on one plate by the planning minimum, at every kind of station. Common practice, no source. */
export const USUAL_AT_PLATE = 2;

/** The most stakes of a plate that may count: what the sheet allows there; where it says nothing, what is usual, if the plan has so many. */
const mayCount = ({ planned, sheetAllows }: Omit<PlateStakes, "driven">): number => sheetAllows ?? Math.min(planned, USUAL_AT_PLATE);

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

export type PlateLoad = {
  /** Tension of the plate's strap, lbf; `null` where it could not be worked out. */
  readonly tensionLbf: number | null;
  /** Whether it is that, or only at least that. */
  readonly known: boolean;
};

export type PlateJudged = {
  readonly verdict: Verdict;
  readonly demandLbf: number | null;
  readonly stakesCounted: number;
  /** Load over capacity, of each stake; `null` where there is no figure for one of them. Over 1 is short. */
  readonly ratio: number | null;
  /** The ratio is at least that: the load may be more, or the capacity less. Under 1 is not known then. */
  readonly isAtLeast: boolean;
  /** Stakes at this plate that would do, and whether the sheet allows so many. `null` where that cannot be said, or none are wanted. */
  readonly wanted: { readonly stakes: number; readonly allowed: boolean } | null;
  readonly lines: readonly LoadLine[];
};

/** Holds the load of each stake of a plate against what a stake may be counted for. */
export function judgePlate({ tensionLbf, known }: PlateLoad, stakes: PlateStakes, capacity: Capacity): PlateJudged {
  const counted = stakesCounted(stakes);
  const demandLbf = tensionLbf === null || counted === 0 ? null : tensionLbf / counted;
  const limitLbf = capacity.safeLbf ?? capacity.atMostLbf;
  const none = counted === 0 && stakes.planned > 0;
  const verdict = none || capacity.by === "refused" ? "short" : verdictOf(demandLbf, known, capacity);
  return {
    verdict,
    demandLbf,
    stakesCounted: counted,
    ratio: demandLbf === null || limitLbf === null || limitLbf <= 0 ? null : demandLbf / limitLbf,
    isAtLeast: !known || capacity.safeLbf === null,
    wanted: verdict === "short" && tensionLbf !== null ? wantedOf(tensionLbf, stakes, capacity) : null,
    lines: demandLbf === null ? [] : [perStakeLine(tensionLbf!, stakes, demandLbf)],
  };
}

/** A load that only may be more can be short; it is never "not short". */
function verdictOf(demandLbf: number | null, known: boolean, { safeLbf, atMostLbf }: Capacity): Verdict {
  if (demandLbf === null) return "notKnown";
  if (atMostLbf !== null && demandLbf > atMostLbf + 1e-9) return "short";
  return known && safeLbf !== null ? "notShort" : "notKnown";
}

function wantedOf(tensionLbf: number, stakes: PlateStakes, { safeLbf }: Capacity): PlateJudged["wanted"] {
  if (safeLbf === null || safeLbf <= 0) return null;
  const wanted = Math.ceil(tensionLbf / safeLbf - 1e-9);
  return { stakes: wanted, allowed: wanted <= mayCount(stakes) };
}

function perStakeLine(tensionLbf: number, stakes: PlateStakes, demandLbf: number): LoadLine {
  const counted = stakesCounted(stakes);
  const why = notCounted(stakes);
  return {
    formula: "perStake",
    inputs: [
      { name: "tension", is: amount(tensionLbf, "lbf"), source: "statics" },
      { name: "stakes", is: amount(counted, "number"), source: "plan" },
      ...(why === null ? [] : restNotCounted(stakes)),
    ],
    result: amount(demandLbf, "lbf"),
    source: "statics",
    leftOut: [...(why === null ? [] : [why]), ...(counted > 1 ? (["sharedSoil"] as const) : []), "movement"],
  };
}

/** What is there, and what of it may count. */
const restNotCounted = (stakes: PlateStakes): LoadLine["inputs"] => [
  { name: "stakesThere", is: amount(stakes.driven, "number"), source: "plan" },
  { name: "stakesAllowed", is: amount(mayCount(stakes), "number"), source: stakes.sheetAllows === null ? "practice" : "sheet" },
];
