import { own } from "../lookup/own.ts";

/** The drawings of the hand work, in the order in which a raise comes to them; one loop missed and one corner early show how a tent lets go. */
export const HAND_WORK = [
  "tolerance",
  "signals",
  "threeFourFive",
  "levelTape",
  "plates",
  "stakeLean",
  "showing",
  "strapChoked",
  "ringHook",
  "loops",
  "flap",
  "longLoop",
  "tieOff",
  "unzips",
  "ratchetThreaded",
  "pin",
  "ratchetWrapped",
  "ratchetLocked",
  "leanIn",
  "standUp",
  "plumb",
  "ratchetEased",
  "cornerEarly",
] as const;
export type HandWorkId = (typeof HAND_WORK)[number];

/** Most drawings that a call has: more is not looked at. */
export const MAX_DRAWINGS = 3;

/** Which drawings belong to a call or a condition, by its words; what has no line here has none. */
const AT: Readonly<Record<string, readonly HandWorkId[]>> = {
  // The talk, the ticket, distances.
  "talk.stopSignal": ["signals"],
  "marks.walked": ["tolerance"],
  "nearest.mark": ["tolerance"],
  "nearest.private": ["tolerance"],
  "white.stakeLine": ["levelTape"],

  // Marks and stakes.
  baseline: ["levelTape"],
  "corner.first": ["threeFourFive", "levelTape"],
  squared: ["levelTape"],
  "kit.spread": ["plates"],
  "drive.edge": ["showing", "stakeLean", "plates"],
  "lean.inward": ["stakeLean"],
  "lean.outward": ["stakeLean"],
  "count.corners": ["plates"],
  "count.edge": ["plates"],
  "straps.choked": ["strapChoked", "plates"],

  // Cloth and lacing.
  "lay.piece": ["ringHook"],
  "cloth.strapped": ["ringHook"],
  "lace.technique": ["loops", "flap", "unzips"],
  "lace.first": ["loops", "flap", "longLoop"],
  "lace.ring": ["loops", "flap", "longLoop"],
  "lace.out": ["loops", "flap", "longLoop"],
  "half.tied": ["longLoop", "tieOff", "ringHook"],
  "half.looked": ["loops", "unzips"],

  // Side poles.
  "straps.threaded": ["ratchetThreaded"],
  "raise.firstCorner": ["pin", "ratchetWrapped"],
  "raise.corner": ["pin", "ratchetWrapped"],
  "raise.edge": ["pin", "ratchetWrapped"],
  "pins.both": ["pin"],
  "straps.turns": ["ratchetWrapped"],
  "straps.locked": ["ratchetLocked"],
  "sides.notTight": ["ratchetEased"],

  // Inside poles.
  "lift.quarters": ["leanIn", "standUp"],
  "lift.center": ["leanIn", "standUp"],
  "tied.quarters": ["showing"],
  "tied.center": ["showing"],

  // Tension.
  "tension.plumb": ["plumb"],
  plumb: ["plumb"],
  "seams.gaps": ["unzips"],
  "handles.locked": ["ratchetLocked"],
  "round.again": ["ratchetLocked"],
  "tension.again": ["ratchetLocked"],

  // Down.
  "strike.ease": ["ratchetEased", "cornerEarly"],
  "lower.center": ["standUp"],
  "lower.quarters": ["standUp"],
  "strike.sides.pair": ["cornerEarly", "ratchetEased"],
  "strike.sides": ["cornerEarly", "ratchetEased"],
  "strike.unlace": ["loops"],

  // What kinds of work need.
  caller: ["signals", "standUp"],
  paint: ["tolerance"],
};

/** The calls and conditions that have drawings, by their words. */
export const WITH_HAND_WORK: readonly string[] = Object.keys(AT);

/** The drawings of hand work that belong to a call or a condition, by its words: none to three. */
export const handWorkAt = (wordsKey: string): readonly HandWorkId[] => own(AT, wordsKey) ?? [];
