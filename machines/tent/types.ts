/**
 * What a tent is asked for (`TentSpec`) and what stands on the ground for it (`TentPlan`).
 *
 * Plane of the site, seen from above, lengths in feet: x runs across the width (0 to W), y along the length (0 to L),
 * y away from the person who stands at the near edge. Corners go clockwise from the near left:
 * A (0,0), B (0,L), C (W,L), D (W,0). The baseline A–B is the long left side.
 */
export type Corner = "A" | "B" | "C" | "D";
export type EdgeName = "AB" | "BC" | "CD" | "DA";
export const CORNERS: readonly Corner[] = ["A", "B", "C", "D"];
export const EDGES: readonly EdgeName[] = ["AB", "BC", "CD", "DA"];
export type Point = { readonly xFt: number; readonly yFt: number };

/** Where the poles under the ridge stand, measured from the near end (edge DA). */
export type RidgePattern =
  | { readonly kind: "atSeams" }
  | { readonly kind: "evenly"; readonly count: number }
  | { readonly kind: "given"; readonly fromNearEndFt: readonly number[] };

export type TentSpec = {
  readonly widthFt: number;
  /** Lengths of the mid pieces, from the near end. Tent length is `widthFt` plus their sum. Empty for a one-piece top. */
  readonly midsFt: readonly number[];
  /** Kept for a one-piece top, which has no mids; for a sectional top it equals width plus mids. */
  readonly lengthFt: number;
  readonly onePiece: boolean;
  readonly splitEnds: boolean;
  readonly spacingFt: number;
  readonly quarterRings: 0 | 1 | 2;
  readonly ridge: RidgePattern;
  /** Pole ids of the pattern that this top does not carry. */
  readonly leaveOut: readonly string[];
  readonly add: readonly (Point & { readonly kind: "center" | "quarter" })[];
  readonly centerPoleFt: number;
  readonly sidePoleFt: number;
  /** How far the stake line stands outside the side poles. */
  readonly setbackFt: number;
  /** Numbers of the tent's sheet; null takes the planning minimum. */
  readonly anchors: Readonly<Record<StationKind, AnchorCount | null>>;
  /** Rings counted in the cloth along an edge, both corners included, where they are not what the spacing gives. */
  readonly rings?: Readonly<Partial<Record<EdgeName, number>>>;
  /** How far a corner mark stands from where the rectangle has it, because the cloth or the site says so. */
  readonly shifted?: Readonly<Partial<Record<Corner, Point>>>;
};
/** What of a spec decides where the interior poles stand. */
export type PatternSpec = Pick<TentSpec, "widthFt" | "lengthFt" | "midsFt" | "onePiece" | "quarterRings" | "ridge">;
export type AnchorCount = { readonly plates: number; readonly stakes: number };

export type JoinEdge = "lace" | "eyelet";
export type Side = "near" | "far" | "left" | "right";
export type Piece = {
  readonly id: string;
  readonly kind: "whole" | "end" | "splitEnd" | "mid";
  /** 1 is laid first. */
  readonly order: number;
  readonly at: Point & { readonly widthFt: number; readonly lengthFt: number };
  /** Only the edges that are joined to another piece. */
  readonly edges: Readonly<Partial<Record<Side, JoinEdge>>>;
};
export type SeamHalf = {
  readonly id: string;
  /** The perimeter edge that this half is laced out to. */
  readonly toward: EdgeName;
  readonly lengthFt: number;
  /** Exactly the two pieces laced together along this half. */
  readonly lacePiece: string;
  readonly eyeletPiece: string;
  /** Quarter-pole rings passed on the way out, in feet from the center ring. */
  readonly ringsAtFt: readonly number[];
};
export type Seam = {
  readonly id: string;
  readonly kind: "cross" | "ridge";
  /** The piece, or a split end as a whole: end-DA, end-BC. Its halves name the single pieces. */
  readonly lacePiece: string;
  readonly eyeletPiece: string;
  readonly from: Point;
  readonly to: Point;
  readonly halves: readonly SeamHalf[];
};

export type InteriorPole = Point & {
  readonly id: string;
  readonly kind: "center" | "quarter";
  /** Id of the row it is raised with: a ridge line, or a hip end. */
  readonly row: string;
  /** Ring 1 is nearest the eave; 0 for a center pole. */
  readonly ring: number;
};
/** A row of interior poles that is raised together, in order from the near end. */
export type PoleRow = {
  readonly id: string;
  readonly kind: "hip" | "cross" | "added";
  readonly quarters: readonly string[];
  readonly centers: readonly string[];
};

export type StationKind = "corner" | "seamEnd" | "side";
export type Station = Point & {
  /** A B C D, or the edge and the number clockwise: AB1, AB2 … */
  readonly id: string;
  readonly kind: StationKind;
  /** A corner belongs to the edge that starts at it, going clockwise. */
  readonly edge: EdgeName;
  readonly plates: number;
  readonly stakes: number;
};
export type StakePlate = Point & {
  readonly station: string;
  /** Compass-free bearing: degrees clockwise from the y axis, pointing out of the tent. */
  readonly bearingDeg: number;
  readonly stakes: number;
};
export type EdgePlan = {
  readonly name: EdgeName;
  readonly lengthFt: number;
  /** Rings to be counted in the cloth along this edge, both corners included. */
  readonly rings: number;
  /** Stations between the corners, in order. */
  readonly between: readonly string[];
  readonly seamEnds: number;
  readonly sides: number;
  /** Spacing of the bays in order, in feet. */
  readonly baysFt: readonly number[];
};

export type KitItem =
  | "wholeTop"
  | "endPiece"
  | "splitEndPiece"
  | "midPiece"
  | "centerPole"
  | "quarterPole"
  | "sidePole"
  | "cornerPole"
  | "perimeterStake"
  | "stakePlate"
  | "perimeterStrap"
  | "interiorStake"
  | "interiorStrap"
  | "polePlate";
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

/** Why a tent cannot be built, and the nearest thing that works. */
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
    /** Another pole stands within 1 ft of it. */
    | "poleTwice"
    | "noCenterPole"
    | "poleLength"
    | "setback"
    | "anchorCount"
    /** More or fewer rings than bays of 1 to 20 ft between the seam ends allow. */
    | "ringCount"
    /** Farther than cloth gives. */
    | "cornerShift";
  readonly value: number | string;
  /** A value of the same field that can be built, where there is one. */
  readonly nearest: number | string | readonly number[] | null;
};
