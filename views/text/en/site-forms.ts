import type { HOW_TOLD } from "../../../machines/site/model.ts";
import type { PlacementFound } from "../../../machines/site/placement.ts";
import type { Shift } from "../../../machines/site/shifts.ts";
import type { StakeFix } from "../../../machines/site/stake-fix.ts";
import { feetInches } from "./names.ts";

const HOW: Readonly<Record<(typeof HOW_TOLD)[number], string>> = {
  ticket: "the ticket's marks",
  private: "owner or private locator",
  found: "found while working",
};

/** An error, never rounded down: to the inch above. */
const atMost = (ft: number): string => feetInches(Math.ceil(ft * 12) / 12);
const side = (ft: number, over: string, under: string): string => `${feetInches(Math.abs(ft))} ${ft < 0 ? under : over}`;

const stakeName = (stake: { is: "plate"; station: string; plate: number } | { is: "tie"; pole: string }): string =>
  stake.is === "plate" ? `${stake.station}.${stake.plate}` : `the tie of ${stake.pole}`;

const fixText = (fix: StakeFix): string =>
  fix.is === "slide"
    ? `Slide the plates of ${fix.station} ${side(fix.byFt, "clockwise", "counterclockwise")} along the edge. Ask the maker or the engineer first.`
    : `${stakeName(fix.stake)}: expose ${fix.expose.length === 0 ? "the ground" : fix.expose.join(" and ")} by hand, then an anchor that an engineer names. No stake in dug ground.`;

