import { amount } from "../figures/line.ts";
import { type Ground, isSand, type Stake } from "./ground.ts";
import type { LoadLine } from "./lines.ts";
import { ANCHOR_FACTOR, WET_HALF } from "./sources.ts";
import { figureFor, type StakeFigure } from "./stake-figures.ts";
import { type Instead, insteadOf, type Reason } from "./verdict.ts";

/** Least factor between what a stake held and what may be counted of it: Ill. Adm. Code 77-870.200, for installed anchors. */
export const MIN_FACTOR_OF_SAFETY = 1.5;
/** How many pulls it takes, the softest spot among them. Common practice, no source. */
export const MIN_PULLS = 3;
/**
 * More than anybody reads off a pull on one stake, lbf: nothing published for a bare stake or an installed anchor comes near (4,725 lb in
 * Ill. Adm. Code 77-870.200 is the most). Against a figure that was misread or has a digit too many. Common practice, no source.
 */
export const MAX_PULL_LBF = 5000;
/** What saturated ground holds of what it held dry, about. */
const WET_SHARE = 0.5;

/**
 * What one stake may be counted for, and what it cannot hold more than. They are the same where a figure is good both ways; where only the
 * second is known, a load over it is short and one under it is not known. `refused`: short whatever the load.
 */
export type Capacity = {
  readonly by: "pulls" | "table" | "nothing" | "refused";
  readonly safeLbf: number | null;
  readonly atMostLbf: number | null;
  readonly reasons: readonly Reason[];
  readonly instead: readonly Instead[];
  readonly lines: readonly LoadLine[];
};
type Found = Omit<Capacity, "instead">;

/**
 * Capacity of one stake along its strap. Pulls on this ground always win: three or more in the strap's direction, the softest spot among
 * them, no heavy rain since; the lowest over the factor of safety. Short of that they still show what the ground does not hold. Otherwise
 * published figures by stake, soil and depth, never the nearest; sand is refused.
 */
export function capacityOf(stake: Stake | null, ground: Ground): Capacity {
  const pulled = fromPulls(ground);
  const found = pulled?.safeLbf != null ? pulled : lesserOf(pulled, isSand(ground.soil) ? REFUSED : fromTable(stake, ground));
  return { ...found, instead: insteadOf(found.reasons) };
}

const REFUSED: Found = { by: "refused", safeLbf: null, atMostLbf: null, reasons: ["bareStakesInSand"], lines: [] };

/** What pulls show; `null` where none was in the strap's direction. */
function fromPulls({ pulls, rainSincePulls, factorOfSafety }: Ground): Found | null {
  const along = pulls.filter((p) => p.direction === "alongStrap");
  if (along.length === 0) return null;
  const reasons: Reason[] = [];
  if (along.length < MIN_PULLS) reasons.push("fewerThanThreePulls");
  if (!along.some((p) => p.softestSpot)) reasons.push("softestSpotNotPulled");
  if (rainSincePulls !== false) reasons.push(rainSincePulls ? "rainSincePulls" : "rainSincePullsNotTold");
  const lowestLbf = Math.min(...along.map((p) => p.lbf));
  const factor = Math.max(MIN_FACTOR_OF_SAFETY, factorOfSafety ?? MIN_FACTOR_OF_SAFETY);
  const line: LoadLine = {
    formula: "capacityFromPulls",
    inputs: [
      { name: "pulls", is: amount(along.length, "number"), source: "site" },
      { name: "lowestPull", is: amount(lowestLbf, "lbf"), source: "site" },
      { name: "factor", is: amount(factor, "number"), source: factor > MIN_FACTOR_OF_SAFETY ? "brief" : ANCHOR_FACTOR },
    ],
    result: amount(lowestLbf / factor, "lbf"),
    source: ANCHOR_FACTOR,
    leftOut: ["groundBetween", "laterRain", "movement"],
  };
  const wet = rainSincePulls ? [wetLine(lowestLbf / factor)] : [];
  const atMostLbf = rainSincePulls ? wetLbf(lowestLbf / factor) : lowestLbf / factor;
  return { by: "pulls", safeLbf: reasons.length === 0 ? atMostLbf : null, atMostLbf, reasons, lines: [line, ...wet] };
}

