import { DEFAULTS, MAX_GUST_MPH, MIN_TOLERANCE_IN } from "../../../machines/install/limits.ts";
import { when } from "./when.ts";

/** A job told step by step before it is opened. */
export const draft = {
  title: "Open a job",
  progress: (step: number, of: number) => `Step ${step} of ${of}`,
  heads: {
    tent: "Which tent?",
    sheet: "What does its sheet say?",
    site: "Where does it go up?",
    ticket: "The locate ticket",
    crew: "Who is on it?",
  },
  on: "Go on",
  back: "Back",
  stay: "Keep what is typed",
  open: "Open the job",
  draw: "Draw it",
  wrong: "Something here can't be right yet. Look beside the fields.",

  // The tent.
  fromList: "Take one from the list:",
  size: "Or type its size:",
  toSize: "Not on the list: type its size",
  examples: "Usual sizes, as examples. None is your tent's sheet.",
  assumed: (pieces: number, rings: number) =>
    `Assumed from its size: ${pieces} pieces, ${rings === 0 ? "no quarter poles" : rings === 1 ? "one ring of quarter poles" : `${rings} rings of quarter poles`}. Cut another way? Add it under Tents first.`,
  whichEnds: "Split or whole ends?",
  splitEnds: "Split ends",
  wholeEnds: "Whole ends",
  pieces: (n: number) => `${n} pieces`,
  earlier: "Or the same as on an earlier job:",
  earlierTold: "Takes its tent, sheet, site and crew. The ticket is asked anew.",
  anotherTent: "Or another one:",
  notDrawn: "Nothing is drawn yet.",
  changed: (name: string) => `Somebody changed "${name}" in the list since you took it. This is how it is now.`,
  gone: (name: string) => `Somebody took "${name}" out of the list since you took it. This is how it was.`,
  was: (name: string, before: string, now: string) => `${name}: ${before}, now ${now}.`,
  takeNow: "Take it as it is now",
  keepDrawn: "Keep it as it is drawn",
  lookAgain: "Look at the tent",

  // Its sheet, the site, the ticket.
  noStakeSize: (text: string) =>
    `"${text.slice(0, 40)}" is not a stake size. Give how thick and how long in inches, like 1 x 42 or 1 1/8 x 42.`,
  fields: {
    title: "Name of the job",
    "tent.quarterRings": "Quarter rings",
    "sheet.soil": "Soil that the sheet names",
    "site.soilKnown": "Is the ground that soil?",
    "sheet.stakeSize": "Stakes, in",
    "sheet.raiseGustMph": "Gust that stops raising, mph",
    "sheet.stopGustMph": "Gust that clears the tent, mph",
    "ticket.validFrom": "Good from",
    "ticket.validTo": "Good to",
  } as Readonly<Record<string, string>>,
  hints: {
    title: "empty: size and address",
    "tent.quarterRings": "0, 1 or 2",
    "sheet.embedmentIn": `empty: ${DEFAULTS.maxShowingIn.is} showing`,
    "sheet.stakeSize": "thick x long, like 1\u00a01/8\u00a0x\u00a042",
    "sheet.raiseGustMph": `empty: ${DEFAULTS.raiseGustMph.is}; at most ${MAX_GUST_MPH.raiseGustMph}`,
    "sheet.stopGustMph": `no lifting, no lowering, no guests. Empty: ${DEFAULTS.stopGustMph.is}; at most ${MAX_GUST_MPH.stopGustMph}`,
    "site.address": "help is sent here",
    "site.rallyPoint": "empty: don't know yet",
    "site.stormShelter": "a building or a hard-topped vehicle; empty: don't know yet",
    "site.firstAid": "empty: don't know yet",
    "sheet.soil": "empty: none, pull tests",
    "site.soilKnown": "else: pull tests",
    zone: "like America/Chicago",
    "ticket.toleranceIn": `local law's figure, at least ${MIN_TOLERANCE_IN}`,
  } as Readonly<Record<string, string>>,
  utilities: "Who is on it, and what did they answer?",
  choices: { notOnTicket: "not on it", marked: "marked", clear: "clear", no: "other or unknown", yes: "yes, it is" } as Readonly<
    Record<string, string>
  >,

  groundIs: (soil: string) => `Is the ground ${soil}?`,
  samePlaces: (places: readonly string[]) => `Same places here: ${places.join("; ")}`,
  otherSoil: "The sheet names another soil",
  leftBehind: "This belonged to the other address or soil, and is empty now. Say it for this one, or leave it: it is asked on site.",

  noSheet: "Don't know yet",
  noTicket: "Don't have it yet",

  // The crew.
  everybody: "Everybody on site today. All get counted.",
  onIt: (name: string) => `${name} is on it`,
  newPerson: "New name",
  roleOf: (name: string) => `What ${name} does`,
  roleOfNew: "What they do",
  moreRows: "More people",
  toPeople: "Take somebody off this list",

  // Where it ends, or did.
  titleOf: (size: string, address: string) => (address === "" ? size : `${size}, ${address}`),
  openedTitle: "Opened already",
  openedBy: (lead: string, zone: string, at: number) => `This job was opened already, ${when.dayAndClock(zone, at)}. ${lead} leads it.`,
  toJob: "To its guide",
  leftOff: "Not opened yet",
  allLeft: "All not opened yet",
  noneLeft: "There is none.",
  keptFor: (days: number) => `Each goes by itself ${days} days after the last thing typed in it.`,
  lastTyped: (zone: string, at: number) => `last typed ${when.dayAndClock(zone, at)}`,
  throwAway: "Throw it away",
  throwTitle: (title: string) => `Throw "${title}" away?`,
  throwTold: "What was typed in it is gone then. No job is touched.",
  throwChanged: "Somebody typed in it meanwhile. Look at it before you throw it away.",
  keepDraft: "Keep it",
  noDraft: (id: string) => `There is no draft ${id.slice(0, 40)}. Begin again.`,
  noStep: (step: string) => `There is no step ${step.slice(0, 40)}.`,
  unreadable: "This draft cannot be read any more. Begin again.",
} as const;
