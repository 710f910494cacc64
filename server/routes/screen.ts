import type { Context } from "hono";
import { getCookie, setCookie } from "hono/cookie";
import type { LiveJob } from "../../machines/conversation/live-job.ts";
import type { DeviceId, PersonId } from "../../machines/install/ids.ts";
import type { ScreenAccess } from "../../views/parts/say-form.tsx";
import { HAND_OUT_CODES } from "../access/doors.ts";
import { isOffice, isOpenTo, passesOn, rolesOn, saysAs } from "../access/visitor.ts";
import type { Presence } from "../presence.ts";
import type { Speaks } from "./say.ts";

const COOKIE = { httpOnly: true, sameSite: "Lax" } as const;
const DAY_S = 24 * 3600;

/** The device that a request names, where it is one of ours; `null` for a script, or a screen on its first visit. */
export const knownDevice = (c: Context): DeviceId | null => c.get("visitor").device;

/** The device that a request comes from, by a cookie that it keeps; a new one gets its name here. */
export const deviceOf = (c: Context): DeviceId => c.get("access").deviceFor(c);

/** Who holds this screen: named in the address, or remembered for this job; nobody whom this device may not speak as. */
export function holderOf(c: Context, live: LiveJob): PersonId | null {
  const { job, entries } = live;
  const { crew } = job.frozen.brief;
  const visitor = c.get("visitor");
  const id = entries.at(0)!.entry.job;
  const named = c.req.query("as");
  const heldBy = (asked: string | undefined) => crew.find((p) => p.id === asked && saysAs(visitor, live, p.id) !== "nothing")?.id ?? null;
  const [only, ...others] = passesOn(visitor, live);
  const me = heldBy(named) ?? heldBy(getCookie(c, `as-${id}`)) ?? (others.length === 0 ? heldBy(only?.person) : null);
  if (named && me === named) setCookie(c, `as-${id}`, me, { ...COOKIE, path: `/jobs/${id}`, maxAge: 30 * DAY_S });
  return me;
}

/** Whom this screen lets in on a job. */
export function accessOf(c: Context, live: LiveJob, presence: Presence): ScreenAccess {
  const visitor = c.get("visitor");
  const isForAll = isOpenTo(visitor, live) || isOffice(visitor);
  return {
    present: presence.here(live.entries.at(0)!.entry.job),
    here: isForAll ? null : passesOn(visitor, live).map(({ person }) => person),
    mayHandOutCodes: visitor.mode === "trials" || rolesOn(visitor, live).some((role) => HAND_OUT_CODES.includes(role)),
    trials: visitor.mode === "trials",
  };
}

/** What the sender of a request may say as somebody. */
export const speaksOf =
  (c: Context): Speaks =>
  (live, person) =>
    saysAs(c.get("visitor"), live, person);

/** How often somebody turned the plan of a job on this screen by a quarter: asked for in the address, or remembered. */
export function quartersOf(c: Context, { entries }: LiveJob): number {
  const id = entries.at(0)!.entry.job;
  const asked = quartersIn(c.req.query("turned"));
  if (asked !== null) setCookie(c, `turned-${id}`, String(asked), { ...COOKIE, path: `/jobs/${id}`, maxAge: 30 * DAY_S });
  return asked ?? quartersIn(getCookie(c, `turned-${id}`)) ?? 0;
}
const quartersIn = (text: string | undefined): number | null => (text !== undefined && /^[0-3]$/.test(text) ? Number(text) : null);