/** What a published figure shows for a stake that is known, in ground that is known. */
function fromTable(stake: Stake | null, { soil, state }: Ground): Found {
  const reasons: Reason[] = [];
  if (stake === null) reasons.push("stakeNotTold");
  else {
    if (stake.material === null) reasons.push("materialNotTold");
    if (stake.embeddedIn === null) reasons.push("embeddedNotTold");
  }
  if (soil === null) reasons.push("soilNotTold");
  if (state === null) reasons.push("groundStateNotTold");
  else if (state !== "undisturbed") reasons.push("groundStateNotPublished");
  const figure = stake !== null && soil !== null ? figureFor(stake, soil) : null;
  if (stake === null || figure === null) {
    const asked = reasons.some((r) => r !== "groundStateNotTold" && r !== "groundStateNotPublished");
    return { by: "nothing", safeLbf: null, atMostLbf: null, reasons: asked ? reasons : [...reasons, "noFigure"], lines: [] };
  }
  if (figure.sidewaysOnly) reasons.push("sidewaysOnly");
  const wet = state === "saturated" ? [wetLine(figure.lbf)] : [];
  const atMostLbf = state === "saturated" ? wetLbf(figure.lbf) : figure.lbf;
  return {
    by: "table",
    safeLbf: reasons.length === 0 ? atMostLbf : null,
    // Frozen ground may hold more for as long as it is frozen: then the figure is not even a ceiling.
    atMostLbf: state === "frozen" ? null : atMostLbf,
    reasons,
    lines: [tableLine(stake, figure), ...wet],
  };
}

/** A figure, and pulls that are not enough to stand for it but may be under it. */
function lesserOf(pulled: Found | null, other: Found): Found {
  if (pulled === null || other.by === "refused") return pulled === null ? other : { ...other, lines: pulled.lines };
  const lesser = (a: number | null, b: number | null) => (a === null ? b : b === null ? a : Math.min(a, b));
  return {
    by: other.by === "nothing" || pulled.atMostLbf! < (other.atMostLbf ?? Number.POSITIVE_INFINITY) ? "pulls" : "table",
    safeLbf: other.safeLbf === null ? null : lesser(other.safeLbf, pulled.atMostLbf),
    atMostLbf: lesser(other.atMostLbf, pulled.atMostLbf),
    reasons: other.safeLbf === null ? [...pulled.reasons, ...other.reasons] : pulled.reasons,
    lines: [...pulled.lines, ...other.lines],
  };
}

const tableLine = (stake: Stake, figure: StakeFigure): LoadLine => ({
  formula: "capacityFromTable",
  inputs: [
    { name: "stakeDiameter", is: amount(stake.diameterIn, "in"), source: "sheet" },
    { name: "stakeLength", is: amount(stake.lengthIn, "in"), source: "sheet" },
    { name: "embedded", is: amount(stake.embeddedIn!, "in"), source: "site" },
    { name: "soil", is: figure.soil, source: "site" },
  ],
  result: amount(figure.lbf, "lbf"),
  source: figure.source,
  leftOut: ["groundBetween", "movement"],
});

/**
 * What ground that got soaked may still hold of what it held dry: about half. Only ever a ceiling.
 *
 * @example wetLbf(1000) // 500
 */
export const wetLbf = (dryLbf: number): number => dryLbf * WET_SHARE;

const wetLine = (dryLbf: number): LoadLine => ({
  formula: "wetGround",
  inputs: [{ name: "dry", is: amount(dryLbf, "lbf"), source: "site" }],
  result: amount(wetLbf(dryLbf), "lbf"),
  source: WET_HALF,
  leftOut: ["movement"],
});
