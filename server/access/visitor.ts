import type { LiveJob } from "../../machines/conversation/live-job.ts";
import type { Role } from "../../machines/install/brief.ts";
import type { DeviceId, PersonId, WallTime } from "../../machines/install/ids.ts";
import { keyOf } from "../../machines/record/entry.ts";
import { DEMO_KEY } from "../demo.ts";
import { OFFICE, type Pass, type Token } from "../journal/access.ts";

/**
 * Whom the server lets in. `guarded`: who has a pass. `thisMachine`: the same, and whoever sits at it plays the demo and
 * rehearsals as anybody. `trials`: anybody as anybody, for trying it out and for tests; every page says so.
 */
export type AccessMode = "guarded" | "thisMachine" | "trials";

/** Who a request comes from, as far as its cookie or its token says. */
export type Visitor = {
  readonly mode: AccessMode;
  readonly address: string;
  /** `null` for a script, or a screen on its first visit. */
  readonly device: DeviceId | null;
  /** The cookie is not one that this server gave. */
  readonly isForged: boolean;
  readonly passes: readonly Pass[];
  readonly token: Token | null;
  readonly now: WallTime;
};

/** What a visitor may say as somebody: anything; what can only stop work, or ask; nothing. */
export type Says = "anything" | "onlyStops" | "nothing";

const jobOf = ({ entries }: LiveJob): string => entries.at(0)!.entry.job;

/** Whether it is for the office, now. */
export const isOffice = ({ mode, passes, now }: Visitor): boolean =>
  mode === "trials" || passes.some(({ job, until }) => job === OFFICE && until > now);

/** Whether anybody at this machine may play it: nothing of anybody's is at stake there. */
export const isOpenTo = ({ mode }: Visitor, live: LiveJob): boolean =>
  mode === "trials" ||
  (mode === "thisMachine" && (live.job.frozen.brief.rehearsal === true || keyOf(live.entries.at(0)!.entry) === DEMO_KEY));

/** Its passes of a job, run out or not. */
export const passesOn = ({ passes }: Visitor, live: LiveJob): readonly Pass[] => passes.filter(({ job }) => job === jobOf(live));

/** What it may say on a job as somebody. A device that ever joined may stop the work for good. */
export function saysAs(visitor: Visitor, live: LiveJob, person: PersonId): Says {
  if (visitor.mode === "trials") return "anything";
  if (visitor.token) return live.job.frozen.brief.rehearsal === true ? "anything" : "nothing";
  const pass = passesOn(visitor, live).find((one) => one.person === person);
  if (!pass) return "nothing";
  return pass.until > visitor.now ? "anything" : "onlyStops";
}

/** The roles that it has on a job now: of everybody it may speak as there, and a manager's where it is for the office. */
export function rolesOn(visitor: Visitor, live: LiveJob): readonly Role[] {
  const mine = passesOn(visitor, live).filter(({ until }) => until > visitor.now);
  const roles = live.job.frozen.brief.crew.filter(({ id }) => mine.some(({ person }) => person === id)).map(({ role }) => role);
  return isOffice(visitor) ? [...roles, "manager"] : roles;
}
