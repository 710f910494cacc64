import type { Quantities, Quantity } from "../install/quantities.ts";
import type { PhaseId } from "../install/step.ts";

/**
 * How long things take. Every figure in this file is common practice, no source: a planning figure for a practiced crew on
 * level ground in fair weather, with one or two powered stake drivers. None of them says how many people a lift is safe
 * with: that is on the sheet, and the lead's to say. The firm's own finished jobs put right what is wrong here (learning.ts).
 */
export type Phase = Exclude<PhaseId, "standing">;

/** Work that is shared out by hand: twice the people, half the time, up to as many as do not stand in each other's way. */
export type ByHand = {
  readonly key: string;
  readonly per: Quantity;
  readonly personMinutes: number;
  /** Most people who can usefully be at it at once. */
  readonly most: number;
  /** Where a thing has room for so many hands only: most grows with the things, and the longest one sets the end. */
  readonly room?: { readonly things: Quantity; readonly longest: Quantity; readonly hands: number };
  /** The calls it is done at: names of calls, or beginnings of their ids. It says how far a phase has got. */
  readonly at: readonly string[];
};
/** Work that a full team does at one thing after another. People who do not make up another team gain nothing. */
export type ByTeam = {
  readonly key: string;
  readonly per: Quantity;
  readonly minutesEach: (q: Quantities) => number;
  readonly team: (q: Quantities) => number;
  /** Most teams that can lift at once. */
  readonly teams: number;
  readonly at: readonly string[];
};
export type Part = ByHand | ByTeam;
export type Rates = {
  /** Minutes that come whatever the tent: talks, papers, checks, walking to and fro. */
  readonly fixed: number;
  /** Fewest people with whom a time can be given at all. */
  readonly least: (q: Quantities) => number;
  readonly parts: readonly Part[];
};

/** A pole lifted by hand is walked up by more people the longer it is; one more calls the lift and lifts nothing. */
export const CALLER = 1;
export const centerTeam = ({ centerPoleFt }: Pick<Quantities, "centerPoleFt">): number =>
  centerPoleFt <= 16 ? 2 : centerPoleFt <= 24 ? 3 : 4;
const QUARTER_TEAM = 2;
const raisingLeast = (q: Quantities) => CALLER + Math.max(centerTeam(q), q.quarterPoles > 0 ? QUARTER_TEAM : 0);

const LACING = ["lace.ring", "lace.valance", "lace.back"];
const raise = (
  key: string,
  per: Quantity,
  minutesEach: ByTeam["minutesEach"],
  team: ByTeam["team"],
  teams: number,
  at: string,
): ByTeam => ({
  key,
  per,
  minutesEach,
  team,
  teams,
  at: [at],
});
const byHand = (key: string, per: Quantity, personMinutes: number, most: number, ...at: string[]): ByHand => ({
  key,
  per,
  personMinutes,
  most,
  at,
});

export const RATES: Readonly<Record<Phase, Rates>> = {
  utilitiesMarked: { fixed: 30, least: () => 2, parts: [byHand("whiteLine", "perimeterFt", 0.06, 2, "white")] },
  anchorsSet: {
    fixed: 25,
    least: () => 2,
    parts: [
      byHand("marking", "stations", 1.5, 4, "marked.edge"),
      byHand("spreading", "plates", 1, 8, "kit.spread"),
      // Two people to a driver, and seldom more than four drivers or sledge pairs.
      byHand("driving", "stakes", 4, 8, "drive.edge"),
      byHand("pullTests", "pullTests", 20, 2, "pull"),
    ],
  },
  sectionsJoined: {
    fixed: 20,
    // A piece is carried and spread by its corners; three get it there with a dolly.
    least: () => 3,
    parts: [
      byHand("laying", "clothSqFt", 0.02, 10, "lay.piece"),
      {
        key: "lacing",
        per: "seamFt",
        personMinutes: 0.6,
        most: Number.POSITIVE_INFINITY,
        room: { things: "seamHalves", longest: "longestHalfFt", hands: 2 },
        at: LACING,
      },
      byHand("strapping", "tiedStations", 3, 6, "cloth.strapped"),
    ],
  },
  perimeterRaised: {
    fixed: 20,
    least: () => 3,
    parts: [
      byHand("threading", "plates", 1.5, 8, "straps.threaded", "straps.turns"),
      byHand("sidePoles", "stations", 5, 8, "raise.firstCorner", "raise.corner", "raise.edge"),
    ],
  },
  interiorRaised: {
    fixed: 25,
    least: raisingLeast,
    parts: [
      raise(
        "quarterPoles",
        "quarterPoles",
        () => 5,
        () => QUARTER_TEAM,
        3,
        "lift.quarters",
      ),
      // One at a time: each is a lift of its own, with its own count in and out.
      raise("centerPoles", "centerPoles", (q) => 6 + 2 * centerTeam(q), centerTeam, 1, "lift.center"),
    ],
  },
  tensioned: {
    fixed: 30,
    least: () => 2,
    parts: [
      byHand("tensioning", "plates", 3, 6, "tension.corners", "tension.seamEnds", "tension.sides", "round.again"),
      byHand("tyingQuarters", "quarterPoles", 4, 6, "interior.tied"),
      byHand("tyingCenters", "centerPoles", 4, 6, "interior.tied"),
    ],
  },
  inspected: {
    fixed: 30,
    least: () => 2,
    parts: [byHand("walking", "stations", 0.7, 2, "walked.edge"), byHand("walls", "wallFt", 0.2, 6, "walls")],
  },
  struck: {
    fixed: 30,
    least: (q) => Math.max(3, raisingLeast(q)),
    parts: [
      byHand("wallsDown", "wallFt", 0.08, 6, "strike.walls"),
      raise(
        "quarterPolesDown",
        "quarterPoles",
        () => 3,
        () => QUARTER_TEAM,
        3,
        "lower.quarters",
      ),
      raise("centerPolesDown", "centerPoles", (q) => 4 + centerTeam(q), centerTeam, 1, "lower.center"),
      byHand("sidePolesDown", "stations", 2, 8, "strike.sides", "strike.corners"),
      {
        key: "unlacing",
        per: "seamFt",
        personMinutes: 0.25,
        most: Number.POSITIVE_INFINITY,
        room: { things: "seamHalves", longest: "longestHalfFt", hands: 2 },
        at: ["strike.unlace"],
      },
      byHand("folding", "clothSqFt", 0.03, 8, "strike.fold"),
      byHand("pulling", "stakes", 3, 6, "strike.stakes", "back.stakes"),
    ],
  },
};

/** The phases that take time, in order; standing only waits. */
export const TIMED = Object.keys(RATES) as Phase[];
/** Those that make up a raise. */
export const RAISE: readonly Phase[] = TIMED.filter((phase) => phase !== "struck");
