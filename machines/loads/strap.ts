import { amount } from "../figures/line.ts";
import type { LoadLine } from "./lines.ts";

const rad = (deg: number): number => (deg * Math.PI) / 180;

/**
 * Tension in a strap that holds a side load, lbf, by its angle above the ground. Statics.
 *
 * @example Math.round(tensionFromSideLbf(1000, 45)) // 1414
 */
export const tensionFromSideLbf = (sideLbf: number, strapDeg: number): number => sideLbf / Math.cos(rad(strapDeg));

/**
 * Tension in a strap that holds an uplift, lbf. Statics.
 *
 * @example Math.round(tensionFromUpliftLbf(1000, 30)) // 2000
 */
export const tensionFromUpliftLbf = (upliftLbf: number, strapDeg: number): number => upliftLbf / Math.sin(rad(strapDeg));

/** A strap from the top of a side pole to a plate: heights and distances in feet. */
export type Strap = { readonly sidePoleFt: number; readonly outFt: number };
export const strapDegOf = ({ sidePoleFt, outFt }: Strap): number => (Math.atan2(sidePoleFt, outFt) * 180) / Math.PI;

/** What a station has to hold, and how many plates share it. */
export type StationLoad = { readonly upliftLbf: number; readonly dragLbf: number; readonly plates: number };

/**
 * Tension along one strap of a station, as lines, the last of them the tension. The pole can only push: it takes what the strap pulls down
 * too much, and nothing that lifts. So the strap needs the larger of the two tensions, and not their sum. The setback is the plate's own,
 * which is longer on the diagonal of a corner.
 */
export function strapLines(strap: Strap, { upliftLbf, dragLbf, plates }: StationLoad): readonly LoadLine[] {
  const deg = strapDegOf(strap);
  const fromUplift = tensionFromUpliftLbf(upliftLbf / plates, deg);
  const fromDrag = tensionFromSideLbf(dragLbf / plates, deg);
  const angle = { name: "strapAngle", is: amount(deg, "deg"), source: "geometry" } as const;
  const shared = { name: "plates", is: amount(plates, "number"), source: "plan" } as const;
  return [
    {
      formula: "strapAngle",
      inputs: [
        { name: "sidePole", is: amount(strap.sidePoleFt, "ft"), source: "plan" },
        { name: "setback", is: amount(strap.outFt, "ft"), source: "plan" },
      ],
      result: angle.is,
      source: "geometry",
      leftOut: [],
    },
    {
      formula: "tensionFromUplift",
      inputs: [{ name: "uplift", is: amount(upliftLbf, "lbf"), source: "statics" }, shared, angle],
      result: amount(fromUplift, "lbf"),
      source: "statics",
      leftOut: ["insideTies"],
    },
    {
      formula: "tensionFromDrag",
      inputs: [{ name: "drag", is: amount(dragLbf, "lbf"), source: "statics" }, shared, angle],
      result: amount(fromDrag, "lbf"),
      source: "statics",
      leftOut: [],
    },
    {
      formula: "strapTension",
      inputs: [
        { name: "uplift", is: amount(fromUplift, "lbf"), source: "statics" },
        { name: "drag", is: amount(fromDrag, "lbf"), source: "statics" },
      ],
      result: amount(Math.max(fromUplift, fromDrag), "lbf"),
      source: "statics",
      leftOut: plates > 1 ? ["pretension", "pumping", "unevenShare", "strapsAndPoles"] : ["pretension", "pumping", "strapsAndPoles"],
    },
  ];
}
