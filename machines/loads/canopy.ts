import { isWithin } from "../figures/bounds.ts";
import { interpolate } from "../figures/interpolate.ts";
import { amount } from "../figures/line.ts";
import type { LoadLeftOut, LoadLine } from "./lines.ts";
import { ASCE_FREE_ROOF, ASCE_GUST_EFFECT, EN_CANOPY } from "./sources.ts";
import type { Reason } from "./verdict.ts";

export const UNDER_ROOF = ["clear", "obstructed"] as const;
/** Whether the wind finds its way under the roof. Obstructed: more than half of it is blocked by walls or goods. */
export type UnderRoof = (typeof UNDER_ROOF)[number];

/** Net coefficients of the windward and the leeward half; + presses on the roof, − lifts it. */
export type NetPair = { readonly windward: number; readonly leeward: number };

/** ASCE 7-16 figure 27.3-5: by angle in degrees, clear A, clear B, obstructed A, obstructed B, each windward and leeward. */
const ASCE_ROWS: readonly (readonly [number, ...number[]])[] = [
  [7.5, 1.1, -0.3, 0.2, -1.2, -1.6, -1.0, -0.9, -1.7],
  [15, 1.1, -0.4, 0.1, -1.1, -1.2, -1.0, -0.6, -1.6],
  [22.5, 1.1, 0.1, -0.1, -0.8, -1.2, -1.2, -0.8, -1.7],
  [30, 1.3, 0.3, -0.1, -0.9, -0.7, -0.7, -0.2, -1.1],
  [37.5, 1.3, 0.6, -0.2, -0.6, -0.6, -0.6, -0.3, -0.9],
  [45, 1.1, 0.9, -0.3, -0.5, -0.5, -0.5, -0.3, -0.7],
];
const ASCE_G = 0.85;
const ASCE_HEIGHT_TO_WIDTH = { from: 0.25, to: 1 } as const;
/** EN 1991-1-4 table 7.7: by angle in degrees, largest, smallest with nothing under the roof, smallest with all of it blocked. */
const EN_ROWS: readonly (readonly [number, number, number, number])[] = [
  [5, 0.3, -0.6, -1.3],
  [10, 0.4, -0.7, -1.3],
  [15, 0.4, -0.8, -1.3],
  [20, 0.6, -0.9, -1.4],
  [25, 0.7, -1.0, -1.3],
  [30, 0.9, -1.0, -1.3],
];

/** Both load cases of ASCE 7's pitched free roof, wind across the ridge; `null` below 7.5 and over 45 degrees. */
export function asceCases(angleDeg: number, under: UnderRoof): { readonly a: NetPair; readonly b: NetPair } | null {
  const first = under === "clear" ? 1 : 5;
  const [aw, al, bw, bl] = [0, 1, 2, 3].map((k) => interpolate(ASCE_ROWS.map((row) => [row[0], row[first + k]!]), angleDeg)); // biome-ignore format: one line reads best
  if (aw == null || al == null || bw == null || bl == null) return null;
  return { a: { windward: aw, leeward: al }, b: { windward: bw, leeward: bl } };
}

/** EN 1991-1-4's overall force coefficients of a duopitch canopy; `null` below 5 and over 30 degrees. */
export function enCoefficients(angleDeg: number, under: UnderRoof): { readonly max: number; readonly min: number } | null {
  const max = interpolate(EN_ROWS.map((row) => [row[0], row[1]]), angleDeg); // biome-ignore format: one line reads best
  const min = interpolate(EN_ROWS.map((row) => [row[0], row[under === "clear" ? 2 : 3]]), angleDeg); // biome-ignore format: one line reads best
  return max === null || min === null ? null : { max, min };
}

export type Roof = { readonly eaveFt: number; readonly peakFt: number; readonly widthFt: number };
/** Mean height and rise in feet, slope in degrees, of a roof that goes straight from its eaves to its ridge. */
export const roofShape = ({ eaveFt, peakFt, widthFt }: Roof) => ({
  meanFt: (eaveFt + peakFt) / 2,
  riseFt: peakFt - eaveFt,
  angleDeg: (Math.atan((peakFt - eaveFt) / (widthFt / 2)) * 180) / Math.PI,
});

/**
 * Shares of the velocity pressure that lift a square foot of plan, and that push on a square foot of the roof as seen from the side. At least
 * these, where there are reasons.
 */
export type Canopy = {
  readonly uplift: number;
  readonly drag: number;
  readonly reasons: readonly Reason[];
  readonly lines: readonly LoadLine[];
};

/**
 * Uplift and drag on an open canopy by both sets, the worse of each. `null` where neither has its angle. Not told what is under the
 * roof: the lesser of the two cases, and said to be that.
 */
