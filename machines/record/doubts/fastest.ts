import type { Quantity, Work } from "../../install/quantities.ts";
import type { PhaseId } from "../../install/step.ts";

/**
 * How fast work is believed to go at most. Common practice, no source: a part of the planning rates of `machines/time`, which is
 * not imported here (it reads records). A check holds these figures against those rates.
 */

/**
 * Person-seconds for a stake: 40, a sixth of the planning rate with all carrying and looking left out. That is a stake every 20 s
 * for each driver with two people on it.
 */
export const MIN_STAKE_PERSON_SECONDS = 40;

/** Fewest people who are counted as driving: one alone is taken to be as fast as two. */
const MIN_DRIVING_PEOPLE = 2;

/**
 * Milliseconds in which so many people drive so many stakes at the fastest, with as many drivers as there are pairs.
 *
 * @example drivingMs(24, 6) // 160000
 */
export const drivingMs = (stakes: number, people: number): number =>
  (stakes * MIN_STAKE_PERSON_SECONDS * 1000) / Math.max(MIN_DRIVING_PEOPLE, people);

/** What a call takes on average over a whole phase, in milliseconds: it is read, something is done or looked at, and it is answered. */
export const MIN_CALL_MS = 6000;

type TimedPhase = Exclude<PhaseId, "standing">;

/** Person-seconds for the main things of each phase: a tenth of the planning rates, or less. */
export const MIN_PERSON_SECONDS: Readonly<Record<TimedPhase, Readonly<Partial<Record<Quantity, number>>>>> = {
  utilitiesMarked: {},
  anchorsSet: { stakes: 24 },
  sectionsJoined: { seamFt: 3.6 },
  perimeterRaised: { stations: 30 },
  interiorRaised: { quarterPoles: 120, centerPoles: 150 },
  tensioned: { plates: 30 },
  inspected: {},
  struck: { stakes: 18, seamFt: 1.5 },
};

/** Whether there is something to do in a phase whose time can be told: `standing` is only waiting. */
export const isTimed = (phase: string): phase is TimedPhase => Object.hasOwn(MIN_PERSON_SECONDS, phase);

/** Milliseconds in which a crew goes through a whole phase at the fastest. */
export function phaseMs(phase: TimedPhase, { quantities, people, calls }: Work): number {
  const things = Object.entries(MIN_PERSON_SECONDS[phase]) as [Quantity, number][];
  const personSeconds = things.reduce((sum, [per, each]) => sum + quantities[per] * each, 0);
  return calls[phase] * MIN_CALL_MS + (personSeconds * 1000) / Math.max(1, people);
}
