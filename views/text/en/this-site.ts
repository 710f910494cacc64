import type { Clearance, LeftOut, Verdict } from "../../../machines/site/clearances.ts";
import type { HOW_TOLD } from "../../../machines/site/model.ts";
import type { Neighbor, Term } from "../../../machines/site/rules.ts";
import { toGrid } from "../../../machines/tent/grid.ts";
import { sourceText } from "./limits.ts";
import { feetInches } from "./names.ts";
import { siteDrawing } from "./site-drawing.ts";

const VERDICT: Readonly<Record<Verdict, string>> = { short: "short", notKnown: "not known", notShort: "not short" };

const TERM: Readonly<Record<Term["term"], string>> = {
  tolerance: "tolerance zone",
  halfWidth: "half its width",
  entryError: "how far off the entry may be",
  reach: "stakes beside their mark",
  poleLength: "the pole's own length",
  lineClearance: "clearance from the line",
  separation: "fire separation",
};

const LEFT_OUT: Readonly<Record<LeftOut, string>> = {
  linesNotEntered: "Lines that nobody entered. Private lines are often not marked.",
  depth: "How deep a line lies.",
  widthNotMarked: "The width of lines that were marked without one: their zone begins at the mark.",
  straightBetweenMarks: "Bends between two marks: a line is taken as straight there.",
  wireSway: "How far a wire sways in the wind.",
  heightOfWires: "The height of wires: no clearance is made smaller by it.",
  stakeLean: "Where a leaning stake ends under the ground, beyond one foot.",
  levelTape: "Slope under the tape: lengths are taken as level.",
  localLaw: "Local locate law, where it is stricter than what was entered.",
};

const TOLD: Readonly<Record<(typeof HOW_TOLD)[number], string>> = {
  ticket: "marked on the ticket",
  private: "marked by the owner or a private locator",
  found: "found on the site",
};

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** What there is, never rounded up: to the inch below. */
const atLeast = (ft: number): string => feetInches(Math.floor(toGrid(ft * 12)) / 12);

const nameOf = (from: Neighbor): string => {
  switch (from.is) {
    case "buried":
      return `${from.line.id}: ${siteDrawing.buried[from.line.kind]}, buried`;
    case "overhead":
      return `${from.line.id}: overhead line, ${from.line.kv === null ? "voltage not known" : `${from.line.kv} kV`}`;
    case "thing":
      return `${from.thing.id}: ${siteDrawing.thing[from.thing.kind]}`;
    case "ground":
      return "Edge of the ground that may be used";
  }
};

const toldOf = (from: Neighbor): string => {
  if (from.is === "buried")
    return `${TOLD[from.line.told]}${from.line.widthIn === null ? ", no width marked" : `, ${from.line.widthIn} in wide`}`;
  if (from.is === "overhead") return from.line.lowestFt === null ? "lowest sag not known" : `lowest sag ${feetInches(from.line.lowestFt)}`;
  return "";
};

const ofText = ({ of }: Clearance): string => {
  switch (of.is) {
    case "plate":
      return of.plate === 1 ? of.station : `${of.station} plate ${of.plate}`;
    case "tie":
      return `inside tie of ${of.pole}`;
    case "pole":
      return `pole ${of.id}`;
    case "outline":
      return "ropes and cloth";
  }
};

const termText = ({ term, ft: is }: Term): string => `${is === null ? "not known" : feetInches(is)} ${TERM[term]}`;

/** The page "this site". */
export const thisSite = {
  title: "This site",
  link: "This site: lines, wires, room",
  nothing: "Nobody has entered any line, wire or building yet. Not entered is not known.",
  /** Of the lines, wires, things and edges that were entered: how many are short, and how many not known. */
  verdictOf: (verdict: Verdict, { short, notKnown, of }: { readonly short: number; readonly notKnown: number; readonly of: number }) =>
    short + notKnown === 0
      ? `Clearances: ${VERDICT[verdict]}`
      : `Clearances, ${of} ${of === 1 ? "line or thing" : "lines and things"}: ${[
          ...(short > 0 ? [`${short} short`] : []),
          ...(notKnown > 0 ? [`${notKnown} not known`] : []),
        ].join(", ")}`,
  verdict: (verdict: Verdict) => VERDICT[verdict],
  verdictTold: {
    short: "Something stands too near. Its gate stays shut until the tent or the entry is changed.",
    notKnown: "A figure is missing. Ask the line's owner.",
    notShort: "Nothing that was entered is too near. That opens no gate: the crew still measures.",
  } satisfies Record<Verdict, string>,
  besideAnchors:
    "Too near only where an engineer's anchor goes: the line there is exposed by hand, and the engineer's paper is shown. All else the crew still measures.",
  drawing: "The site from above",
  clearances: "Clearances",
  name: nameOf,
  told: toldOf,
  one: (one: Clearance) => `${ofText(one)}: ${atLeast(one.distanceFt)}, ${VERDICT[one.verdict]}`,
  wanted: ({ wantedFt, terms }: Clearance) =>
    wantedFt === 0
      ? "Needed: clear of it."
      : `Needed ${wantedFt === null ? "not known" : feetInches(wantedFt)} = ${terms
          .filter(({ ft: n }) => n !== 0)
          .map(termText)
          .join(" + ")}`,
  /** What a figure of a sum is, and where it is from. */
  term: ({ term, source }: Term) => `${capital(TERM[term])}: ${sourceText(source)}.`,
  termsTitle: "How the distance needed is added up",
  eachTitle: "Each line and thing, the tightest first",
  shorts: (n: number) => (n === 1 ? "1 is short." : `${n} are short.`),
  moreShort: (n: number) => (n === 1 ? "1 more has something too near." : `${n} more have something too near.`),
  farther: (n: number) => `${n.toLocaleString("en-US")} more are farther off than these.`,
  leavesTicket: (names: string, n: number) =>
    `${n === 1 ? "1 stake stands" : `${n} stakes stand`} outside the area that the ticket names (${names}). A new ticket is needed.`,
  insideTicket: "Every stake stands inside the area that the ticket names.",
  noTicketArea: "Nobody entered the area that the ticket names.",
  stake: (name: Exclude<Clearance["of"], { is: "pole" | "outline" }>) =>
    name.is === "plate" ? `${name.station}.${name.plate}` : name.pole,
  slope: (percent: number, deg: number) => `Slope: ${percent} ft in 100, down toward ${deg}° from the baseline.`,
  leftOutTitle: "Left out",
  leftOut: (what: LeftOut) => LEFT_OUT[what],
  loads: "Anchors and loads",
  anchorsAre: (verdict: Verdict) => `Anchors: ${VERDICT[verdict]}`,
  noLoads: "Nobody has entered the figures that anchors are screened by.",
  toAnchors: "Anchors",
  screening:
    "This is a screening check of what was entered, not a design. It opens no gate. The maker's manual, the local code, locate law, the line's owner and a licensed engineer come before it.",
  print: "Print this page for the site owner or an engineer.",
  enter: "Enter lines and things",
  place: "Find a place",
  import: "Read a GeoJSON file",
  all: "All that was entered",
  edit: "Correct",
  noPlan: "Enter the tent first. Then the site can be drawn.",
} as const;
