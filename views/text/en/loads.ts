import type { Amount } from "../../../machines/figures/line.ts";
import type { FigureSource } from "../../../machines/figures/source.ts";
import type { UnderRoof } from "../../../machines/loads/canopy.ts";
import type { GroundState, SoilClass, StakeMaterial } from "../../../machines/loads/ground.ts";
import type { LoadFormula, LoadInputName, LoadLeftOut } from "../../../machines/loads/lines.ts";
import type { Exposure } from "../../../machines/loads/pressure.ts";
import type { Instead, Reason, Verdict } from "../../../machines/loads/verdict.ts";
import { own } from "../../../machines/lookup/own.ts";
import { inUnit, unitName } from "./figures.ts";
import { FORMULA } from "./load-formulas.ts";
import { INSTEAD, REASON } from "./load-reasons.ts";
import { type LoadFigure, roundedStrictly } from "./load-rounding.ts";

const INPUT: Readonly<Record<LoadInputName, string>> = {
  gust: "gust",
  exposure: "ground",
  height: "height",
  elevation: "elevation",
  kz: "Kz",
  kd: "direction, Kd",
  ke: "Ke",
  asce: "by ASCE 7",
  en: "by EN",
  eaveHeight: "eave",
  peakHeight: "peak",
  halfWidth: "half the width",
  roofAngle: "slope",
  underRoof: "under the roof",
  coefficient: "coefficient",
  gustEffect: "gust effect, G",
  edge: "edge",
  perimeter: "perimeter",
  roofArea: "roof",
  pressure: "pressure",
  area: "roof area",
  rise: "rise",
  setback: "setback",
  sidePole: "side pole",
  uplift: "uplift",
  drag: "side push or pull",
  plates: "plates",
  strapAngle: "angle",
  tension: "strap pull",
  stakes: "stakes that count",
  stakesThere: "stakes at the plate",
  stakesAllowed: "stakes that may count",
  lowestPull: "lowest pull",
  pulls: "pulls",
  factor: "factor of safety",
  soil: "soil",
  stakeDiameter: "stake diameter",
  stakeLength: "stake length",
  embedded: "in the ground",
  dry: "dry",
  friction: "friction",
};

const LEFT_OUT: Readonly<Record<LoadLeftOut, string>> = {
  clothNotRigid: "The coefficients are for rigid, flat roofs, not for tensioned cloth with hips.",
  edgeStrips: "The wind lifts harder at the edges of the roof.",
  heightToWidth: "The ASCE figure is for a roof that is taller for its width.",
  hillsAndGaps: "Hills, ridges and gaps between buildings.",
  overTableWind: "This wind is over what the EN 13782 table is meant for.",
  polesRopesValance: "Wind on poles, ropes, valances and what hangs there.",
  pretension: "What the ratchets and the cloth itself put into the straps.",
  pumping: "Cloth that flaps and poles that pump.",
  snowAndWater: "Snow, hail, and water that stands on the roof.",
  hungLoads: "Loads hung from the tent.",
  strapsAndPoles: "Straps, ratchets, plates, poles and cloth themselves.",
  sharedSoil: "Stakes on one plate share soil and hold less than as many single ones.",
  stakesNotAllowed: "Stakes over what the sheet allows at a plate. They are not counted.",
  stakesAllowedNotTold: "Stakes over the usual two at a plate. They are not counted: nobody entered how many the sheet allows there.",
  insideTies: "Inside ties are never counted against uplift.",
  unevenShare: "Some plates of a station take more than their share.",
  movement: "How far a stake moves before it holds.",
  groundBetween: "Ground between the spots that were looked at.",
  laterRain: "Rain after the pulls. Pull again then.",
  tippingAndSinking: "Weights that tip, sink, or stand in water.",
  wetFriction: "Wet ground, mud or ice under the weights. Friction is less there than was entered.",
};

const VERDICT: Readonly<Record<Verdict, string>> = { short: "Short", notKnown: "Not known", notShort: "Not short" };

