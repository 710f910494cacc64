import { type FieldReader, fieldsOf } from "./reading.ts";
import type { SpecInput } from "./spec-input.ts";
import { SETBACK_FT, SIDE_POLE_FT, usualCenterPoleFt } from "./templates.ts";
import type { AnchorCount, StationKind, TentSpec } from "./types.ts";

/** Limits against slips of the pen, not of strength; the anchor check judges strength. Common practice, no source. */
const SIDE_POLE = { from: 6, to: 16 };
const MAX_CENTER_POLE_FT = 60;
const SETBACK = { from: 1, to: 20 };
const MAX_PLATES = 6;
const MAX_STAKES_PER_PLATE = 6;

type Lengths = Pick<TentSpec, "centerPoleFt" | "sidePoleFt" | "setbackFt">;

/** Pole lengths and setback in feet. The center pole is asked for, never assumed: overhead clearance hangs on it. */
export function readLengths(input: SpecInput, widthFt: number | undefined, read: FieldReader): Lengths | undefined {
  const sidePoleFt = read.withinRange("sidePoleFt", "poleLength", input.sidePoleFt ?? SIDE_POLE_FT, SIDE_POLE);
  const centerPoleFt = read.withinRange("centerPoleFt", "poleLength", input.centerPoleFt, {
    from: (sidePoleFt ?? SIDE_POLE_FT) + 1,
    to: MAX_CENTER_POLE_FT,
    fallback: widthFt === undefined ? null : usualCenterPoleFt(widthFt, sidePoleFt),
  });
  const setbackFt = read.withinRange("setbackFt", "setback", input.setbackFt ?? SETBACK_FT, SETBACK);
  if (sidePoleFt === undefined || centerPoleFt === undefined || setbackFt === undefined) return undefined;
  return { sidePoleFt, centerPoleFt, setbackFt };
}

/** The sheet's plates and stakes for each kind of station; `null` where the planning minimum stands. */
export function readAnchors(input: SpecInput, read: FieldReader): TentSpec["anchors"] {
  const given = fieldsOf(input.anchors);
  if (typeof (input.anchors ?? {}) !== "object") read.refuse("anchors", "anchorCount", input.anchors);
  return { corner: one("corner"), seamEnd: one("seamEnd"), side: one("side") };

  function one(kind: StationKind): AnchorCount | null {
    const value = given[kind];
    if (value === undefined || value === null) return null;
    const count = fieldsOf(value);
    const plates = read.withinRange(`anchors.${kind}.plates`, "anchorCount", count.plates, { from: 1, to: MAX_PLATES, whole: true });
    const from = plates ?? 1;
    const to = from * MAX_STAKES_PER_PLATE;
    const stakes = read.withinRange(`anchors.${kind}.stakes`, "anchorCount", count.stakes, { from, to, whole: true });
    return plates === undefined || stakes === undefined ? null : { plates, stakes };
  }
}