/** Forms in which a site is entered, corrected, read from a file, and a place is found. */
export const siteForms = {
  title: "Lines and things",
  intro: "Measure along the baseline from its beginning, then off it at a right angle.",
  beginAtA: "The baseline begins at corner A and runs to B, unless a place is entered.",
  add: "Add",
  groups: {
    buried: "A buried line",
    overhead: "An overhead line",
    thing: "A building, tree or other thing",
    ground: "The ground that may be used",
    ticketArea: "The area that the ticket names",
    slope: "The slope",
    wanted: "Where the tent is wanted",
  },
  kind: "Kind",
  shape: "Shape",
  shapes: { polygon: "area", path: "line", circle: "round" },
  how: "Who located it",
  hows: HOW,
  widthIn: "Width, in (empty: not marked)",
  toleranceIn: "Wider zone, in (empty: the ticket's)",
  errorFt: "How far off this may be, ft",
  kv: "Voltage, kV (empty: not known)",
  lowestFt: "Lowest sag, ft (empty: not known)",
  radiusFt: "Radius, ft",
  percent: "Rise in 100 ft",
  downhillDeg: "Downhill, degrees from the baseline",
  headingDeg: "Turn of A–B from the baseline, degrees clockwise",
  points: "Points in order, ft",
  corner: "Corner A, ft",
  along: (n: number) => `${n} along`,
  off: (n: number) => `${n} off`,
  side: (n: number) => `${n} side`,
  sides: { right: "right", left: "left" },
  manyPoints: (n: number) => `${n.toLocaleString("en-US")} points. They stay as they are: read a new file to change them.`,
  press: "Press on the drawing to add a point, in whole feet. Then correct the numbers.",
  pressAlt: "Drawing of the site. Press it to add a point. Numbers can be typed below instead.",
  look: "Show it on the drawing",
  takeOff: "Take the last point off",
  addNow: "Add it now",
  addTold: "It counts at once: one line more only makes the job stricter.",
  put: "Put the change forward",
  putTold: "A correction counts once a second person agrees.",
  keep: "Keep it",
  remove: "Take it out",
  /** What a site has once, as it stands in a reason. */
  parts: { ground: "usable ground", ticketArea: "ticket's area", slope: "slope", wanted: "wanted place" },
  because: {
    changed: (name: string) => `Site: ${name} corrected`,
    removed: (name: string) => `Site: ${name} taken out`,
    added: (name: string) => `Site: ${name} entered`,
    imported: "Site: read from a GeoJSON file",
    place: "Site: the tent is moved to the place that was found",
  },
  wrong: "Something here can't be read. Nothing was taken.",
  noSuch: (name: string) => `There is no "${name.slice(0, 40)}" on this site. Go back and choose again.`,
  back: "Back to this site",
  toStep: "Back to the site step",
  onDraft: "Lines and things on the site",

  importTitle: "Read a GeoJSON file",
  importIntro: "GeoJSON by RFC 7946: longitude and latitude on WGS 84. Nothing is taken before you have seen it drawn.",
  lon: "Baseline begins at longitude",
  lat: "Baseline begins at latitude",
  bearing: "Baseline runs toward, degrees from true north",
  as: "All of it is",
  asRead: "as the file says",
  file: "File",
  text: "Or its text",
  read: "Read it",
  take: "Put it forward",
  takeDraft: "Keep it with the draft",
  replace: "What was entered before",
  replaces: { beside: "stays beside it", instead: "is replaced" },
  readTold: (n: { buried: number; overhead: number; things: number }) =>
    `Read: ${n.buried} buried, ${n.overhead} overhead, ${n.things} things.`,
  areasRead: (n: number) => (n === 1 ? "1 area." : `${n} areas.`),
  errorTold: (roundingFt: number, projectionFt: number) =>
    `Rounding in the file may put it up to ${atMost(roundingFt)} off, and flattening the map up to ${atMost(projectionFt)}. Both are added to every clearance. How far off the survey itself is, the file can't say.`,
  noFile: "No file was chosen and no text was pasted. Give one of them.",
  notDegrees: (is: string) =>
    is === "" ? "Nothing is given here. It takes degrees." : `"${is.slice(0, 40)}" is not a number of degrees here. Give one.`,
  outside: (is: number, from: number, to: number) => `${is} is out of range. From ${from} to ${to}.`,
  tooLong: (bytes: number | null, most: number) =>
    `${bytes === null ? "That file" : `${(bytes / 1e6).toLocaleString("en-US", { maximumFractionDigits: 1 })} MB`} is too large. At most ${most / 1e6} MB. Cut out what lies around the site.`,
  at: (path: string, why: string) => (path === "" ? why : `${path}: ${why}`),
  more: (n: number) => `${n} more like these.`,

  placeTitle: "Find a place",
  wantedPlace: "Where it is wanted",
  foundPlace: "What was found",
  clear: "Nothing that was entered is too near here. The crew still measures.",
  find: "Look for the nearest place",
  finding: "Up to 60 ft away and turned up to 45°, by the foot and by the degree.",
  busy: "Other searches are running. Try again in a minute.",
  changed: "The site or the tent has changed since. Look again.",
  nothingToTake: "There is no such place to take. Look again.",
  result: (found: PlacementFound): string => {
    switch (found.is) {
      case "asWanted":
        return "Nothing that was entered is too near where it is wanted.";
      case "moved":
        return "The nearest place where nothing that was entered is too near:";
      case "leastBad":
        return "No place is free. This is the least bad one:";
      case "nowhere":
        return "Nowhere within 60 ft is clear of wires, of what stands there and of the edge of the ground. Move more than that, or take a smaller tent.";
    }
  },
  moved: ({ alongFt, offFt, turnDeg }: Shift) =>
    [
      alongFt === 0 && offFt === 0
        ? "Not moved."
        : `Moved ${[alongFt === 0 ? "" : side(alongFt, "on along the baseline", "back along the baseline"), offFt === 0 ? "" : side(offFt, "to the right", "to the left")].filter((part) => part !== "").join(" and ")}.`,
      turnDeg === 0 ? "Not turned." : `Turned ${Math.abs(turnDeg)}° ${turnDeg < 0 ? "counterclockwise" : "clockwise"}.`,
    ].join(" "),
  cornerA: (alongFt: number, offFt: number) =>
    `Corner A: ${side(alongFt, "along the baseline", "behind its start")}, ${side(offFt, "to the right", "to the left")}.`,
  leavesTicket: (n: number) =>
    `${n === 1 ? "1 stake leaves" : `${n} stakes leave`} the area that the ticket names. The ticket is asked again.`,
  fixesTitle: "What to do about each stake",
  dug: "In dug ground nothing holds: no stake there, and no anchor is offered. Its gate stays shut: move the tent farther.",
  fix: fixText,
  takePlace: "Take this place",
  takeTold: "A second person agrees. Then plan, layout, marks and gates follow.",
} as const;
