import type { Quantities } from "../install/quantities.ts";
import { type ByHand, CALLER, type Part, type Phase, RATES } from "./rates.ts";

/** One part of a phase with what it rests on: `n` things, done by `people` at once of whom no more than `most` could be. */
export type PartTime = {
  readonly key: string;
  readonly n: number;
  /** Person-minutes a thing, or minutes a thing for a team. */
  readonly each: number;
  readonly by: "hand" | "team";
  /** People at it, or people in a team. */
  readonly people: number;
  /** Teams at once; 1 where it is done by hand. */
  readonly teams: number;
  readonly minutes: number;
  readonly at: readonly string[];
};
/** Minutes of a phase by the assumed rates; or that no time can be given with so few. */
export type Estimate =
  | {
      readonly is: "estimate";
      readonly people: number;
      readonly minutes: number;
      readonly fixed: number;
      readonly parts: readonly PartTime[];
    }
  | { readonly is: "tooFew"; readonly people: number; readonly least: number };

/**
 * How long a phase takes by the rates alone: its fixed minutes and its parts, one after the other. More people never take
 * longer; from the most who can usefully be at a thing on, more do not take less. Under the least crew there is no answer.
 */
export function estimate(phase: Phase, q: Quantities, people: number): Estimate {
  const { fixed, least, parts } = RATES[phase];
  if (people < least(q)) return { is: "tooFew", people, least: least(q) };
  const timed = parts.filter((part) => q[part.per] > 0).map((part) => partTime(part, q, people));
  return { is: "estimate", people, minutes: timed.reduce((sum, p) => sum + p.minutes, fixed), fixed, parts: timed };
}

function partTime(part: Part, q: Quantities, people: number): PartTime {
  const n = q[part.per];
  const { key, at } = part;
  if ("personMinutes" in part) {
    const at1 = Math.min(people, mostAt(part, q));
    const longest = part.room ? (q[part.room.longest] * part.personMinutes) / Math.min(people, part.room.hands) : 0;
    const minutes = Math.max((n * part.personMinutes) / at1, longest);
    return { key, at, n, each: part.personMinutes, by: "hand", people: at1, teams: 1, minutes };
  }
  const team = part.team(q);
  const teams = Math.max(1, Math.min(part.teams, Math.floor((people - CALLER) / team)));
  return { key, at, n, each: part.minutesEach(q), by: "team", people: team, teams, minutes: (n * part.minutesEach(q)) / teams };
}

const mostAt = ({ most, room }: ByHand, q: Quantities): number => Math.min(most, room ? room.hands * q[room.things] : most);
