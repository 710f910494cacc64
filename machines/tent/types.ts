/**
 * The description of a tent (`TentSpec`) and everything computed from it (`TentPlan`).
 *
 * Coordinates are in feet, seen from above. x runs across the width (0 to W) and y along the length (0 to L), away from
 * someone standing at the near edge. Corners go clockwise from the near left: A (0,0), B (0,L), C (W,L), D (W,0). The
 * baseline A–B is the long left side.
 */
export type Corner = "A" | "B" | "C" | "D";
export type EdgeName = "AB" | "BC" | "CD" | "DA";
export const CORNERS: readonly Corner[] = ["A", "B", "C", "D"];
export const EDGES: readonly EdgeName[] = ["AB", "BC", "CD", "DA"];
export type Point = { readonly xFt: number; readonly yFt: number };

/** Positions of the poles under the ridge, measured from the near end (edge DA). */
export type RidgePattern =
  | { readonly kind: "atSeams" }
  | { readonly kind: "evenly"; readonly count: number }
  | { readonly kind: "given"; readonly fromNearEndFt: readonly number[] };

export type TentSpec = {
  readonly widthFt: number;
  /** Lengths of the mid pieces, from the near end. The tent's length is `widthFt` plus their sum. Empty for a one-piece top. */
  readonly midsFt: readonly number[];
  /** Needed for a one-piece top, which has no mids; for a sectional top it equals the width plus the mids. */
  readonly lengthFt: number;
  readonly onePiece: boolean;
  readonly splitEnds: boolean;
  readonly spacingFt: number;
  readonly quarterRings: 0 | 1 | 2;
  readonly ridge: RidgePattern;
  /** Ids of pattern poles that this top does not have. */
  readonly leaveOut: readonly string[];
  readonly add: readonly (Point & { readonly kind: "center" | "quarter" })[];
  readonly centerPoleFt: number;
  readonly sidePoleFt: number;
  /** Distance of the stake line outside the side poles. */
  readonly setbackFt: number;
  /** From the tent's sheet; null means the planning minimum. */
  readonly anchors: Readonly<Record<StationKind, AnchorCount | null>>;
  /** Rings counted in the cloth along an edge, both corners included, if the count differs from what the spacing gives. */
  readonly rings?: Readonly<Partial<Record<EdgeName, number>>>;
  /** Offset of a corner mark from its place on the rectangle, because of the cloth or the site. */
  readonly shifted?: Readonly<Partial<Record<Corner, Point>>>;
};
/** The fields of a spec that determine where the interior poles stand. */
export type PatternSpec = Pick<TentSpec, "widthFt" | "lengthFt" | "midsFt" | "onePiece" | "quarterRings" | "ridge">;
export type AnchorCount = { readonly plates: number; readonly stakes: number };

export type JoinEdge = "lace" | "eyelet";
export type Side = "near" | "far" | "left" | "right";
export type Piece = {
  readonly id: string;
  readonly kind: "whole" | "end" | "splitEnd" | "mid";
  /** Laying order, from 1. */
  readonly order: number;
  readonly at: Point & { readonly widthFt: number; readonly lengthFt: number };
  /** Only edges that are joined to another piece. */
  readonly edges: Readonly<Partial<Record<Side, JoinEdge>>>;
};
export type SeamHalf = {
  readonly id: string;
  /** The perimeter edge this half is laced out to. */
  readonly toward: EdgeName;
  readonly lengthFt: number;
  /** The two pieces laced together along this half. */
  readonly lacePiece: string;
  readonly eyeletPiece: string;
  /** Positions of the quarter-pole rings along the way, in feet from the center ring. */
  readonly ringsAtFt: readonly number[];
};
export type Seam = {
  readonly id: string;
  readonly kind: "cross" | "ridge";
  /** A piece, or a whole split end: end-DA, end-BC. The halves name the individual pieces. */
  readonly lacePiece: string;
  readonly eyeletPiece: string;
  readonly from: Point;
  readonly to: Point;
  readonly halves: readonly SeamHalf[];
};

