import type { Quantities, Quantity } from "../install/quantities.ts";
import type { PhaseId } from "../install/step.ts";

/**
 * How long things take. Every figure in this file is common practice, no source: a planning figure for a practiced crew on
 * level ground in fair weather with one or two powered stake drivers. None of them says how many people make a lift safe;
 * the sheet and the lead do. The firm's own finished jobs correct these figures (learning.ts). Together they make what
 * crews take for a tent of this kind: 80×100 ft with six people in 9 to 11 h up and 4 to 4.5 h down, 100×200 ft with ten in
 * 14 to 17 h and 6 to 7 h, walls and truck included.
 */
export type Phase = Exclude<PhaseId, "standing">;

/** Work divided among people: twice the people take half the time, up to the number who can work without crowding. */
export type HandPart = {
  readonly key: string;
  readonly per: Quantity;
  readonly personMinutes: number;
  /** Most people who can usefully work on it at once. */
  readonly maxPeople: number;
  /** Set if each item has room for only so many people: then more items take more people, and the longest item sets the end. */
  readonly room?: { readonly things: Quantity; readonly longest: Quantity; readonly hands: number };
  /** The calls at which it is done, by words key or prefix of the step id. Used to tell how far a phase has gotten. */
  readonly calls: readonly string[];
};
/** Work done by full teams, one item after another. People who do not make up another full team save no time. */
export type TeamPart = {
  readonly key: string;
  readonly per: Quantity;
  readonly minutesEach: (q: Quantities) => number;
  readonly teamSize: (q: Quantities) => number;
  /** Most teams that can work at once. */
  readonly maxTeams: number;
  readonly calls: readonly string[];
};
export type Part = HandPart | TeamPart;
export type Rates = {
  /** Minutes needed for any tent: briefings, papers, checks, walking back and forth, and the truck. */
  readonly fixedMinutes: number;
  /** Fewest people for which a time can be given. */
  readonly minPeople: (q: Quantities) => number;
  readonly parts: readonly Part[];
};

/** One person calls a lift and lifts nothing. The longer a center pole, the more people walk it up. */
export const CALLER = 1;
export const centerTeamSize = ({ centerPoleFt }: Pick<Quantities, "centerPoleFt">): number =>
  centerPoleFt <= 16 ? 2 : centerPoleFt <= 24 ? 3 : 4;
const QUARTER_TEAM_SIZE = 2;
const minRaisingCrew = (q: Quantities) => CALLER + Math.max(centerTeamSize(q), q.quarterPoles > 0 ? QUARTER_TEAM_SIZE : 0);

const teamPart = (
  key: string,
  per: Quantity,
  minutesEach: TeamPart["minutesEach"],
  teamSize: TeamPart["teamSize"],
  maxTeams: number,
  call: string,
): TeamPart => ({
  key,
  per,
  minutesEach,
  teamSize,
  maxTeams,
  calls: [call],
});
const handPart = (key: string, per: Quantity, personMinutes: number, maxPeople: number, ...calls: string[]): HandPart => ({
  key,
  per,
  personMinutes,
  maxPeople,
  calls,
});

/** Minutes with the truck, each way: backed in, opened or shut, everything handed off or up and counted, cloth and poles carried. */
const TRUCK = 50;
/** Straps are tightened at these calls, in this order, and looked at again once the cloth has settled. */
const TIGHTENING = ["tension.corners", "tension.seamEnds", "tension.sides", "round.again"];

