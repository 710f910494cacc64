export const SOILS = ["loam", "clayPoor", "clayAverage", "clayGood", "sandLoose", "sandMedium", "sandDense"] as const;
/**
 * Kinds of ground that figures are published for, in their sources' words: undisturbed loam; cohesive soil that is poor, average or good;
 * sand that is loose, medium or dense. Lawn, gravel and "good ground" are none of them: that is `null`, and pulls are made.
 */
export type SoilClass = (typeof SOILS)[number];

export const GROUND_STATES = ["undisturbed", "saturated", "frozen", "dug"] as const;
export type GroundState = (typeof GROUND_STATES)[number];

export const STAKE_MATERIALS = ["steel", "wood"] as const;
export type StakeMaterial = (typeof STAKE_MATERIALS)[number];

/** One stake as it stands. `embeddedIn`: how much of it is in the ground. */
export type Stake = {
  readonly diameterIn: number;
  readonly lengthIn: number;
  readonly embeddedIn: number | null;
  readonly material: StakeMaterial | null;
};

export const PULL_DIRECTIONS = ["alongStrap", "other"] as const;
/** A stake of this job pulled on this ground, as driven, until it gave or as far as it was meant to hold. */
export type Pull = {
  readonly lbf: number;
  /** Only a pull in the direction of its strap counts. */
  readonly direction: (typeof PULL_DIRECTIONS)[number];
  /** At the spot of the site that looks softest. */
  readonly softestSpot: boolean;
};

export type Ground = {
  readonly soil: SoilClass | null;
  readonly state: GroundState | null;
  readonly pulls: readonly Pull[];
  /** Heavy rain since the first of the pulls; `null` not known. */
  readonly rainSincePulls: boolean | null;
  /** Between a pull and what may be counted; never under 1.5. `null`: 1.5. */
  readonly factorOfSafety: number | null;
};

export const isSand = (soil: SoilClass | null): boolean => soil?.startsWith("sand") ?? false;

/** What of a tent's sheet says what stake it is: a `Sheet` of the brief is one. */
export type StakeSheet = { readonly stakeDiameterIn: number; readonly stakeLengthIn: number; readonly embedmentIn: number | null };

/** The stake that a sheet wants, driven as the sheet wants it. What it is made of, no sheet says in a form that can be read. */
export const stakeOfSheet = (sheet: StakeSheet, material: StakeMaterial | null): Stake => ({
  diameterIn: sheet.stakeDiameterIn,
  lengthIn: sheet.stakeLengthIn,
  embeddedIn: sheet.embedmentIn,
  material,
});
