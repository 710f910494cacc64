import type { Quantities, Quantity } from "../install/quantities.ts";
import type { PhaseId } from "../install/step.ts";

/**
 * How long things take. Every figure in this file is common practice, no source: a planning figure for a practiced crew on
 * level ground in fair weather with one or two powered stake drivers. None of them says how many people make a lift safe;
 * the sheet and the lead do. The firm's own finished jobs correct these figures (learning.ts).
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
  /** Minutes needed for any tent: briefings, papers, checks, walking back and forth. */
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

const LACING = ["lace.ring", "lace.valance", "lace.back"];
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

export const RATES: Readonly<Record<Phase, Rates>> = {
  utilitiesMarked: { fixedMinutes: 30, minPeople: () => 2, parts: [handPart("whiteLine", "perimeterFt", 0.06, 2, "white")] },
  anchorsSet: {
    fixedMinutes: 25,
    minPeople: () => 2,
    parts: [
      handPart("marking", "stations", 1.5, 4, "marked.edge"),
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
      handPart("laying", "clothSqFt", 0.02, 10, "lay.piece"),
      {
        key: "lacing",
        per: "seamFt",
        personMinutes: 0.6,
        maxPeople: Number.POSITIVE_INFINITY,
        room: { things: "seamHalves", longest: "longestHalfFt", hands: 2 },
        calls: LACING,
      },
      handPart("strapping", "tiedStations", 3, 6, "cloth.strapped"),
    ],
  },
  perimeterRaised: {
    fixedMinutes: 20,
    minPeople: () => 3,
    parts: [
      handPart("threading", "plates", 1.5, 8, "straps.threaded", "straps.turns"),
      handPart("sidePoles", "stations", 5, 8, "raise.firstCorner", "raise.corner", "raise.edge"),
    ],
  },
  interiorRaised: {
    fixedMinutes: 25,
    minPeople: minRaisingCrew,
    parts: [
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
    ],
  },
  tensioned: {
    fixedMinutes: 30,
    minPeople: () => 2,
    parts: [
      handPart("tensioning", "plates", 3, 6, "tension.corners", "tension.seamEnds", "tension.sides", "round.again"),
      handPart("tyingQuarters", "quarterPoles", 4, 6, "interior.tied"),
      handPart("tyingCenters", "centerPoles", 4, 6, "interior.tied"),
    ],
  },
  inspected: {
    fixedMinutes: 30,
    minPeople: () => 2,
    parts: [handPart("walking", "stations", 0.7, 2, "walked.edge"), handPart("walls", "wallFt", 0.2, 6, "walls")],
  },
  struck: {
    fixedMinutes: 30,
    minPeople: (q) => Math.max(3, minRaisingCrew(q)),
    parts: [
      handPart("wallsDown", "wallFt", 0.08, 6, "strike.walls"),
      teamPart(
        "quarterPolesDown",
        "quarterPoles",
        () => 3,
        () => QUARTER_TEAM_SIZE,
        3,
        "lower.quarters",
      ),
      teamPart("centerPolesDown", "centerPoles", (q) => 4 + centerTeamSize(q), centerTeamSize, 1, "lower.center"),
      handPart("sidePolesDown", "stations", 2, 8, "strike.sides", "strike.corners"),
      {
        key: "unlacing",
        per: "seamFt",
        personMinutes: 0.25,
        maxPeople: Number.POSITIVE_INFINITY,
        room: { things: "seamHalves", longest: "longestHalfFt", hands: 2 },
        calls: ["strike.unlace"],
      },
      handPart("folding", "clothSqFt", 0.03, 8, "strike.fold"),
      handPart("pulling", "stakes", 3, 6, "strike.stakes", "back.stakes"),
    ],
  },
};

/** The phases that are timed, in order. `standing` is only waiting. */
export const TIMED_PHASES = Object.keys(RATES) as Phase[];
/** The phases of a raise. */
export const RAISE_PHASES: readonly Phase[] = TIMED_PHASES.filter((phase) => phase !== "struck");
