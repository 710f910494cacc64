import type { AmountUnit } from "../../../machines/figures/line.ts";
import type { FigureProblem } from "../../../machines/figures/problems.ts";
import type { SiteProblem } from "../../../machines/site/site-limits.ts";

const UNIT: Readonly<Record<AmountUnit, string>> = {
  ft: " ft",
  in: " in",
  sqFt: " sq ft",
  deg: "°",
  mph: " mph",
  mphPerMin: " mph a minute",
  psf: " psf",
  lbf: " lb",
  lb: " lb",
  number: "",
  percent: "%",
  degF: " °F",
  s: " s",
  min: " min",
  mi: " mi",
  qtPerHour: " qt an hour",
};

/** A number in its unit, as it is written. */
export const inUnit = (n: number, unit: AmountUnit): string => `${n.toLocaleString("en-US", { maximumFractionDigits: 3 })}${UNIT[unit]}`;

/** A unit by itself, as a column is headed. */
export const unitName = (unit: AmountUnit): string => (unit === "deg" ? "degrees" : UNIT[unit].trim());

const problem = (p: FigureProblem): string => {
  switch (p.code) {
    case "missing":
      return p.field.endsWith("direction")
        ? "This pull has no direction. Say whether it was along the strap."
        : "Nothing is given here, and it is needed.";
    case "notANumber":
      return `"${p.is}" is not a number. Give one.`;
    case "outOfRange":
      return `${inUnit(p.is, p.unit)} is out of range. From ${inUnit(p.limit.from, p.unit)} to ${inUnit(p.limit.to, p.unit)}.`;
    case "notOneOf":
      return `"${p.is}" is not one of: ${p.choices.join(", ")}.`;
    case "tooMany":
      return `${p.is} are too many. At most ${p.limit}.`;
  }
};

const SITE: Readonly<Record<SiteProblem["code"], (p: SiteProblem) => string>> = {
  notAnObject: () => "That isn't a site. Give its lines, wires and things.",
  notAList: () => "That isn't a list. Give a list.",
  unknownField: (p) => `"${p.value}" is not known here. Leave it out.`,
  missing: () => "Nothing is given here, and it is needed.",
  notANumber: (p) => (p.value === "" ? "Nothing is given here. It takes a number." : `"${p.value}" is not a number. Give one.`),
  notText: (p) => `"${p.value}" isn't text. Give a name.`,
  noName: () => "It has no name. Give it one.",
  nameTooLong: (p) => `The name is too long. Keep it under ${p.limit} letters.`,
  nameUnseen: () => "The name has letters in it that nobody sees. Type it again.",
  stakeTwice: (p) => `"${p.value}" is told twice. Tell it once, with all its lines.`,
  nameTwice: (p) => `Two are called "${p.value}". Give each its own name.`,
  notKnown: (p) => `"${p.value}" is none of the kinds here. Choose one.`,
  tooSmall: (p) => `${p.value} is too small. At least ${p.limit}.`,
  tooLarge: (p) => `${p.value} is too large. At most ${p.limit}.`,
  tooFar: (p) => `${p.value} ft is too far off. At most ${p.limit} ft along or off the baseline.`,
  tooManySegments: (p) => `${p.value.toLocaleString("en-US")} segments are too many. At most ${p.limit?.toLocaleString("en-US")}.`,
  tooManyNeighbors: (p) =>
    `${p.value.toLocaleString("en-US")} lines and things are too many. At most ${p.limit}: enter those near the tent.`,
  tooMuchInFile: (p) =>
    `There are ${p.value.toLocaleString("en-US")} values here. At most ${p.limit?.toLocaleString("en-US")}: save only what is near the tent.`,
  tooFewPoints: (p) => `${p.value} ${p.value === 1 ? "point is" : "points are"} too few. At least ${p.limit}.`,
  tooManyCorners: (p) => `${p.value} corners are too many. At most ${p.limit}.`,
  noLength: () => "All its points are one. Give where it runs to.",
  noArea: () => "Its corners lie on one line. Give its corners in order.",
  crossesItself: () => "Its edge crosses itself. Give its corners in order.",
  notJson: () => "That is not JSON. Choose the whole file.",
  notGeoJson: () => "That is JSON, but not GeoJSON. Choose a GeoJSON file.",
  otherSystem: (p) =>
    `Its coordinates are in another system${p.value === "" ? "" : ` (${p.value})`}. Save it as WGS 84 longitude and latitude.`,
  noGeometry: () => "It has no place. Give it one, or leave it out.",
  wrongGeometry: (p) => `This cannot be a ${p.value}. Draw it as a line or an area.`,
  notAPosition: (p) => `${p.value} isn't a longitude and latitude. Longitude comes first.`,
  holes: () => "It has a hole in it. Give its outer edge alone.",
  ringNotClosed: () => "Its edge does not end where it began. Close it.",
  tooCoarse: (p) => `Its degrees are rounded so much that it may be ${p.value} ft off. At most ${p.limit} ft.`,
  noSuchStake: (p) => `This tent has no stake "${p.value}". Name one that it has.`,
  slidesTooFar: (p) => `${p.value} cannot slide so far. Gaps: 2 ft at least, ${p.limit} ft at most; corners and seam ends stay.`,
  onlyOne: () => "There is more than one of it. Give one.",
};

/** What is wrong with figures that came in. */
export const figures = { inUnit, problem, site: (p: SiteProblem): string => SITE[p.code](p) } as const;