/** What can be chosen for a fact, in words. */
export const EXPOSURE: Readonly<Record<Exposure, string>> = {
  B: "town or trees upwind",
  C: "open country upwind",
  D: "open water or flats upwind",
};
const UNDER: Readonly<Record<UnderRoof, string>> = { clear: "clear", obstructed: "more than half blocked" };
const MATERIAL: Readonly<Record<StakeMaterial, string>> = { steel: "steel", wood: "wood" };
const SOIL: Readonly<Record<SoilClass, string>> = {
  loam: "undisturbed loam",
  clayPoor: "clay, poor",
  clayAverage: "clay, average",
  clayGood: "clay, good",
  sandLoose: "sand, loose",
  sandMedium: "sand, medium",
  sandDense: "sand, dense",
};
const STATE: Readonly<Record<GroundState, string>> = {
  undisturbed: "undisturbed",
  saturated: "soaked",
  frozen: "frozen",
  dug: "dug or filled",
};
const KINDS: Readonly<Record<string, string>> = { ...EXPOSURE, ...UNDER, ...MATERIAL, ...SOIL, ...STATE };

const NAMED_SOURCE: Readonly<Record<Extract<FigureSource, string>, string>> = {
  statics: "statics",
  geometry: "geometry",
  statistics: "statistics",
  practice: "common practice, no source",
  sheet: "the sheet",
  brief: "as entered",
  plan: "the plan",
  site: "entered or measured on site",
};
const sourceText = (source: FigureSource): string => {
  if (typeof source === "string") return NAMED_SOURCE[source];
  const { title, section, seen } = source;
  return `${title}, ${section}${seen === "memory" ? " (from memory)" : seen === "secondHand" ? " (in a transcription)" : ""}`;
};

/** A figure as a person reads it, on the stricter side: loads up, and what holds them down. */
const rounded = (is: Amount, of?: LoadFigure): string => inUnit(roundedStrictly(is, of), is.unit);

/** What the anchors of a tent were screened to, line by line. */
export const loads = {
  formula: (formula: LoadFormula) => FORMULA[formula],
  input: (name: LoadInputName) => INPUT[name],
  /** What goes into a line: what it is, how much, and where that is from. */
  goesIn: (name: string, is: string, source: string) => `${name}: ${is} (${source})`,
  /** A figure that is not the same at every station. */
  inColumn: (column: string) => `as listed under "${column}"`,
  inputHeading: (name: LoadInputName) => `${INPUT[name].charAt(0).toUpperCase()}${INPUT[name].slice(1)}`,
  /** A figure, or a kind in words. What it is a figure of says which side is the stricter. */
  amount: (is: Amount | string, of?: LoadFigure) => (typeof is === "string" ? (own(KINDS, is) ?? is) : rounded(is, of)),
  source: sourceText,
  leftOut: (what: LoadLeftOut) => LEFT_OUT[what],
  reason: (reason: Reason) => REASON[reason],
  instead: (what: Instead) => INSTEAD[what],
  verdict: (verdict: Verdict) => VERDICT[verdict],
  /** Load over capacity. One that is only known to be at least so much never stands alone: under 1 it would read as good. */
  ratio: (ratio: number | null, isAtLeast: boolean) => {
    if (ratio === null) return "not known";
    return `${(Math.ceil(ratio * 100 - 1e-6) / 100).toFixed(2)}${isAtLeast ? " or more" : ""}`;
  },
  sourceIs: (source: string) => `Source: ${source}`,
  leftOutTitle: "What is left out",
  leavesOut: (numbers: readonly number[]) => `; leaves out ${numbers.join(", ")} of the list below`,
  atStations: "How each station is worked out",
  figures: "Every station",
  figuresTold: "The worst first. Stations that come out the same share a row.",
  stationName: "Station",
  ratioName: "Ratio",
  ratioHow: (limit: string | null, isAtMost: boolean) => {
    if (limit === null) return "load of each stake ÷ what a stake may be counted for. That is not known here, so there is no ratio.";
    return `load of each stake ÷ what a stake may be counted for: ${isAtMost ? "at most " : ""}${limit}. Over 1 is short. Where it says "or more", under 1 is not known.`;
  },
  noFigure: "not known",
  shared: "Wind and roof",
  capacity: "One stake",
  station: (id: string, plates: readonly number[], of: number) =>
    plates.length === of ? id : `${id} ${plates.length === 1 ? "plate" : "plates"} ${plates.join(", ")}`,
  /** A column of figures, with their unit. */
  heading: (name: string, one: Amount | string | null) =>
    one === null || typeof one === "string" || one.unit === "number" ? name : `${name}, ${unitName(one.unit)}`,
  /** A figure in such a column. */
  figure: (is: Amount | string, of?: LoadFigure) =>
    typeof is === "string" ? (own(KINDS, is) ?? is) : inUnit(roundedStrictly(is, of), "number"),
  screeningOnly:
    "This is a screening. It can say that anchors are short, or that it isn't known. It never passes an anchor. The maker's manual, the local code and a licensed engineer come first.",
} as const;
