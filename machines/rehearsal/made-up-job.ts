import type { Brief, Person, Role } from "../install/brief.ts";
import type { Forecast } from "../install/forecast.ts";
import type { WallTime } from "../install/ids.ts";
import type { Practice } from "../install/practice.ts";

const DAY_MS = 24 * 3600 * 1000;

/** Who is on every rehearsal that answers back: the one who leads it is the first, and all others are played. */
const ROLES: readonly Role[] = ["lead", "deputy", "competent", "crew", "crew", "crew", "crew", "crew", "crew"];
export const MADE_UP_CREW: readonly Person[] = ROLES.map((role, i) => ({ id: `p${i + 1}`, role }));

/**
 * A brief as a rehearsal of it: the same tent, sheet and place, people who are made up, a ticket that is in force and a forecast
 * for the day after tomorrow, so that a job of next month can be rehearsed today.
 */
export function madeUp(brief: Brief, practice: Practice, now: WallTime): Brief {
  const ticket = brief.ticket && { ...brief.ticket, validFrom: now - DAY_MS, validTo: now + 14 * DAY_MS };
  const forecast = brief.forecast && shifted(brief.forecast, now + 2 * DAY_MS - brief.forecast.from);
  return { ...brief, ticket, ...(forecast ? { forecast } : {}), crew: MADE_UP_CREW, rehearsal: true, practice };
}

/** A forecast so many milliseconds later, or earlier where that is below zero. */
const shifted = ({ from, to, readAt, clearBy, ...forecast }: Forecast, ms: number): Forecast => ({
  ...forecast,
  from: from + ms,
  to: to + ms,
  readAt: readAt + ms,
  clearBy: clearBy === null ? null : clearBy + ms,
});
