import { amount } from "../figures/line.ts";
import type { Capacity } from "./capacity.ts";
import type { LoadLine } from "./lines.ts";
import { mayCount, notCounted, type PlateStakes, stakesCounted } from "./stakes.ts";
import type { Verdict } from "./verdict.ts";

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
