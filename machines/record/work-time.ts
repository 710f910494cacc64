import type { Did } from "../install/commands.ts";
import type { StepId } from "../install/ids.ts";
import { type Work, workOf } from "../install/quantities.ts";
import { type Frozen, PHASES, type PhaseId } from "../install/step.ts";
import type { CommandEntry, Opening } from "./entry.ts";

/**
 * Longest gap between two entries that counts as work, in milliseconds: 90 minutes. A crew can drive an edge of stakes without
 * talking to the guide; a night or a day of rain is longer. A meal is shorter, and counts. Common practice, no source.
 */
export const MAX_WORK_GAP_MS = 90 * 60_000;

/** The work time of a job, as its fold keeps it. Plain JSON. */
export type WorkTime = {
  /** Milliseconds of work in each phase; making safe is counted separately. */
  readonly byPhase: Readonly<Record<string, number>>;
  /** The part of that at the current step. */
  readonly atCallMs: number;
  readonly step: StepId;
  readonly held: boolean;
  /** Phases that were finished, and not reentered since. */
  readonly done: readonly PhaseId[];
  /** The work in the script in force; `null` if it cannot be counted from the plan. */
  readonly work: Work | null;
};
type JobSoFar = { readonly phase: string; readonly lastAt: number; readonly no: number; readonly worked: WorkTime };

/** The work time of a job that was just opened. */
export const startWorkTime = (entry: Opening): WorkTime => ({
  byPhase: {},
  atCallMs: 0,
  step: entry.step,
  held: false,
  done: [],
  work: workOf(entry.opened),
});

/** The work time after one more entry. `now` is the phase after it; `changed` is the script it put in force, if any. */
export function addWorkTime(before: JobSoFar, entry: CommandEntry, now: string, changed: Frozen | null): WorkTime {
  const { worked } = before;
  const ms = workBetween(before, before.lastAt + timeSince(before, entry));
  return {
    byPhase: ms === 0 ? worked.byPhase : { ...worked.byPhase, [before.phase]: (worked.byPhase[before.phase] ?? 0) + ms },
    atCallMs: entry.step === worked.step ? worked.atCallMs + ms : 0,
    step: entry.step,
    held: heldAfter(worked.held, entry),
    done: finishedPhasesAfter(worked.done, before.phase, entry, now),
    work: changed ? workOf(changed) : worked.work,
  };
}

/** What surely passed from a job's last entry to the next one, in milliseconds. */
export const timeSince = ({ lastAt }: Pick<JobSoFar, "lastAt">, { at, command }: CommandEntry): number =>
  Math.max(0, at - lastAt - command.doubtMs);

/**
 * Work from a job's last entry to a moment, in milliseconds. Zero while it is held or closed, before the first command (a job
 * may be opened in the office, days before), and over a gap longer than `MAX_WORK_GAP_MS`. A pause counts as work because it
 * is over in a moment.
 */
export function workBetween({ phase, lastAt, no, worked }: JobSoFar, at: number): number {
  const ms = Math.max(0, at - lastAt);
  return worked.held || phase === "closed" || no === 1 || ms > MAX_WORK_GAP_MS ? 0 : ms;
}

function heldAfter(held: boolean, { outcome }: CommandEntry): boolean {
  if (!("did" in outcome)) return held;
  return outcome.did === "held" || (held && outcome.did !== "carriedOn");
}

/**
 * "Next" out of a phase finishes it, said or done by a good answer; going back into it undoes that. Standing down finishes
 * nothing.
 */
function finishedPhasesAfter(done: WorkTime["done"], from: string, { outcome }: CommandEntry, to: string): WorkTime["done"] {
  if (from === to || !("did" in outcome) || outcome.did === "standingDown") return done;
  const finished = PHASES.find((p) => p === from);
  const did = (what: Did) => outcome.did === what || outcome.and === what;
  if (to === "closed") return finished === "struck" && did("closed") ? [...done, finished] : done;
  const at = PHASES.indexOf(to as PhaseId);
  if (at < 0) return done;
  // A call that a changed plan put behind the job: it is done from here, and nothing is gone back over.
  if (did("moved") && finished && PHASES.indexOf(finished) > at) return done;
  const still = done.filter((p) => PHASES.indexOf(p) < at && p !== finished);
  return finished && did("moved") ? [...still, finished] : still;
}
