import type { Published } from "../figures/source.ts";
import type { SoilClass, Stake, StakeMaterial } from "./ground.ts";
import { LOAM_PICKET, PINS } from "./sources.ts";

/**
 * A published safe or design load of one stake in one soil, lbf. There is no ultimate among them: the 1,000 lb of a 1 in stake in an
 * average lawn is one, and a picket that "good ground" holds names no soil; neither is looked up here.
 */
export type StakeFigure = {
  readonly soil: SoilClass;
  readonly material: StakeMaterial;
  readonly diameterIn: { readonly from: number; readonly to: number };
  readonly lengthIn: { readonly from: number; readonly to: number };
  /** At least this much in the ground. */
  readonly embeddedIn: number;
  readonly lbf: number;
  /** Published for a pull sideways, "not for combined uplift": more than this is too much, less is not enough to know. */
  readonly sidewaysOnly: boolean;
  readonly source: Published;
};

const ANY = Number.POSITIVE_INFINITY;
/** The design load of a round pin, 48 in long, 36 in of it in the ground: lateral, with a factor near 2 in it. */
const pin = (soil: SoilClass, diameterIn: number, lbf: number): StakeFigure => ({
  soil,
  material: "steel",
  diameterIn: { from: diameterIn, to: diameterIn },
  lengthIn: { from: 48, to: 48 },
  embeddedIn: 36,
  lbf,
  sidewaysOnly: true,
  source: PINS,
});

export const STAKE_FIGURES: readonly StakeFigure[] = [
  {
    soil: "loam",
    material: "wood",
    diameterIn: { from: 3, to: ANY },
    lengthIn: { from: 60, to: ANY },
    embeddedIn: 36,
    lbf: 700,
    sidewaysOnly: false,
    source: LOAM_PICKET,
  },
  pin("clayPoor", 1, 500),
  pin("clayAverage", 1, 750),
  pin("clayGood", 1, 1000),
  pin("sandLoose", 1, 50),
  pin("sandMedium", 1, 55),
  pin("sandDense", 1, 63),
  pin("clayPoor", 3, 1000),
  pin("clayAverage", 3, 1500),
  pin("clayGood", 3, 2000),
  pin("sandLoose", 3, 150),
  pin("sandMedium", 3, 180),
  pin("sandDense", 3, 190),
];

/** The figure for this stake, soil and depth; `null` where none is published for just that. Never the nearest. */
export function figureFor(stake: Stake, soil: SoilClass): StakeFigure | null {
  const fits = (n: number, { from, to }: { readonly from: number; readonly to: number }) => n >= from && n <= to;
  const found = STAKE_FIGURES.find(
    (row) =>
      row.soil === soil &&
      row.material === stake.material &&
      fits(stake.diameterIn, row.diameterIn) &&
      fits(stake.lengthIn, row.lengthIn) &&
      (stake.embeddedIn ?? 0) >= row.embeddedIn,
  );
  return found ?? null;
}

/**
 * Pins that a pull sideways takes at a design load each, whole ones.
 *
 * @example pinsFor(1520, 750) // 3
 */
export const pinsFor = (sideLbf: number, lbfEach: number): number => Math.ceil(sideLbf / lbfEach);
