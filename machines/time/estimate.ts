import type { Quantities } from "../install/quantities.ts";
import { CALLER, type HandPart, type Part, type Phase, RATES } from "./rates.ts";

/** One part of a phase: how many items there are and how they are worked on. */
export type PartTime = {
  readonly key: string;
  readonly count: number;
  /** Person-minutes per item by hand, or minutes per item for a team. */
  readonly minutesEach: number;
  readonly by: "hand" | "team";
  /** People working at once by hand, or people in one team. */
  readonly people: number;
  /** Teams working at once; 1 if done by hand. */
  readonly teams: number;
  readonly minutes: number;
  readonly calls: readonly string[];
};
/** Minutes for a phase at the assumed rates, or the smallest crew for which a time can be given. */
export type Estimate =
  | {
      readonly is: "estimate";
      readonly people: number;
      readonly minutes: number;
      readonly fixedMinutes: number;
      readonly parts: readonly PartTime[];
    }
  | { readonly is: "tooFew"; readonly people: number; readonly minPeople: number };

/**
 * Estimates a phase from the rates alone: its fixed minutes plus its parts, one after another. More people never take longer,
 * and beyond the number who can usefully work on a part they do not save time either. Below the minimum crew there is no
 * estimate.
 */
export function estimate(phase: Phase, q: Quantities, people: number): Estimate {
  const { fixedMinutes, minPeople, parts } = RATES[phase];
  if (people < minPeople(q)) return { is: "tooFew", people, minPeople: minPeople(q) };
  const timed = parts.filter((part) => q[part.per] > 0).map((part) => partTime(part, q, people));
  return { is: "estimate", people, minutes: timed.reduce((sum, p) => sum + p.minutes, fixedMinutes), fixedMinutes, parts: timed };
}

function partTime(part: Part, q: Quantities, people: number): PartTime {
  const count = q[part.per];
  const { key, calls } = part;
  if ("personMinutes" in part) {
    const atOnce = Math.min(people, maxPeopleAt(part, q));
    const longest = part.room ? (q[part.room.longest] * part.personMinutes) / Math.min(people, part.room.hands) : 0;
    const minutes = Math.max((count * part.personMinutes) / atOnce, longest);
    return { key, calls, count, minutesEach: part.personMinutes, by: "hand", people: atOnce, teams: 1, minutes };
  }
  const teamSize = part.teamSize(q);
  const teams = Math.max(1, Math.min(part.maxTeams, Math.floor((people - CALLER) / teamSize)));
  return {
    key,
    calls,
    count,
    minutesEach: part.minutesEach(q),
    by: "team",
    people: teamSize,
    teams,
    minutes: (count * part.minutesEach(q)) / teams,
  };
}

const maxPeopleAt = ({ maxPeople, room }: HandPart, q: Quantities): number =>
  Math.min(maxPeople, room ? room.hands * q[room.things] : maxPeople);
