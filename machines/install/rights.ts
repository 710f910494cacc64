import type { Role } from "./brief.ts";
import type { Intent } from "./commands.ts";
import { DRIVERS } from "./crew.ts";
import { COMPETENT } from "./gates.ts";
import { ROLES } from "./roles.ts";

/** Each gate names who may answer it. */
export const AS_ITS_GATE_SAYS = "asItsGateSays";

/** What can only stop work, call for help or leave the tent, is taken from anybody. */
const ANYBODY: readonly Role[] = ROLES;
/** A trainee holds, tells of thunder or of somebody hurt, and asks; otherwise a trainee watches. */
const NO_TRAINEE: readonly Role[] = ROLES.filter((role) => role !== "trainee");

/**
 * What each role may ask of a job: the one table, which the chart reads. A reading that can only stop work is taken from anybody
 * all the same, and so is a bad answer to a condition.
 */
export const MAY: { readonly [T in Intent["type"]]: readonly Role[] | typeof AS_ITS_GATE_SAYS } = {
  hold: ANYBODY,
  pause: ANYBODY,
  hurt: ANYBODY,
  makeSafe: ANYBODY,
  outOfUse: ANYBODY,
  // One line more makes a job stricter, and no other.
  found: ANYBODY,
  // What is read back is judged as what it is; who confirms or drops it said it.
  readBack: ANYBODY,
  correct: ANYBODY,
  wrong: ANYBODY,
  note: NO_TRAINEE,
  photo: NO_TRAINEE,
  unfitPhoto: NO_TRAINEE,
  next: DRIVERS,
  back: DRIVERS,
  carryOn: DRIVERS,
  waive: DRIVERS,
  standDown: DRIVERS,
  amend: DRIVERS,
  // The lead's phone is gone. Who leads already has nothing to take.
  takeLead: ["deputy"],
  agree: COMPETENT,
  disagree: COMPETENT,
  backInUse: COMPETENT,
  reading: COMPETENT,
  answer: AS_ITS_GATE_SAYS,
};

/** The roles that may ask this of a job; none of its own where a gate says so. */
export function mayAsk(type: string): readonly Role[] {
  const may = Object.hasOwn(MAY, type) ? MAY[type as Intent["type"]] : [];
  return may === AS_ITS_GATE_SAYS ? [] : may;
}
