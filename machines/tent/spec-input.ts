import type { AnchorCount, Corner, EdgeName, Point, RidgePattern, StationKind } from "./types.ts";

/** A tent as a form or an office script gives it. Whatever is left out is asked for, or takes the usual value. */
export type SpecInput = {
  readonly widthFt?: number | null;
  /** Left out where the mids are listed: then width and mids together. */
  readonly lengthFt?: number | null;
  /** Left out: filled with the usual mids. */
  readonly midsFt?: readonly number[] | null;
  readonly onePiece?: boolean | null;
  readonly splitEnds?: boolean | null;
  readonly spacingFt?: number | null;
  readonly quarterRings?: number | null;
  readonly ridge?: RidgePattern | null;
  readonly leaveOut?: readonly string[] | null;
  readonly add?: readonly (Point & { readonly kind: "center" | "quarter" })[] | null;
  readonly centerPoleFt?: number | null;
  readonly sidePoleFt?: number | null;
  readonly setbackFt?: number | null;
  readonly anchors?: Readonly<Partial<Record<StationKind, AnchorCount | null>>> | null;
  readonly rings?: Readonly<Partial<Record<EdgeName, number | null>>> | null;
  readonly shifted?: Readonly<Partial<Record<Corner, Point | null>>> | null;
};
