import { DEFAULTS, MAX_GUST_MPH, MIN_TOLERANCE_IN } from "../../../machines/install/limits.ts";
import { MAX_LENGTH_FT, MAX_WIDTH_FT, MIN_WIDTH_FT } from "../../../machines/tent/spec-size.ts";
import { SETBACK_FT, SIDE_POLE_FT } from "../../../machines/tent/templates.ts";
import { kitName } from "./names.ts";

/** A brief as a form, to open a job or to change one. */
export const openJob = {
  open: "Open a job",
  amend: "Change the plan",
  amendOnly: { crew: "Fix the crew", ticket: "Fix the ticket" },
  becauseOf: { crew: "Crew as it is here.", ticket: "Ticket as it is now." },
  look: "Show what changes",
  usual: "Start from the usual tent of this size; check it against the sheet",
  person: (n: number) => `The crew ${n}`,
} as const;

const gustHint = (limit: keyof typeof MAX_GUST_MPH) => `empty: ${DEFAULTS[limit].is}; at most ${MAX_GUST_MPH[limit]}`;
const ifEmpty = (usual: number) => `empty: ${usual}`;

/** Fields of the brief: label and hint. */
export const fields: Readonly<Record<string, { readonly label: string; readonly hint?: string }>> = {
  title: { label: "What and where" },
  rehearsal: { label: "Rehearsal", hint: "nothing at stake, kept out of all counts" },
  zone: { label: "Time zone", hint: "like America/Chicago" },
  "tent.widthFt": { label: "Width, ft", hint: `${MIN_WIDTH_FT} to ${MAX_WIDTH_FT}` },
  "tent.lengthFt": { label: "Length, ft", hint: `up to ${MAX_LENGTH_FT}` },
  "tent.midsFt": { label: "Mid pieces, ft", hint: "like 20, 20; empty: worked out" },
  "tent.spacingFt": { label: "Pole spacing, ft" },
  "tent.quarterRings": { label: "Rings of quarter poles", hint: "0, 1 or 2, from the sheet" },
  "tent.centerPoleFt": { label: "Center pole, ft" },
  "tent.sidePoleFt": { label: "Side pole, ft", hint: `${SIDE_POLE_FT} if empty` },
  "tent.setbackFt": { label: "Stake line outside the poles, ft", hint: `${SETBACK_FT} if empty` },
  "tent.onePiece": { label: "One-piece top" },
  "tent.splitEnds": { label: "Split ends" },
  "tent.ridge.kind": { label: "Poles under the ridge" },
  "tent.ridge.count": { label: "How many, if evenly", hint: "from one hip to the other" },
  "tent.ridge.fromNearEndFt": { label: "Places, if given, ft", hint: "from the near end D–A, like 40, 60" },
  "tent.leaveOut": { label: "Poles that this top does not carry", hint: "as in the drawing, like C2, Q4" },
  "tent.anchors.corner.plates": { label: "Corner: plates" },
  "tent.anchors.corner.stakes": { label: "Corner: stakes" },
  "tent.anchors.seamEnd.plates": { label: "Seam end: plates" },
  "tent.anchors.seamEnd.stakes": { label: "Seam end: stakes" },
  "tent.anchors.side.plates": { label: "Side pole: plates" },
  "tent.anchors.side.stakes": { label: "Side pole: stakes" },
  "tent.rings.AB": { label: "Rings on AB" },
  "tent.rings.BC": { label: "Rings on BC" },
  "tent.rings.CD": { label: "Rings on CD" },
  "tent.rings.DA": { label: "Rings on DA" },
  "tent.shifted.A.xFt": { label: "A across, ft" },
  "tent.shifted.A.yFt": { label: "A along, ft" },
  "tent.shifted.B.xFt": { label: "B across, ft" },
  "tent.shifted.B.yFt": { label: "B along, ft" },
  "tent.shifted.C.xFt": { label: "C across, ft" },
  "tent.shifted.C.yFt": { label: "C along, ft" },
  "tent.shifted.D.xFt": { label: "D across, ft" },
  "tent.shifted.D.yFt": { label: "D along, ft" },
  "sheet.document": { label: "Sheet number" },
  "sheet.stakeKind": { label: "Stake kind" },
  "sheet.stakeDiameterIn": { label: "Stake diameter, in" },
  "sheet.stakeLengthIn": { label: "Stake length, in" },
  "sheet.embedmentIn": { label: "Embedment, in", hint: `empty: at most ${DEFAULTS.maxShowingIn.is} in showing` },
  "sheet.stakeLeanDeg.from": { label: "Stake lean from, degrees", hint: ifEmpty(DEFAULTS.stakeLeanDeg.is.from) },
  "sheet.stakeLeanDeg.to": { label: "Stake lean to, degrees", hint: ifEmpty(DEFAULTS.stakeLeanDeg.is.to) },
  "sheet.soil": { label: "Soil that the sheet names" },
  "sheet.pullTestLbf": { label: "Pull to reach, lb", hint: "empty: an engineer's paper is asked for" },
  "sheet.squareInPer50Ft": { label: "Squaring, in per 50 ft", hint: ifEmpty(DEFAULTS.squareInPer50Ft.is) },
  "sheet.sidePoleLeanDeg": { label: "Side pole lean, degrees", hint: ifEmpty(DEFAULTS.sidePoleLeanDeg.is) },
  "sheet.raiseGustMph": { label: "Gust that stops raising, mph", hint: gustHint("raiseGustMph") },
  "sheet.stopGustMph": { label: "Gust that stops all lifting and lowering, mph", hint: gustHint("stopGustMph") },
  "sheet.insideGustMph": { label: "Gust that clears people out, mph", hint: gustHint("insideGustMph") },
  "sheet.interiorOrder": { label: "Inside poles" },
  "sheet.interiorTies": { label: "Inside ties" },
  "site.address": { label: "Address to give" },
  "site.rallyPoint": { label: "Rally point" },
  "site.stormShelter": { label: "Storm shelter", hint: "a building or a hard-topped vehicle; never a tree or a tent" },
  "site.firstAid": { label: "First aid" },
  "site.soilKnown": { label: "Soil is known to be that" },
  "site.overhead": { label: "Overhead lines, kV", hint: "none, unknown, or like 12, 115" },
  "site.baselineBearingDeg": { label: "Compass bearing from A to B, degrees", hint: "0 is north, 90 east; empty: not taken" },
  "site.street.edge": { label: "Side that faces the street" },
  "site.street.name": { label: "The street's name" },
  "ticket.number": { label: "Ticket number" },
  "ticket.validFrom": { label: "In force from", hint: "like 2026-06-01 or 2026-06-01T07:00" },
  "ticket.validTo": { label: "In force to" },
  "ticket.toleranceIn": {
    label: "From a mark to a stake, in",
    hint: `local law's figure, ${MIN_TOLERANCE_IN} at least; ${ifEmpty(DEFAULTS.toleranceIn.is)}`,
  },
  "use.occupants": { label: "People inside", hint: "empty: not known" },
  "use.permit": { label: "Permit" },
  "use.fabricCertificate": { label: "Fabric certificate" },
  "use.walls": { label: "Walls" },
  "use.hungLoads": { label: "Loads hung from it" },
  because: { label: "Why is it changed?" },
};
/** Parts of the brief. */
export const groups = {
  job: "The job",
  tent: "The tent",
  sheet: "Its sheet",
  site: "The site",
  ticket: "The locate ticket",
  use: "What it is for",
  crew: "The crew",
} as const;
/** What can be chosen in a field, by field and value or by value alone. */
export const choices: Readonly<Record<string, string>> = {
  yes: "yes",
  no: "no",
  required: "required",
  notRequired: "not required",
  unknown: "not known",
  quartersFirst: "quarter poles first",
  centersFirst: "center poles first",
  byLine: "tied down line by line",
  afterAll: "tied down when all stand",
  notOnTicket: "not on the ticket",
  unanswered: "no answer yet",
  marked: "marked",
  clear: "answered: nothing here",
  "tent.ridge.kind:": "the usual for this top",
  atSeams: "at the seams",
  evenly: "evenly, so many",
  given: "at given places",
  center: "center pole",
  quarter: "quarter pole",
  "site.street.edge:": "not said",
};

const ADDED = {
  kind: (n: number) => `Extra pole ${n}`,
  xFt: (n: number) => `Extra pole ${n}: from A–B, ft`,
  yFt: (n: number) => `Extra pole ${n}: from D–A, ft`,
};
const KIT = {
  spare: (item: string) => `${kitName(item)}: spares, percent`,
  weight: (item: string) => `${kitName(item)}: weight of one, lb`,
};

/** A field of a brief or of a tent as it is called on the page. */
export function fieldName(field: string): string {
  const added = /^tent\.add\.(\d+)\.(kind|xFt|yFt)$/.exec(field);
  if (added) return ADDED[added[2] as "kind"](Number(added[1]));
  const kit = /^kit\.(\w+)\.(spare|unitLb)$/.exec(field);
  if (kit) return kit[2] === "spare" ? KIT.spare(kit[1]!) : KIT.weight(kit[1]!);
  return field === "name" ? "Name of the tent" : (fields[field]?.label ?? field);
}
