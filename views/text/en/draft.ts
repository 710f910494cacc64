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
  size: "Type its size:",
  fromList: "Or take one from the list:",
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
  soilNotNamed: "not named",
  fields: {
    title: "Name of the job",
    "tent.quarterRings": "Quarter rings",
    "sheet.soil": "Soil that the sheet names",
    "site.soilKnown": "Is the ground that soil?",
    "sheet.raiseGustMph": "Lowest gust that stops work, mph",
    "ticket.validFrom": "Good from",
    "ticket.validTo": "Good to",
  } as Readonly<Record<string, string>>,
  hints: {
    title: "empty: size and address",
    "tent.quarterRings": "0, 1 or 2",
    "sheet.embedmentIn": `empty: ${DEFAULTS.maxShowingIn.is} showing`,
    "sheet.raiseGustMph": `at most ${MAX_GUST_MPH.raiseGustMph}; empty: ${DEFAULTS.raiseGustMph.is}`,
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
  choices: {
    unanswered: "no answer yet",
    notOnTicket: "not on it",
    marked: "marked",
    clear: "clear",
    no: "other or unknown",
    yes: "yes, it is",
  } as Readonly<Record<string, string>>,

  groundIs: (soil: string) => `Is the ground ${soil}?`,
  otherSoil: "The sheet names another soil",
  leftBehind: "This belonged to the other address or soil, and is empty now. Say it for this one, or leave it: it is asked on site.",

  noSheet: "Don't know yet",
  noTicket: "Don't have it yet",

  // The crew.
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
