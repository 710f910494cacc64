import type { Context, MiddlewareHandler } from "hono";
import { matchedRoutes } from "hono/route";
import type { LiveJob } from "../../machines/conversation/live-job.ts";
import type { Role } from "../../machines/install/brief.ts";
import { OnlyStopsPage } from "../../views/pages/only-stops/view.tsx";
import { lightningFacts } from "../../views/parts/lightning-state.ts";
import { Problem } from "../input/problem.ts";
import type { LiveJobs } from "../jobs.ts";
import { repliedIn } from "../routes/back-to.ts";
import { page } from "../routes/page.ts";
import type { Access } from "./access.ts";
import { DOORS, type Door, doorName, HAND_OUT_CODES, ON_JOB } from "./doors.ts";
import { isOffice, isOpenTo, passesOn, rolesOn, saysAs, type Visitor } from "./visitor.ts";

declare module "hono" {
  interface ContextVariableMap {
    access: Access;
    /** Whether who asked may still see what they are being sent. */
    mayStillSee: () => Promise<boolean>;
  }
}

/** The roles that are let in while the tent stands, and no sooner; a watcher once it is looked over, to agree to the weather plan. */
const STANDING_ONLY: readonly Role[] = ["watcher", "siteOwner"];
/** Whose word it is, and what may be said, is looked at where it is said: a hold gets through whatever has run out. */
const SAYS = /\/(?:say|photo)$/;

/** Why somebody does not see a page of a job: never joined; the pass ran out; off the crew; the tent is not standing; not for their part. */
type Shut = "first" | "ranOut" | "offCrew" | "notStanding" | "notYours";

/**
 * The one place where it is decided who comes in: asks the table of doors. A person who may not is sent to where they get in; a
 * script and a form are refused in a sentence.
 */
export function doorCheck(access: Access, liveJobs: LiveJobs, newId: () => string): MiddlewareHandler {
  return async (c, next) => {
    const visitor = await access.visitorOf(c);
    c.set("access", access);
    c.set("visitor", visitor);
    // The first that matches is the one that answers.
    const route = matchedRoutes(c).find(({ method }) => method !== "ALL");
    // Nothing is there, whoever asks.
    if (!route || visitor.mode === "trials") return next();
    const name = doorName(route.method, route.path);
    const door = DOORS[name];
    if (door === undefined) throw new Error(`${name} is in no table: open it to somebody`);
    if (door === "office" || door === HAND_OUT_CODES) c.header("cache-control", "no-store");
    if (typeof door === "string") {
      if (mayPass(door, visitor)) return next();
      await access.log(visitor, "notAllowed", { what: name });
      return toOffice(c, visitor);
    }
    const id = jobIn(c);
    await takeSeat(c, await liveJobs.load(id));
    c.set("mayStillSee", async () => shutTo(await access.visitorOf(c), await liveJobs.load(id), door) === null);
    const live = await liveJobs.load(id);
    const shut = shutTo(c.get("visitor"), live, door);
    if (shut === null) return next();
    const isOn = passesOn(visitor, live).length > 0 || visitor.token !== null;
    if (c.req.method === "POST" && SAYS.test(c.req.path) && isOn) return next();
    await access.log(visitor, "notAllowed", { job: id, what: name });
    return refused(c, { live, shut, key: newId() });
  };
}

function mayPass(door: Exclude<Door, readonly Role[]>, visitor: Visitor): boolean {
  if (door === "anybody") return true;
  return isOffice(visitor) || (door === "officeOrToken" && visitor.token !== null);
}

/** Whether who asks sees the guide of a job: who only stops the work there does not. */
export const seesGuide = (c: Context, live: LiveJob): boolean => {
  const visitor = c.get("visitor");
  return visitor.mode === "trials" || shutTo(visitor, live, ON_JOB) === null;
};

/** Who asks for a screen as somebody, and needs no code for it, has a pass as that from then on. */
async function takeSeat(c: Context, live: LiveJob): Promise<void> {
  const visitor = c.get("visitor");
  const as = c.req.query("as");
  const person = live.job.frozen.brief.crew.find(({ id }) => id === as);
  if (!person || visitor.token || saysAs(visitor, live, person.id) === "anything") return;
  if (isOpenTo(visitor, live) || isOffice(visitor)) await c.var.access.letIn(c, jobIn(c), [person.id]);
}

/** The job that a path names, with or without its ending. */
const jobIn = (c: Context): string => c.req.path.split("/")[2]!.replace(/\.json$/, "");

const isPage = (c: Context): boolean =>
  c.req.method === "GET" &&
  !/\.\w+$|\/(?:now|live|drawing)$/.test(c.req.path) &&
  c.req.header("hx-request-type") !== "partial" &&
  !(c.req.header("accept") ?? "").includes("application/json");

function toOffice(c: Context, { token }: Visitor): Response {
  if (token) throw new Problem(403, (w) => w.office.notByToken);
  if (!isPage(c)) throw new Problem(403, (w) => w.office.only);
  return c.redirect(`/office/in?${new URLSearchParams({ to: c.req.path })}`, 303);
}

/** Why a visitor may not see what is behind a door of a job; `null` where they may. */
function shutTo(visitor: Visitor, live: LiveJob, door: readonly Role[]): Shut | null {
  if (isOpenTo(visitor, live) || isOffice(visitor)) return null;
  // Scripts read, and hand out no codes; what they send is theirs to say in a rehearsal alone.
  if (visitor.token) return door === HAND_OUT_CODES ? "notYours" : null;
  const passes = passesOn(visitor, live);
  if (passes.length === 0) return "first";
  const roles = rolesOn(visitor, live);
  if (roles.length === 0) return passes.some(({ until }) => until > visitor.now) ? "offCrew" : "ranOut";
  const mine = roles.filter((role) => door.includes(role));
  if (mine.length === 0) return "notYours";
  return mine.some((role) => !STANDING_ONLY.includes(role) || isOverTo(role, live)) ? null : "notStanding";
}

type Refused = { readonly live: LiveJob; readonly shut: Shut; readonly key: string };

/** What somebody gets instead of a page of a job that they may not see. */
function refused(c: Context, { live, shut, key }: Refused): Response | Promise<Response> {
  if (!isPage(c) || c.get("visitor").token) throw new Problem(403, (w) => w.join.shut[shut]);
  if (shut === "first") return c.redirect(`/join?${new URLSearchParams({ job: jobIn(c) })}`, 303);
  const words = c.get("words");
  const as = passesOn(c.get("visitor"), live)[0]!.person;
  const lightning = lightningFacts(live.job, live.now.at, words);
  const shown = { live, as, key, why: words.join.shut[shut], reply: repliedIn(c), lightning, words };
  return Promise.resolve(c.html(page(c, <OnlyStopsPage {...shown} />), 403));
}

/** Whether a tent stands as far as somebody has to look after it. */
const isOverTo = (role: Role, { entries, job }: LiveJob): boolean => {
  const { phase } = entries.at(-1)!.entry;
  if (phase === "inspected") return role === "watcher";
  return phase === "standing" || (phase === "up" && job.snapshot.context.site === "raised");
};
