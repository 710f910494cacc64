import { amount } from "../figures/line.ts";
import type { Capacity } from "./capacity.ts";
import type { LoadLine } from "./lines.ts";
import type { Verdict } from "./verdict.ts";

/** Stakes at one plate: what the plan has, what is driven, and the most that the sheet allows; `null`, it says nothing. */
export type PlateStakes = { readonly planned: number; readonly driven: number; readonly sheetAllows: number | null };

/**
 * How many stakes of a plate count. More than the plan has count only as far as the sheet allows them at that plate; fewer count as
 * they are.
 *
 * @example stakesCounted({ planned: 2, driven: 3, sheetAllows: null }) // 2
 */
export const stakesCounted = ({ planned, driven, sheetAllows }: PlateStakes): number =>
  Math.min(driven, Math.max(planned, sheetAllows ?? planned));

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
  /** Load over capacity, of each stake; `null` where either is not known. Over 1 is short. */
  readonly ratio: number | null;
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
    wanted: verdict === "short" && tensionLbf !== null ? wantedOf(tensionLbf, stakes, capacity) : null,
    lines: demandLbf === null ? [] : [perStakeLine(tensionLbf!, counted, demandLbf)],
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
  return { stakes: wanted, allowed: wanted <= Math.max(stakes.planned, stakes.sheetAllows ?? stakes.planned) };
}

const perStakeLine = (tensionLbf: number, counted: number, demandLbf: number): LoadLine => ({
  formula: "perStake",
  inputs: [
    { name: "tension", is: amount(tensionLbf, "lbf"), source: "statics" },
    { name: "stakes", is: amount(counted, "number"), source: "plan" },
  ],
  result: amount(demandLbf, "lbf"),
  source: "statics",
  leftOut: counted > 1 ? ["sharedSoil", "movement"] : ["movement"],
});
