import type { Amount } from "../../../machines/figures/line.ts";
import type { FigureSource } from "../../../machines/figures/source.ts";
import type { UnderRoof } from "../../../machines/loads/canopy.ts";
import type { GroundState, SoilClass, StakeMaterial } from "../../../machines/loads/ground.ts";
import type { LoadFormula, LoadInputName, LoadLeftOut } from "../../../machines/loads/lines.ts";
import type { Exposure } from "../../../machines/loads/pressure.ts";
import type { Instead, Reason, Verdict } from "../../../machines/loads/verdict.ts";
import { own } from "../../../machines/lookup/own.ts";
import { inUnit } from "./figures.ts";

/** Each formula as a line is headed, and how it is worked out. */
const FORMULA: Readonly<Record<LoadFormula, { readonly name: string; readonly how: string }>> = {
  exposureFactor: { name: "Wind at this height, Kz", how: "2.01 × (height ÷ gradient height) to the power 2 ÷ α, 15 ft at least" },
  elevationFactor: { name: "Thinner air, Ke", how: "e to the power −0.0000362 × elevation" },
  ascePressure: { name: "Pressure by ASCE 7", how: "0.00256 × Kz × Kd × Ke × gust²" },
  enPressure: { name: "Pressure by EN 13782", how: "table by the height of the peak" },
  pressureUsed: { name: "Pressure that is used", how: "the larger of both" },
  roofAngle: { name: "Slope of the roof", how: "angle whose tangent is (peak − eave) ÷ half the width" },
  asceUplift: { name: "Uplift by ASCE 7", how: "gust effect × the worst coefficient that lifts" },
  enUplift: { name: "Uplift by EN 1991-1-4", how: "the worst coefficient that lifts" },
  upliftUsed: { name: "Uplift that is used", how: "the larger of both" },
  asceDrag: { name: "Side push by ASCE 7", how: "gust effect × the worst difference between both halves" },
  enDrag: { name: "Side push by EN 1991-1-4", how: "the worst coefficient of one slope alone" },
  dragUsed: { name: "Side push that is used", how: "the larger of both" },
  tributaryEdge: { name: "Edge that it stands for", how: "half of the bay on either side" },
  areaNearest: { name: "Roof nearest to it", how: "roof that is nearer to this edge than to any other" },
  areaByShare: { name: "Roof by its share", how: "roof × its edge ÷ the whole perimeter" },
  stationUplift: { name: "Uplift at the station", how: "pressure × uplift × the larger of both roof areas" },
  stationDrag: { name: "Side push at the station", how: "pressure × side push × rise of the roof × its edge" },
  strapAngle: { name: "Angle of the strap", how: "angle whose tangent is side pole ÷ setback" },
  tensionFromUplift: { name: "Strap pull from uplift", how: "uplift ÷ plates ÷ sine of the angle" },
  tensionFromDrag: { name: "Strap pull from side push", how: "side push ÷ plates ÷ cosine of the angle" },
  strapTension: { name: "Strap pull", how: "the larger of both" },
  perStake: { name: "Load of each stake", how: "strap pull ÷ stakes that count" },
  capacityFromPulls: { name: "A stake may be counted for, by pulls", how: "lowest pull ÷ factor of safety" },
  capacityFromTable: { name: "A stake may be counted for, by the table", how: "table by stake, depth and soil" },
  wetGround: { name: "At most, soaked", how: "half of what it held dry" },
  ballast: { name: "Weight at each strap", how: "(side pull ÷ friction + pull up) × factor of safety" },
};

const INPUT: Readonly<Record<LoadInputName, string>> = {
  gust: "gust",
  exposure: "ground upwind",
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
  drag: "side pull",
  plates: "plates",
  strapAngle: "angle",
  tension: "strap pull",
  stakes: "stakes",
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
  insideTies: "Inside ties are never counted against uplift.",
  unevenShare: "Some plates of a station take more than their share.",
  movement: "How far a stake moves before it holds.",
  groundBetween: "Ground between the spots that were looked at.",
  laterRain: "Rain after the pulls. Pull again then.",
  tippingAndSinking: "Weights that tip, sink, or stand in water.",
  wetFriction: "Other ground, mud or ice than where the drag test was.",
};

const REASON: Readonly<Record<Reason, string>> = {
  walled: "A tent with walls is another case.",
  wallsNotTold: "Nobody said whether it has walls.",
  gustNotTold: "Nobody gave the design gust.",
  exposureNotTold: "Nobody said what ground is upwind.",
  underRoofNotTold: "Nobody said whether it's clear under the roof.",
  roofSlopeNotPublished: "No figures fit a roof this steep or flat.",
  stakeNotTold: "Nobody has the sheet's stake.",
  materialNotTold: "Nobody said what the stakes are made of.",
  embeddedNotTold: "The sheet gives no embedment.",
  soilNotTold: "The kind of soil isn't known.",
  groundStateNotTold: "Nobody said how the ground is.",
  groundStateNotPublished: "There are no figures for soaked, frozen or dug ground.",
  noFigure: "No figure fits this stake in this soil.",
  sidewaysOnly: "The figure is for sideways pulls alone.",
  bareStakesInSand: "Bare stakes don't hold in sand.",
  fewerThanThreePulls: "It takes three pulls along the strap.",
  softestSpotNotPulled: "The softest spot wasn't pulled.",
  rainSincePulls: "Heavy rain came after the pulls.",
  rainSincePullsNotTold: "Nobody said whether it rained after the pulls.",
  frictionNotKnown: "The friction under the weights isn't known.",
};

const INSTEAD: Readonly<Record<Instead, string>> = {
  tellIt: "Tell what is missing, below.",
  pulls: "Make three or more pulls along the strap, one at the softest spot.",
  engineersPaper: "Get a licensed engineer's paper.",
  anotherAnchor: "Use an anchor that is made for sand.",
  dragTest: "Drag a weight on this ground and measure it.",
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

/** Figures as a person reads them: pounds and feet need no thousandths. */
const rounded = ({ n, unit }: Amount): string =>
  inUnit(
    unit === "number" ? n : Math.round(n * (unit === "lbf" || unit === "lb" ? 1 : 10)) / (unit === "lbf" || unit === "lb" ? 1 : 10),
    unit,
  );

/** Why something is not known or short, in one short sentence, by its code in a call. */
export const whyShort = (code: string | number | undefined): string => own(REASON as Readonly<Record<string, string>>, String(code)) ?? "";

/** What the anchors of a tent were screened to, line by line. */
export const loads = {
  formula: (formula: LoadFormula) => FORMULA[formula],
  input: (name: LoadInputName) => INPUT[name],
  amount: (is: Amount | string) => (typeof is === "string" ? (own(KINDS, is) ?? is) : rounded(is)),
  source: sourceText,
  leftOut: (what: LoadLeftOut) => LEFT_OUT[what],
  reason: (reason: Reason) => REASON[reason],
  instead: (what: Instead) => INSTEAD[what],
  verdict: (verdict: Verdict) => VERDICT[verdict],
  ratio: (ratio: number | null) => (ratio === null ? "not known" : (Math.ceil(ratio * 100 - 1e-6) / 100).toFixed(2)),
  sourceIs: (source: string) => `Source: ${source}`,
  leftOutTitle: "What is left out",
  shared: "Wind and roof",
  capacity: "One stake",
  station: (id: string, plate: number, of: number) => (of > 1 ? `${id}, plate ${plate}` : id),
  screeningOnly:
    "This is a screening. It can say that anchors are short, or that it isn't known. It never passes an anchor. The maker's manual, the local code and a licensed engineer come first.",
} as const;
