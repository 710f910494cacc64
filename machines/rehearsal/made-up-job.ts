import type { Brief, Person, Role } from "../install/brief.ts";
import type { WallTime } from "../install/ids.ts";
import type { Practice } from "../install/practice.ts";

const DAY_MS = 24 * 3600 * 1000;

/** Who is on every rehearsal that answers back: the one who leads it is the first, and all others are played. */
const ROLES: readonly Role[] = ["lead", "deputy", "competent", "crew", "crew", "crew", "crew", "crew", "crew"];
export const MADE_UP_CREW: readonly Person[] = ROLES.map((role, i) => ({ id: `p${i + 1}`, role }));

/**
 * A brief as a rehearsal of it: the same tent, sheet and place, people who are made up, and a ticket that is in force, so that a
 * job of next month can be rehearsed today.
 */
export function madeUp(brief: Brief, practice: Practice, now: WallTime): Brief {
  const ticket = brief.ticket && { ...brief.ticket, validFrom: now - DAY_MS, validTo: now + 14 * DAY_MS };
  return { ...brief, ticket, crew: MADE_UP_CREW, rehearsal: true, practice };
}
