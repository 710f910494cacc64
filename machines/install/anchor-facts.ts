import type { AnchorFacts } from "../loads/facts.ts";
import { stakeOfSheet } from "../loads/ground.ts";
import { NOTHING_TOLD } from "./anchorage.ts";
import type { Brief } from "./brief.ts";

/** The facts that a job's anchors are screened by. Without an anchorage nothing is known but the sheet and the walls. */
export function anchorFactsOf({ anchorage = NOTHING_TOLD, sheet, use }: Pick<Brief, "anchorage" | "sheet" | "use">): AnchorFacts {
  const { gustMph, exposure, elevationFt, underRoof, material, soil, groundState } = anchorage;
  const { pulls, rainSincePulls, factorOfSafety, sheetAllows } = anchorage;
  return {
    walls: use.walls,
    wind: { gustMph, exposure, elevationFt },
    underRoof,
    stake: sheet && stakeOfSheet(sheet, material),
    ground: { soil, state: groundState, pulls, rainSincePulls, factorOfSafety },
    sheetAllows,
    driven: [],
  };
}
