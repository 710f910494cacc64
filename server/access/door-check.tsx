import type { Context, MiddlewareHandler } from "hono";
import { matchedRoutes } from "hono/route";
import type { LiveJob } from "../../machines/conversation/live-job.ts";
import type { Role } from "../../machines/install/brief.ts";
import { OnlyStopsPage } from "../../views/pages/only-stops/view.tsx";
import { Problem } from "../input/problem.ts";
import type { LiveJobs } from "../jobs.ts";
import { page } from "../routes/page.ts";
import type { Access } from "./access.ts";
import { DOORS, type Door, doorName } from "./doors.ts";
import { isOffice, isOpenTo, passesOn, rolesOn, saysAs, type Visitor } from "./visitor.ts";

declare module "hono" {
  interface ContextVariableMap {
    access: Access;
  }
}

/** The roles that are let in while the tent stands, and no sooner. */
const STANDING_ONLY: readonly Role[] = ["watcher", "siteOwner"];

/**
 * The one place where it is decided who comes in: asks the table of doors. A person who may not is sent to where they get in; a
 * script and a form are refused in a sentence.
 */
export function doorCheck(access: Access, liveJobs: LiveJobs, newId: () => string): MiddlewareHandler {
  return async (c, next) => {
    const visitor = await access.visitorOf(c);
    c.set("access", access);
    c.set("visitor", visitor);
    const route = matchedRoutes(c).findLast(({ method }) => method !== "ALL");
    // Nothing is there, whoever asks.
    if (!route || visitor.mode === "trials") return next();
    const door = DOORS[doorName(route.method, route.path)];
    if (door === undefined) throw new Error(`${doorName(route.method, route.path)} is in no table: open it to somebody`);
    if (typeof door === "string") {
      if (mayPass(door, visitor)) return next();
      await access.log(visitor, "notAllowed", { what: c.req.path });
      return toOffice(c, visitor);
    }
    const live = await liveJobs.load(jobIn(c));
    await takeSeat(c, live);
    return (await refusedAt(c, live, door, newId)) ?? next();
  };
}

/** Who asks for a screen as somebody, and needs no code for it, has a pass as that from then on. */
async function takeSeat(c: Context, live: LiveJob): Promise<void> {
  const visitor = c.get("visitor");
  const as = c.req.query("as");
  const person = live.job.frozen.brief.crew.find(({ id }) => id === as);
  if (!person || visitor.token || saysAs(visitor, live, person.id) === "anything") return;
  if (isOpenTo(visitor, live) || isOffice(visitor)) await c.var.access.letIn(c, jobIn(c), [person.id]);
}

function mayPass(door: Exclude<Door, readonly Role[]>, visitor: Visitor): boolean {
  if (door === "anybody") return true;
  return isOffice(visitor) || (door === "officeOrToken" && visitor.token !== null);
}

/** The job that a path names, with or without its ending. */
const jobIn = (c: Context): string => c.req.path.split("/")[2]!.replace(/\.json$/, "");

const isPage = (c: Context): boolean =>
  c.req.method === "GET" &&
  !/\.\w+$|\/(?:now|live|drawing)$/.test(c.req.path) &&
  c.req.header("hx-request-type") !== "partial" &&
  !(c.req.header("accept") ?? "").includes("application/json");

function toOffice(c: Context, { token }: Visitor): Response {
  if (!isPage(c) || token) throw new Problem(403, (w) => w.office.only);
  return c.redirect(`/office/in?${new URLSearchParams({ to: c.req.path })}`, 303);
}

/** What somebody gets instead of a page of a job that they may not see; `null` where they may. */
async function refusedAt(c: Context, live: LiveJob, door: readonly Role[], newId: () => string): Promise<Response | null> {
  const visitor = c.get("visitor");
  if (isOpenTo(visitor, live) || isOffice(visitor)) return null;
  // Scripts read; whom they speak for is looked at where they speak.
  if (visitor.token) return null;
  // Whose word it is, and what may be said, is looked at where it is said: a hold gets through whatever has run out.
  if (c.req.method === "POST" && c.req.path.endsWith("/say")) return null;
  const { access } = c.var;
  const joined = passesOn(visitor, live).length > 0;
  const roles = rolesOn(visitor, live);
  const stands = currentlyStands(live);
  if (roles.some((role) => door.includes(role) && (stands || !STANDING_ONLY.includes(role)))) return null;
  await access.log(visitor, "notAllowed", { job: live.entries.at(0)!.entry.job, what: c.req.path });
  const ranOut = joined && roles.length === 0;
  const early = roles.length > 0 && roles.every((role) => STANDING_ONLY.includes(role)) && !stands;
  if (!isPage(c))
    throw new Problem(403, (w) => (ranOut ? w.join.ranOut : early ? w.join.notStanding : joined ? w.join.notYours : w.join.first));
  if (!joined) return c.redirect(`/join?${new URLSearchParams({ job: jobIn(c) })}`, 303);
  const { join } = c.get("words");
  const why = ranOut ? join.ranOut : early ? join.notStanding : join.notYours;
  const screen = { live, as: passesOn(visitor, live)[0]!.person, key: newId(), why, words: c.get("words") };
  return c.html(page(c, <OnlyStopsPage {...screen} />), 403);
}

const currentlyStands = ({ entries, job }: LiveJob): boolean =>
  entries.at(-1)!.entry.phase === "standing" || (job.snapshot.context.site === "raised" && entries.at(-1)!.entry.phase === "up");