export const RATES: Readonly<Record<Phase, Rates>> = {
  utilitiesMarked: {
    fixedMinutes: 35,
    minPeople: () => 2,
    parts: [handPart("whiteLine", "perimeterFt", 0.06, 2, "white.footprint", "white.stakeLine")],
  },
  anchorsSet: {
    fixedMinutes: 25 + TRUCK,
    minPeople: () => 2,
    parts: [
      handPart("marking", "stations", 1.5, 4, "marked"),
      handPart("spreading", "plates", 1, 8, "kit.spread"),
      // Two people to a driver, and rarely more than four drivers or sledge pairs.
      handPart("driving", "stakes", 4, 8, "drive.edge"),
      handPart("pullTests", "pullTests", 20, 2, "pull"),
    ],
  },
  sectionsJoined: {
    fixedMinutes: 20,
    // A piece is carried and spread by its corners; three people can do it with a dolly.
    minPeople: () => 3,
    parts: [
      handPart("laying", "clothSqFt", 0.025, 10, "lay.piece"),
      {
        key: "lacing",
        per: "seamFt",
        personMinutes: 0.6,
        maxPeople: Number.POSITIVE_INFINITY,
        room: { things: "seamHalves", longest: "longestHalfFt", hands: 2 },
        // Out to the edge at one call, and back to the long loop at the other.
        calls: ["lace.first", "lace.ring", "lace.out", "half.tied"],
      },
      handPart("strapping", "tiedStations", 3, 6, "cloth.strapped"),
    ],
  },
  perimeterRaised: {
    fixedMinutes: 20,
    minPeople: () => 3,
    parts: [
      handPart("threading", "plates", 1.5, 8, "straps.threaded"),
      handPart("layingSidePoles", "stations", 2, 8, "sides.laid"),
      // Two to a pole: one stands it and holds the foot, one pulls the strap through.
      handPart("sidePoles", "stations", 5, 8, "raise.firstCorner", "raise.corner", "raise.edge"),
      handPart("wrapping", "plates", 1, 8, "straps.turns", "straps.locked"),
    ],
  },
  interiorRaised: {
    fixedMinutes: 25,
    minPeople: minRaisingCrew,
    parts: [
      handPart("layingQuarters", "quarterPoles", 4, 8, "poles.pinned"),
      handPart("layingCenters", "centerPoles", 10, 8, "poles.pinned"),
      teamPart(
        "quarterPoles",
        "quarterPoles",
        () => 5,
        () => QUARTER_TEAM_SIZE,
        3,
        "lift.quarters",
      ),
      // One at a time: each lift has its own count of people in and out.
      teamPart("centerPoles", "centerPoles", (q) => 6 + 2 * centerTeamSize(q), centerTeamSize, 1, "lift.center"),
      // A stake driven at each foot, a strap put on and tightened.
      handPart("tyingQuarters", "quarterPoles", 10, 8, "tied.quarters"),
      handPart("tyingCenters", "centerPoles", 10, 8, "tied.center"),
    ],
  },
  tensioned: {
    fixedMinutes: 20,
    minPeople: () => 2,
    parts: [handPart("tensioning", "plates", 5, 8, ...TIGHTENING)],
  },
  inspected: {
    fixedMinutes: 30,
    minPeople: () => 2,
    parts: [handPart("walking", "stations", 0.7, 2, "walked"), handPart("walls", "wallFt", 0.5, 8, "walls")],
  },
  struck: {
    fixedMinutes: 30 + TRUCK,
    minPeople: (q) => Math.max(3, minRaisingCrew(q)),
    parts: [
      handPart("wallsDown", "wallFt", 0.12, 8, "strike.walls"),
      handPart("easing", "plates", 0.5, 8, "strike.ease"),
      // Ties off and the inside stake out, with the pole in hand.
      teamPart(
        "quarterPolesDown",
        "quarterPoles",
        () => 4,
        () => QUARTER_TEAM_SIZE,
        3,
        "lower.quarters",
      ),
      teamPart("centerPolesDown", "centerPoles", (q) => 6 + centerTeamSize(q), centerTeamSize, 1, "lower.center"),
      handPart("sidePolesDown", "stations", 2, 8, "strike.sides"),
      {
        key: "unlacing",
        per: "seamFt",
        personMinutes: 0.25,
        maxPeople: Number.POSITIVE_INFINITY,
        room: { things: "seamHalves", longest: "longestHalfFt", hands: 2 },
        calls: ["strike.unlace"],
      },
      handPart("folding", "clothSqFt", 0.04, 10, "strike.fold"),
      handPart("pulling", "stakes", 3, 8, "strike.stakes"),
    ],
  },
};

/** The phases that are timed, in order. `standing` is only waiting. */
export const TIMED_PHASES = Object.keys(RATES) as Phase[];
/** The phases of a raise. */
export const RAISE_PHASES: readonly Phase[] = TIMED_PHASES.filter((phase) => phase !== "struck");