export function canopyOf(roof: Roof, under: UnderRoof | null): Canopy | null {
  const shape = roofShape(roof);
  if (under !== null) return coefficients(roof, shape, under);
  const both = UNDER_ROOF.map((one) => coefficients(roof, shape, one));
  const [clear, obstructed] = both;
  if (!clear || !obstructed) return null;
  const lesser = clear.uplift <= obstructed.uplift ? clear : obstructed;
  return { ...lesser, drag: Math.min(clear.drag, obstructed.drag), reasons: [...lesser.reasons, "underRoofNotTold"] };
}

function coefficients(roof: Roof, { meanFt, angleDeg }: ReturnType<typeof roofShape>, under: UnderRoof): Canopy | null {
  const cases = asceCases(angleDeg, under);
  const en = enCoefficients(angleDeg, under);
  if (!cases && !en) return null;
  const offRange = !isWithin(meanFt / roof.widthFt, ASCE_HEIGHT_TO_WIDTH);
  const pairs = cases ? [cases.a, cases.b] : [];
  // Any edge may be the windward one, so that a station gets the worse of the two halves.
  const asceUplift = ASCE_G * Math.max(0, ...pairs.flatMap(({ windward, leeward }) => [-windward, -leeward]));
  const asceDrag = ASCE_G * Math.max(0, ...pairs.map(({ windward, leeward }) => windward - leeward));
  const enUplift = en ? Math.max(0, -en.min) : 0;
  // Each slope alone: both together push against each other.
  const enDrag = en ? Math.max(Math.abs(en.max), Math.abs(en.min)) : 0;
  const [uplift, drag] = [Math.max(asceUplift, enUplift), Math.max(asceDrag, enDrag)];
  const line = { angleDeg, under };
  return {
    uplift,
    drag,
    reasons: en || !offRange ? [] : ["roofSlopeNotPublished"],
    lines: [
      angleLine(roof, angleDeg),
      ...(cases ? [asceLine("asceUplift", asceUplift, { ...line, offRange }), asceLine("asceDrag", asceDrag, { ...line, offRange })] : []),
      ...(en ? [enLine("enUplift", enUplift, line), enLine("enDrag", enDrag, line)] : []),
      usedLine("upliftUsed", cases ? asceUplift : null, en ? enUplift : null),
      usedLine("dragUsed", cases ? asceDrag : null, en ? enDrag : null),
    ],
  };
}

const angleLine = ({ eaveFt, peakFt, widthFt }: Roof, angleDeg: number): LoadLine => ({
  formula: "roofAngle",
  inputs: [
    { name: "eaveHeight", is: amount(eaveFt, "ft"), source: "plan" },
    { name: "peakHeight", is: amount(peakFt, "ft"), source: "plan" },
    { name: "halfWidth", is: amount(widthFt / 2, "ft"), source: "plan" },
  ],
  result: amount(angleDeg, "deg"),
  source: "geometry",
  leftOut: [],
});

type Case = { readonly angleDeg: number; readonly under: UnderRoof };
const caseInputs = ({ angleDeg, under }: Case) =>
  [
    { name: "roofAngle", is: amount(angleDeg, "deg"), source: "geometry" },
    { name: "underRoof", is: under, source: "site" },
  ] as const;
const CLOTH: readonly LoadLeftOut[] = ["clothNotRigid", "edgeStrips"];

const asceLine = (
  formula: "asceUplift" | "asceDrag",
  share: number,
  { offRange, ...roof }: Case & { readonly offRange: boolean },
): LoadLine => ({
  formula,
  inputs: [
    ...caseInputs(roof),
    { name: "coefficient", is: amount(share / ASCE_G, "number"), source: ASCE_FREE_ROOF },
    { name: "gustEffect", is: amount(ASCE_G, "number"), source: ASCE_GUST_EFFECT },
  ],
  result: amount(share, "number"),
  source: ASCE_FREE_ROOF,
  leftOut: offRange ? [...CLOTH, "heightToWidth"] : CLOTH,
});

const enLine = (formula: "enUplift" | "enDrag", share: number, roof: Case): LoadLine => ({
  formula,
  inputs: [...caseInputs(roof), { name: "coefficient", is: amount(share, "number"), source: EN_CANOPY }],
  result: amount(share, "number"),
  source: EN_CANOPY,
  leftOut: CLOTH,
});

function usedLine(formula: "upliftUsed" | "dragUsed", asce: number | null, en: number | null): LoadLine {
  const share = Math.max(asce ?? 0, en ?? 0);
  return {
    formula,
    inputs: [
      ...(asce === null ? [] : [{ name: "asce", is: amount(asce, "number"), source: ASCE_FREE_ROOF } as const]),
      ...(en === null ? [] : [{ name: "en", is: amount(en, "number"), source: EN_CANOPY } as const]),
    ],
    result: amount(share, "number"),
    source: share === en ? EN_CANOPY : ASCE_FREE_ROOF,
    leftOut: ["polesRopesValance"],
  };
}