export type InteriorPole = Point & {
  readonly id: string;
  readonly kind: "center" | "quarter";
  /** Id of the row it is raised with: a cross line, a hip end, or `added`. */
  readonly row: string;
  /** Ring 1 is nearest the eave; 0 for a center pole. */
  readonly ring: number;
};
/** A row of interior poles that are raised together. Rows are in order from the near end. */
export type PoleRow = {
  readonly id: string;
  readonly kind: "hip" | "cross" | "added";
  readonly quarters: readonly string[];
  readonly centers: readonly string[];
};

export type StationKind = "corner" | "seamEnd" | "side";
export type Station = Point & {
  /** A B C D, or the edge and a number, clockwise: AB1, AB2 … */
  readonly id: string;
  readonly kind: StationKind;
  /** A corner belongs to the edge that starts there, going clockwise. */
  readonly edge: EdgeName;
  readonly plates: number;
  readonly stakes: number;
};
export type StakePlate = Point & {
  readonly station: string;
  /** Degrees clockwise from the y axis, pointing out of the tent. Not a compass bearing. */
  readonly bearingDeg: number;
  readonly stakes: number;
  /** An engineer's anchor is set there, and nothing is driven. */
  readonly replaced?: true;
};
export type EdgePlan = {
  readonly name: EdgeName;
  readonly lengthFt: number;
  /** Rings in the cloth along this edge, both corners included. */
  readonly rings: number;
  /** Stations between the corners, in order. */
  readonly between: readonly string[];
  readonly seamEnds: number;
  readonly sides: number;
  /** Length of each bay in order, in feet. */
  readonly baysFt: readonly number[];
};

export const KIT_ITEMS = [
  "wholeTop",
  "endPiece",
  "splitEndPiece",
  "midPiece",
  "centerPole",
  "quarterPole",
  "sidePole",
  "cornerPole",
  "perimeterStake",
  "stakePlate",
  "perimeterStrap",
  "interiorStake",
  "interiorStrap",
  "polePlate",
] as const;
export type KitItem = (typeof KIT_ITEMS)[number];
export type KitLine = { readonly item: KitItem; readonly count: number; readonly use: string };

export type TentPlan = {
  readonly spec: TentSpec;
  readonly widthFt: number;
  readonly lengthFt: number;
  readonly pieces: readonly Piece[];
  readonly seams: readonly Seam[];
  readonly rows: readonly PoleRow[];
  readonly poles: readonly InteriorPole[];
  readonly edges: readonly EdgePlan[];
  readonly stations: readonly Station[];
  readonly plates: readonly StakePlate[];
  readonly diagonalFt: number;
  readonly kit: readonly KitLine[];
};

/** Why a tent cannot be built, and the nearest value that works. */
export type SpecProblem = {
  readonly field: string;
  readonly code: /** Missing, or not a finite number. */
    | "notANumber"
    | "notYesOrNo"
    | "widthOutOfRange"
    | "lengthOutOfRange"
    | "lengthUnderWidth"
    | "midsDoNotAddUp"
    /** Zero, negative, or under 1 ft. */
    | "midNotPositive"
    | "onePieceWithMids"
    | "onePieceSplit"
    /** Zero, negative, or under 1 ft. */
    | "spacingNotPositive"
    | "spacingTooWide"
    | "ringsNotKnown"
    | "ridgeOutside"
    | "poleUnknown"
    | "poleOutside"
    /** Within 1 ft of another pole. */
    | "poleTwice"
    | "noCenterPole"
    | "poleLength"
    | "setback"
    | "anchorCount"
    /** The rings would make bays between the seam ends shorter than 1 ft or longer than 20 ft. */
    | "ringCount"
    /** Farther than the cloth can give. */
    | "cornerShift";
  readonly value: number | string;
  /** A value for the same field that can be built, if there is one. */
  readonly nearest: number | string | readonly number[] | null;
};
