import { UTILITIES } from "../figures/utilities.ts";
import type { Point } from "../tent/types.ts";
import type { Shape } from "./shape.ts";
import type { StakeFix } from "./stake-fix.ts";

/**
 * The site in feet of a baseline, seen from above. The baseline begins at (0,0) and runs along y; x is off to the right of
 * somebody who walks it. Headings are degrees clockwise from the baseline, no compass bearings.
 */
export type SiteModel = {
  readonly buried: readonly BuriedLine[];
  readonly overhead: readonly OverheadLine[];
  readonly things: readonly Thing[];
  /** The ground that may be used, and the area that the ticket names; `null`: nobody said. */
  readonly ground: Area | null;
  readonly ticketArea: Area | null;
  readonly slope: Slope | null;
  readonly wanted: Wanted | null;
  /** What is done about stakes for which there is no free place. Absent where nothing is. */
  readonly fixes?: readonly StakeFix[];
};

/**
 * The facilities of the uniform color code: red, yellow, orange, blue, green, purple; then pink, temporary survey marks (in some
 * lists also what nobody could identify), and white, the limits of other digging: a stake in dug ground holds nothing.
 * Source: APWA Uniform Color Code, colors by ANSI Z535.1.
 */
export const BURIED_KINDS = [...UTILITIES, "survey", "excavation"] as const;
export type BuriedKind = (typeof BURIED_KINDS)[number];
/** How a line was told: the locate ticket's marks, the owner of the ground or a private locator, or found while working. */
export const HOW_TOLD = ["ticket", "private", "found"] as const;

export type BuriedLine = {
  readonly id: string;
  readonly kind: BuriedKind;
  readonly told: (typeof HOW_TOLD)[number];
  /** Whole width or diameter; `null`: not marked. */
  readonly widthIn: number | null;
  /** A wider zone than the ticket's, from the outer edge; `null`: the ticket's. */
  readonly toleranceIn: number | null;
  /** How far the line may lie from where it was entered; 0 where the tape was laid to the marks themselves. */
  readonly errorFt: number;
  readonly points: readonly Point[];
};

export type OverheadLine = {
  readonly id: string;
  /** `null`: not known, and then the rule's default counts. */
  readonly kv: number | null;
  /** Above the ground at the lowest sag. Shown; no clearance is made smaller by it. */
  readonly lowestFt: number | null;
  readonly errorFt: number;
  readonly points: readonly Point[];
};

/** What the fire standard wants room to, and what merely stands in the way. */
export const APART_KINDS = ["building", "tent", "vehicle", "engine", "exit", "lotLine"] as const;
export const THING_KINDS = [...APART_KINDS, "tree", "other"] as const;

export type Thing = {
  readonly id: string;
  readonly kind: (typeof THING_KINDS)[number];
  readonly errorFt: number;
  readonly shape: Shape;
};

export type Area = { readonly errorFt: number; readonly corners: readonly Point[] };
/** Rise in feet over 100 ft, and where it runs down to, clockwise from the baseline. */
export type Slope = { readonly percent: number; readonly downhillDeg: number };
/** Where corner A of the tent is wanted, and how its baseline A–B turns from the site's. */
export type Wanted = { readonly cornerA: Point; readonly headingDeg: number };

/** As crews measure: along the baseline, and off it at a right angle, to the right; to the left is less than 0. */
export type Offset = { readonly alongFt: number; readonly offFt: number };

/**
 * An offset from the baseline as a point.
 *
 * @example pointAt({ alongFt: 12, offFt: 8 }) // { xFt: 8, yFt: 12 }
 */
export const pointAt = ({ alongFt, offFt }: Offset): Point => ({ xFt: offFt, yFt: alongFt });

/**
 * A point as an offset from the baseline.
 *
 * @example offsetOf({ xFt: 8, yFt: 12 }) // { alongFt: 12, offFt: 8 }
 */
export const offsetOf = ({ xFt, yFt }: Point): Offset => ({ alongFt: yFt, offFt: xFt });

/** Whether the tent's A–B is the baseline that its site was taped from. */
export const isOnBaseline = ({ wanted }: Pick<SiteModel, "wanted">): boolean =>
  wanted === null || (wanted.cornerA.xFt === 0 && wanted.cornerA.yFt === 0 && wanted.headingDeg === 0);

/** A site of which nothing has been told. */
export const EMPTY_SITE: SiteModel = { buried: [], overhead: [], things: [], ground: null, ticketArea: null, slope: null, wanted: null };
