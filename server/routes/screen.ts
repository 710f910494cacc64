import type { Context } from "hono";
import { getCookie, setCookie } from "hono/cookie";
import type { LiveJob } from "../../machines/conversation/live-job.ts";

const COOKIE = { httpOnly: true, sameSite: "Lax" } as const;
const DAY_S = 24 * 3600;

/** The device that a request names, where it names one that could be; `null` for a script, or a screen on its first visit. */
export function knownDevice(c: Context): string | null {
  const known = getCookie(c, "device");
  return known !== undefined && /^[\w-]{6,64}$/.test(known) && !(known in Object.prototype) ? known : null;
}

/** The device that a request comes from, by a cookie that it keeps; a new one gets its name here. */
export function deviceOf(c: Context, newId: () => string): string {
  const known = knownDevice(c);
  if (known !== null) return known;
  const fresh = newId();
  setCookie(c, "device", fresh, { ...COOKIE, path: "/", maxAge: 400 * DAY_S });
  return fresh;
}

/** Who holds this screen: named in the address, or remembered for this job. */
export function holderOf(c: Context, { job, entries }: LiveJob): string | null {
  const { crew } = job.frozen.brief;
  const id = entries.at(0)!.entry.job;
  const named = c.req.query("as");
  const me = crew.find((p) => p.id === named)?.id ?? crew.find((p) => p.id === getCookie(c, `as-${id}`))?.id ?? null;
  if (named && me === named) setCookie(c, `as-${id}`, me, { ...COOKIE, path: `/jobs/${id}`, maxAge: 30 * DAY_S });
  return me;
}

/** How often somebody turned the plan of a job on this screen by a quarter: asked for in the address, or remembered. */
export function quartersOf(c: Context, { entries }: LiveJob): number {
  const id = entries.at(0)!.entry.job;
  const asked = quartersIn(c.req.query("turned"));
  if (asked !== null) setCookie(c, `turned-${id}`, String(asked), { ...COOKIE, path: `/jobs/${id}`, maxAge: 30 * DAY_S });
  return asked ?? quartersIn(getCookie(c, `turned-${id}`)) ?? 0;
}
const quartersIn = (text: string | undefined): number | null => (text !== undefined && /^[0-3]$/.test(text) ? Number(text) : null);
